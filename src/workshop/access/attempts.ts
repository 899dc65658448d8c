import { createHash } from 'node:crypto';
import { fail, type Result, succeed } from '../../core/foundation/index.js';
import type { Transaction } from '../../store/index.js';
import type { WorkshopFault } from '../use-case.js';
import { after, LOCK_MS } from './lifetimes.js';

/** So many wrong answers in a row lock; each further one locks twice as long. */
export const FREE_ATTEMPTS = 5;

/**
 * Counts an attempt as failed before it is looked at, so that a hundred at once are a hundred, and a crash forgives none.
 * The fault says until when the lock holds. Must be committed even where the attempt then fails.
 */
export async function countAttempt(
  { access }: Pick<Transaction, 'access'>,
  subject: string,
  now: string,
): Promise<Result<{ readonly attemptsLeft: number }, WorkshopFault>> {
  const { failures = 0, lockedUntil = null } = (await access.attempts(subject)) ?? {};
  if (lockedUntil !== null && lockedUntil > now) return fail({ code: 'access.locked', lockedUntil });
  const counted = failures + 1;
  await access.putAttempts({ subject, failures: counted, lockedUntil: lockAfter(counted, now) });
  return succeed({ attemptsLeft: Math.max(0, FREE_ATTEMPTS - counted) });
}

/** Forgets the failures: the right answer was given. */
export const forgiveAttempts = ({ access }: Pick<Transaction, 'access'>, subject: string): Promise<void> =>
  access.putAttempts({ subject, failures: 0, lockedUntil: null });

/** Whose attempts are counted: a person's, password and PIN apart. */
export const attemptsOf = (kind: 'password' | 'pin', personId: string): string =>
  `${kind}/person/${personId}`;

/**
 * A name that nobody has is locked like any other, or the lock would tell which names exist. All such names share 256
 * counts, so that guessing names does not fill the database.
 */
export const attemptsOfNobody = (kind: 'password' | 'pin', asked: string): string =>
  `${kind}/nobody/${createHash('sha256').update(asked).digest('hex').slice(0, 2)}`;

function lockAfter(failures: number, now: string): string | null {
  if (failures < FREE_ATTEMPTS) return null;
  return after(now, Math.min(LOCK_MS.first * 2 ** (failures - FREE_ATTEMPTS), LOCK_MS.longest));
}
