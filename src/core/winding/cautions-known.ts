import { type CalendarDate, daysBetween } from '../foundation/index.js';
import type { Caution } from './cautions.js';

/** Which words the cautions have. One more when a caution comes to say something else: then all are shown anew. */
export const CAUTIONS_EDITION = 1;

/** Who was away from a machine for longer than this sees its cautions anew. A choice of ours; local rules may ask for less. */
export const AWAY_DAYS = 365;

/** What a person touched as read, at one machine. */
export interface CautionsAcknowledged {
  readonly cautions: readonly Caution[];
  readonly edition: number;
  readonly on: CalendarDate;
}

/** One person at one machine. */
export interface CautionsKnown {
  readonly acknowledged: readonly CautionsAcknowledged[];
  /** When the person last started a run there; left out where there was none. */
  readonly lastStart?: CalendarDate;
}

/**
 * The cautions of a run that its winder has yet to read at this machine: all of them at first use, after a long absence and where
 * their words changed; later those alone that no earlier run there had. Empty: nothing is to be asked.
 */
export function cautionsToRead(
  cautions: readonly Caution[],
  { acknowledged, lastStart }: CautionsKnown,
  today: CalendarDate,
): readonly Caution[] {
  const current = acknowledged.filter(({ edition }) => edition === CAUTIONS_EDITION);
  const last = [...acknowledged.map(({ on }) => on), ...(lastStart ? [lastStart] : [])].toSorted().at(-1);
  if (last === undefined || daysBetween(last, today) > AWAY_DAYS) return cautions;
  const known = new Set(current.flatMap((each) => each.cautions));
  return cautions.filter((caution) => !known.has(caution));
}
