import type { Chance } from '../../src/core/foundation/index.js';
import type { BadWireLot } from './causes.js';

/** Faults that a string can have when it comes off the machine, in the shop's own words. */
const WOUND_FAULTS = [
  'gap in the wrap',
  'turns ride up',
  'end slipped',
  'rough wrap',
  'kinked core',
] as const;
const PLAIN_FAULTS = ['end slipped', 'kinked', 'rust spot'] as const;

/** Shares of strings with a fault, and of faults that each look finds. Invented. */
const FAULT_SHARE: Readonly<Record<string, number>> = {
  wren: 0.02,
  'twin-finch': 0.03,
  'old-heron': 0.035,
  'two-herons': 0.04,
  bench: 0.01,
};
const BAD_LOT_ADDS = 0.06;
const WINDER_FINDS = 0.7;
const COILER_FINDS = 0.6;

export interface ScrapOfReason {
  readonly reason: string;
  readonly count: number;
}

/** What became of the strings of a run. Who finds a fault, and who does not, is chance. */
export interface StringsChecked {
  readonly good: number;
  readonly foundByWinder: readonly ScrapOfReason[];
  readonly foundByCoiler: readonly ScrapOfReason[];
  /** Faulty strings among the good ones that nobody found. */
  readonly escaped: number;
}

export interface StringsMade {
  readonly machine: string;
  readonly isWound: boolean;
  readonly lots: readonly string[];
  readonly made: number;
}

/** Looks through the strings of a run as winder and coiler do, each with their own eyes. */
export function checkStrings(
  { machine, isWound, lots, made }: StringsMade,
  { lot: badLot }: BadWireLot,
  chance: Chance,
): StringsChecked {
  const share = (FAULT_SHARE[machine] ?? 0.02) + (lots.includes(badLot) ? BAD_LOT_ADDS : 0);
  const winder: string[] = [];
  const coiler: string[] = [];
  let escaped = 0;
  for (let string = 0; string < made; string++) {
    if (chance.next() >= share) continue;
    const reason = chance.pick(isWound ? WOUND_FAULTS : PLAIN_FAULTS);
    if (chance.next() < WINDER_FINDS) winder.push(reason);
    else if (chance.next() < COILER_FINDS) coiler.push(reason);
    else escaped++;
  }
  return {
    good: made - winder.length,
    foundByWinder: byReason(winder),
    foundByCoiler: byReason(coiler),
    escaped,
  };
}

export const countOf = (scrap: readonly ScrapOfReason[]): number =>
  scrap.reduce((sum, { count }) => sum + count, 0);

const byReason = (reasons: readonly string[]): readonly ScrapOfReason[] =>
  [...new Set(reasons)].map((reason) => ({
    reason,
    count: reasons.filter((each) => each === reason).length,
  }));
