import type { AccessWriter, Attempts, Credential, Device, Session, Token } from './store.js';
import type { AttemptsRow, CredentialRow, DeviceRow, SessionRow, Sql, TokenRow } from './tables.js';

/** Who may come in, within one transaction. What is revoked stays, with its time. */
export function createAccess(trx: Sql): AccessWriter {
  return {
    ...credentials(trx),
    ...sessions(trx),
    ...devices(trx),
    ...tokens(trx),
    ...attempts(trx),
  };
}

const credentials = (
  trx: Sql,
): Pick<AccessWriter, 'credential' | 'credentialByHash' | 'putCredential' | 'dropCredential'> => ({
  credential: async (personId, kind) => {
    const row = await trx
      .selectFrom('credentials')
      .selectAll()
      .where('person_id', '=', personId)
      .where('kind', '=', kind)
      .executeTakeFirst();
    return row && asCredential(row);
  },
  credentialByHash: async (kind, secretHash) => {
    const row = await trx
      .selectFrom('credentials')
      .selectAll()
      .where('kind', '=', kind)
      .where('secret_hash', '=', secretHash)
      .executeTakeFirst();
    return row && asCredential(row);
  },
  putCredential: async ({ personId, kind, secretHash, expiresAt }) => {
    await trx
      .insertInto('credentials')
      .values({ person_id: personId, kind, secret_hash: secretHash, expires_at: expiresAt })
      .onConflict((conflict) =>
        conflict
          .columns(['person_id', 'kind'])
          .doUpdateSet({ secret_hash: secretHash, expires_at: expiresAt }),
      )
      .execute();
  },
  dropCredential: async (personId, kind) => {
    await trx.deleteFrom('credentials').where('person_id', '=', personId).where('kind', '=', kind).execute();
  },
});

type SessionPart =
  | 'session'
  | 'sessions'
  | 'addSession'
  | 'extendSession'
  | 'revokeSession'
  | 'revokeSessions'
  | 'forgetSessions';

const sessions = (trx: Sql): Pick<AccessWriter, SessionPart> => ({
  session: async (id) => {
    const row = await trx.selectFrom('sessions').selectAll().where('id', '=', id).executeTakeFirst();
    return row && asSession(row);
  },
  sessions: async (personId) => {
    const rows = await trx
      .selectFrom('sessions')
      .selectAll()
      .where('person_id', '=', personId)
      .orderBy('created_at')
      .orderBy('id')
      .execute();
    return rows.map(asSession);
  },
  addSession: async ({ id, personId, secretHash, via, deviceId, createdAt, expiresAt, revokedAt }) => {
    await trx
      .insertInto('sessions')
      .values({
        id,
        person_id: personId,
        secret_hash: secretHash,
        via,
        device_id: deviceId,
        created_at: createdAt,
        expires_at: expiresAt,
        revoked_at: revokedAt,
      })
      .execute();
  },
  extendSession: async (id, expiresAt) => {
    await trx.updateTable('sessions').set({ expires_at: expiresAt }).where('id', '=', id).execute();
  },
  revokeSession: (id, at) => revoke(trx, 'sessions', id, at),
  revokeSessions: async (of, at) => {
    const open = trx.updateTable('sessions').set({ revoked_at: at }).where('revoked_at', 'is', null);
    if ('personId' in of) await open.where('person_id', '=', of.personId).execute();
    else await open.where('device_id', '=', of.deviceId).execute();
  },
  forgetSessions: async (endedBefore) => {
    await trx
      .deleteFrom('sessions')
      .where(({ eb, or }) => or([eb('expires_at', '<', endedBefore), eb('revoked_at', '<', endedBefore)]))
      .execute();
  },
});

const devices = (trx: Sql): Pick<AccessWriter, 'device' | 'devices' | 'addDevice' | 'revokeDevice'> => ({
  device: async (id) => {
    const row = await trx.selectFrom('devices').selectAll().where('id', '=', id).executeTakeFirst();
    return row && asDevice(row);
  },
  devices: async () => {
    const rows = await trx.selectFrom('devices').selectAll().orderBy('enrolled_at').orderBy('id').execute();
    return rows.map(asDevice);
  },
  addDevice: async ({ id, name, secretHash, enrolledAt, revokedAt }) => {
    await trx
      .insertInto('devices')
      .values({ id, name, secret_hash: secretHash, enrolled_at: enrolledAt, revoked_at: revokedAt })
      .execute();
  },
  revokeDevice: (id, at) => revoke(trx, 'devices', id, at),
});

const tokens = (trx: Sql): Pick<AccessWriter, 'token' | 'tokens' | 'addToken' | 'revokeToken'> => ({
  token: async (id) => {
    const row = await trx.selectFrom('tokens').selectAll().where('id', '=', id).executeTakeFirst();
    return row && asToken(row);
  },
  tokens: async () => {
    const rows = await trx.selectFrom('tokens').selectAll().orderBy('created_at').orderBy('id').execute();
    return rows.map(asToken);
  },
  addToken: async ({ id, name, personId, secretHash, scopes, createdAt, expiresAt, revokedAt }) => {
    await trx
      .insertInto('tokens')
      .values({
        id,
        name,
        person_id: personId,
        secret_hash: secretHash,
        scopes: JSON.stringify(scopes),
        created_at: createdAt,
        expires_at: expiresAt,
        revoked_at: revokedAt,
      })
      .execute();
  },
  revokeToken: (id, at) => revoke(trx, 'tokens', id, at),
});

const attempts = (trx: Sql): Pick<AccessWriter, 'attempts' | 'putAttempts'> => ({
  attempts: async (subject) => {
    const row = await trx
      .selectFrom('attempts')
      .selectAll()
      .where('subject', '=', subject)
      .executeTakeFirst();
    return row && asAttempts(row);
  },
  putAttempts: async ({ subject, failures, lockedUntil }) => {
    await trx
      .insertInto('attempts')
      .values({ subject, failures, locked_until: lockedUntil })
      .onConflict((conflict) =>
        conflict.column('subject').doUpdateSet({ failures, locked_until: lockedUntil }),
      )
      .execute();
  },
});

/** Only once: the first time stands. */
async function revoke(trx: Sql, table: 'sessions' | 'devices' | 'tokens', id: string, at: string) {
  await trx
    .updateTable(table)
    .set({ revoked_at: at })
    .where('id', '=', id)
    .where('revoked_at', 'is', null)
    .execute();
}

const asCredential = (row: CredentialRow): Credential => ({
  personId: row.person_id,
  kind: row.kind as Credential['kind'],
  secretHash: row.secret_hash,
  expiresAt: row.expires_at,
});

const asSession = (row: SessionRow): Session => ({
  id: row.id,
  personId: row.person_id,
  secretHash: row.secret_hash,
  via: row.via as Session['via'],
  deviceId: row.device_id,
  createdAt: row.created_at,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
});

const asDevice = (row: DeviceRow): Device => ({
  id: row.id,
  name: row.name,
  secretHash: row.secret_hash,
  enrolledAt: row.enrolled_at,
  revokedAt: row.revoked_at,
});

const asToken = (row: TokenRow): Token => ({
  id: row.id,
  name: row.name,
  personId: row.person_id,
  secretHash: row.secret_hash,
  scopes: JSON.parse(row.scopes),
  createdAt: row.created_at,
  expiresAt: row.expires_at,
  revokedAt: row.revoked_at,
});

const asAttempts = (row: AttemptsRow): Attempts => ({
  subject: row.subject,
  failures: row.failures,
  lockedUntil: row.locked_until,
});
