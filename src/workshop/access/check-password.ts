import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { Credential } from '../../store/index.js';
import type { WorkshopFault } from '../use-case.js';
import type { AccessParts } from './access-parts.js';
import { attemptsOf, attemptsOfNobody, countAttempt } from './attempts.js';
import type { Person } from './person-names.js';
import type { Match } from './slow-hash.js';

/** What was shown to prove who someone is, and of whom it is said to be. */
export interface Claim {
  readonly kind: 'password' | 'pin';
  readonly secret: string;
  /** Undefined where nobody has the name. */
  readonly person: Person | undefined;
  /** What was asked for, name or id. */
  readonly asked: string;
}

export interface Proven {
  readonly person: Person;
  readonly credential: Credential;
  readonly match: Match;
  /** Whose failures to forgive. */
  readonly subject: string;
}

/**
 * Checks a password or PIN. The attempt is counted and committed first; the slow hash is worked out outside of any
 * transaction. A wrong secret, an unknown name and a person who is let in no more are refused alike and take as long.
 */
export async function checkClaim(
  { store, clock, slowHash }: AccessParts,
  { kind, secret, person, asked }: Claim,
): Promise<Result<Proven, WorkshopFault>> {
  const subject = person ? attemptsOf(kind, person.id) : attemptsOfNobody(kind, asked);
  const counted = await store.write((tx) => countAttempt(tx, subject, clock.now()));
  if (!counted.ok) return counted;
  const credential = person && (await store.read(({ access }) => access.credential(person.id, kind)));
  const match = await slowHash.matches(secret, person?.body.active ? credential?.secretHash : undefined);
  if (person && credential && match.matches) return succeed({ person, credential, match, subject });
  return fail({ code: 'access.sign-in-refused', with: kind, ...counted.value });
}
