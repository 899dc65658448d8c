import { type Permission, permissionsOf, TOKEN_SCOPES } from '../../contract/index.js';
import type { ReadTransaction, Session, Transaction } from '../../store/index.js';
import { after, ENDED_SESSIONS_KEPT_MS, sessionEnd } from './lifetimes.js';
import type { Person } from './person-names.js';
import { hashOfSecret, joinKey, newSecret } from './secrets.js';

/** Someone who has just signed in. */
export interface SignedIn {
  readonly person: Person;
  readonly session: Session;
  /** What the session's cookie holds; it is told here and nowhere else. */
  readonly key: string;
}

/** Begins a session. */
export async function openSession(
  { access }: Pick<Transaction, 'access'>,
  begun: {
    readonly person: Person;
    readonly via: Session['via'];
    readonly deviceId?: string;
    readonly id: string;
    readonly now: string;
  },
): Promise<SignedIn> {
  const { person, via, deviceId = null, id, now } = begun;
  const secret = newSecret();
  const session: Session = {
    id,
    personId: person.id,
    secretHash: hashOfSecret(secret),
    via,
    deviceId,
    createdAt: now,
    expiresAt: sessionEnd({ via, createdAt: now }, now),
    revokedAt: null,
  };
  await access.forgetSessions(after(now, -ENDED_SESSIONS_KEPT_MS));
  await access.addSession(session);
  return { person, session, key: joinKey(id, secret) };
}

export const isOpen = ({ revokedAt, expiresAt }: Session, now: string): boolean =>
  revokedAt === null && expiresAt > now;

/** A person's sessions that are open now, newest first. */
export async function openSessions(
  { access }: Pick<ReadTransaction, 'access'>,
  personId: string,
  now: string,
): Promise<readonly Session[]> {
  const open = (await access.sessions(personId)).filter((session) => isOpen(session, now));
  return open.sort((one, other) => (one.createdAt < other.createdAt ? 1 : -1));
}

/**
 * What may be done in a session. Four digits are enough to do the floor's work, not to let people in or to change a
 * password: that needs the password itself.
 */
export function permissionsIn(via: Session['via'], person: Person): ReadonlySet<Permission> {
  const all = permissionsOf(person.body.roles);
  return via === 'pin' ? within(all, TOKEN_SCOPES) : all;
}

/** Those of a person's permissions that are also in a list of scopes. */
export const within = (
  permissions: ReadonlySet<Permission>,
  scopes: readonly string[],
): ReadonlySet<Permission> => new Set([...permissions].filter((permission) => scopes.includes(permission)));
