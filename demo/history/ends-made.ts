import type { Chance } from '../../src/core/foundation/index.js';
import type { EndCheck, EndSheet } from '../../src/core/winding/index.js';
import { normal } from './normal.js';

/** Ends as they come off the bench, in shares of the wire's least strength; all invented. */
const MIDDLE_SHARE = 0.9;
const SPREAD = 0.05;
/** Of a twist that was laid badly. */
const SLIPS_SHARE = 0.006;
const SLIPPED_AT = 0.5;
/** Above this it is the wire that breaks first. */
const WIRE_ITSELF = 1.04;
const GAUGE_DIGIT_N = 0.1;
const OFF_BY_A_TURN = 0.04;
const CROOKED = 0.015;
const LENGTH_M = 0.0008;

/** Length, turns, tail and seat of an end, as the rule and the eye say. */
export function endLooksLike({ cut, twists, tail }: EndSheet, chance: Chance): EndCheck {
  const turnsOff = chance.next() < OFF_BY_A_TURN ? chance.pick([-1, 1]) : 0;
  return {
    lengthM: rounded(cut.lengthOverAllM + normal(chance, LENGTH_M), 0.0005),
    twists: twists.wanted + turnsOff,
    tailM: rounded(Math.max(0, tail.wantedM + normal(chance, tail.wantedM / 2)), 0.0001),
    seat: chance.next() < CROOKED ? 'crooked' : 'straight',
  };
}

/** A pull to the proof force, or on until something gives way; nothing where no strength of the wire is known. */
export function endPulled({ pull }: EndSheet, isToBreak: boolean, chance: Chance): EndCheck {
  if (!pull) return {};
  const { proofN, leastBreakingN, share: proofShare } = pull;
  const isBad = chance.next() < SLIPS_SHARE;
  const share = isBad ? SLIPPED_AT : MIDDLE_SHARE * Math.exp(normal(chance, SPREAD));
  const forceN = (of: number) => rounded(of * leastBreakingN, GAUGE_DIGIT_N);
  if (isBad) return { pull: { forceN: forceN(share), came: 'slipped' } };
  if (share < proofShare || (isToBreak && share < WIRE_ITSELF)) {
    return { pull: { forceN: forceN(share), came: 'at-twist' } };
  }
  if (isToBreak) return { pull: { forceN: forceN(WIRE_ITSELF), came: 'in-length' } };
  return { pull: { forceN: rounded(proofN + GAUGE_DIGIT_N, GAUGE_DIGIT_N), came: 'held' } };
}

/** What the ends of the invented shop are pulled with. */
export const PULL_GAUGE = 'pull gauge, bench';

const rounded = (value: number, digit: number): number => {
  const perUnit = Math.round(1 / digit);
  return Math.round(value * perUnit) / perUnit;
};
