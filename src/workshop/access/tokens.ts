import { makeToken, type Permission, permissionsOf, revokeToken } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import type { Token, Transaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { hashOfSecret, joinToken, newSecret } from './secrets.js';

/** Makes a token for a person's script, with scopes that the person has. */
export const makeTokenCase = useCase(makeToken, async ({ tx, now }, input) => {
  const { id, personId, name, scopes, expiresAt = null } = input;
  const person = await needRecord(tx, 'person', personId);
  if (!person.body.active) return fail({ code: 'access.person-inactive', name: person.body.name });
  const allowed = permissionsOf(person.body.roles);
  const beyond = scopes.filter((scope) => !allowed.has(scope));
  if (beyond.length > 0) return fail({ code: 'access.scopes-too-wide', name: person.body.name, beyond });
  if (expiresAt !== null && expiresAt <= now) return fail({ code: 'access.expiry-past', expiresAt, now });
  if (await tx.access.token(id)) return fail({ code: 'taken', kind: 'token', key: 'id', value: id });

  const secret = newSecret();
  const token: Token = {
    id,
    name,
    personId,
    secretHash: hashOfSecret(secret),
    scopes,
    createdAt: now,
    expiresAt,
    revokedAt: null,
  };
  await tx.access.addToken(token);
  return succeed({ token: tokenView(token), secret: joinToken(id, secret) });
});

/** Ends a token. */
export const revokeTokenCase = useCase(revokeToken, async ({ tx, now }, { id }) => {
  const token = await tx.access.token(id);
  if (!token) return fail({ code: 'record.missing', kind: 'token', id });
  if (token.revokedAt === null) await tx.access.revokeToken(id, now);
  return succeed({ id, revokedAt: token.revokedAt ?? now });
});

/** Ends all of a person's tokens. */
export async function revokeTokensOf(
  { access }: Pick<Transaction, 'access'>,
  personId: string,
  now: string,
): Promise<void> {
  for (const token of await access.tokens()) {
    if (token.personId === personId && token.revokedAt === null) await access.revokeToken(token.id, now);
  }
}

/** All of a token but the hash of its secret. */
export const tokenView = ({ id, name, personId, scopes, createdAt, expiresAt, revokedAt }: Token) => ({
  id,
  name,
  personId,
  scopes: scopes as Permission[],
  createdAt,
  expiresAt,
  revokedAt,
});
