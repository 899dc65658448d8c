import { permissionsOf, TOKEN_SCOPES } from '../../contract/index.js';
import { fail, type Result, succeed } from '../../core/foundation/index.js';
import { type ReadTransaction, type Session, StoreUnavailable } from '../../store/index.js';
import type { Actor, WorkshopFault } from '../use-case.js';
import type { AccessParts } from './access-parts.js';
import { isWorthExtending, sessionEnd } from './lifetimes.js';
import type { Person } from './person-names.js';
import { isSecretOf, splitKey, splitToken } from './secrets.js';
import { isOpen, permissionsIn, within } from './sessions.js';

/** What a request shows of who asks: a token, or the key of a session. */
export type Credentials = { readonly token: string } | { readonly session: string };

/** Who it is. */
export interface Known {
  readonly actor: Actor;
  readonly person: Person;
  /** Left out for a token. */
  readonly session?: Session;
}

type Parts = Pick<AccessParts, 'store' | 'clock'>;

/** Who stands behind a request, as `recognise` tells; a session in use lives on. */
export async function authenticate(
  parts: Parts,
  credentials: Credentials,
): Promise<Result<Known, WorkshopFault>> {
  const known = await recognise(parts, credentials);
  if (known.ok && known.value.session) await liveOn(parts, known.value.session);
  return known;
}

/**
 * Whose a key is, with what that person may do at this moment. Nothing is told of why a key is refused, except that
 * a session is over.
 */
export const recognise = (
  { store, clock }: Parts,
  credentials: Credentials,
): Promise<Result<Known, WorkshopFault>> =>
  store.read((tx) =>
    'token' in credentials
      ? byToken(tx, credentials.token, clock.now())
      : bySession(tx, credentials.session, clock.now()),
  );

async function byToken(
  { access, records }: ReadTransaction,
  text: string,
  now: string,
): Promise<Result<Known, WorkshopFault>> {
  const refused = fail({ code: 'access.token-refused' });
  const key = splitToken(text);
  const token = key && (await access.token(key.id));
  if (!token || !isSecretOf(token.secretHash, key.secret)) return refused;
  if (token.revokedAt !== null || (token.expiresAt !== null && token.expiresAt <= now)) return refused;
  const person = await records.get('person', token.personId);
  if (!person?.body.active) return refused;
  const allowed = within(permissionsOf(person.body.roles), TOKEN_SCOPES);
  const permissions = within(allowed, token.scopes);
  return succeed({ actor: { by: `token/${token.id}`, personId: person.id, permissions }, person });
}

async function bySession(
  { access, records }: ReadTransaction,
  text: string,
  now: string,
): Promise<Result<Known, WorkshopFault>> {
  const over = fail({ code: 'access.session-over' });
  const key = splitKey(text);
  const session = key && (await access.session(key.id));
  if (!session || !isSecretOf(session.secretHash, key.secret) || !isOpen(session, now)) return over;
  const person = await records.get('person', session.personId);
  if (!person?.body.active) return over;
  const permissions = permissionsIn(session.via, person);
  return succeed({ actor: { by: `person/${person.id}`, personId: person.id, permissions }, person, session });
}

/** Someone who only reads must be able to, even where the disk takes nothing more. */
async function liveOn({ store, clock }: Parts, session: Session): Promise<void> {
  const now = clock.now();
  if (!isWorthExtending(session, now)) return;
  try {
    await store.write(({ access }) => access.extendSession(session.id, sessionEnd(session, now)));
  } catch (thrown) {
    if (!(thrown instanceof StoreUnavailable)) throw thrown;
  }
}
