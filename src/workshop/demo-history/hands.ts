import { DEMO_PEOPLE, type DemoPerson, seededIds } from '../../../demo/index.js';
import { PERMISSIONS, permissionsOf } from '../../contract/index.js';
import { type CalendarDate, type Chance, invariant } from '../../core/foundation/index.js';
import type { Performer } from '../perform.js';
import type { Actor } from '../use-case.js';

/** Whose hand does the next thing, and at what moment of the history. */
export interface Hands extends Performer {
  /** From now on it is this person who acts, at this minute of the day. */
  take(hand: DemoPerson | 'console', date: CalendarDate, minute: number): void;
  /** Makes a person known by the id of the record. */
  meet(person: DemoPerson, personId: string): void;
}

/** One thing done takes so long before the same hand does the next. */
const BETWEEN_MS = 4_000;

/** One pair of hands after the other, with the history's own clock and with ids that its seed gives. */
export function hands(chance: Chance): Hands {
  const actors = new Map<string, Actor>([['console', { by: 'console', permissions: new Set(PERMISSIONS) }]]);
  let hand = 'console';
  let momentMs = 0;
  return {
    get actor() {
      const actor = actors.get(hand);
      invariant(actor, `${hand} was taken into the shop`);
      return actor;
    },
    clock: {
      now: () => {
        momentMs += BETWEEN_MS;
        return new Date(momentMs).toISOString();
      },
    },
    newId: seededIds(chance, () => momentMs),
    take: (next, date, minute) => {
      hand = next;
      momentMs = Math.max(momentMs, Date.parse(`${date}T00:00:00Z`) + Math.round(minute * 60_000));
    },
    meet: (person, personId) => {
      const permissions = permissionsOf(DEMO_PEOPLE[person].roles);
      actors.set(person, { by: `person/${personId}`, personId, permissions });
    },
  };
}
