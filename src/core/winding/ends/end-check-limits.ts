import type { CheckedThing, EndCheck } from './end-check.js';

/** What no such end can measure, with what one can. SI units; twists in turns. */
export interface ImpossibleReading {
  readonly code: 'end-check.impossible';
  readonly thing: CheckedThing;
  readonly value: number;
  readonly least: number;
  readonly most: number;
}

/** The wire whose end it is. */
export interface EndedPiece {
  readonly lengthM: number;
  readonly leastBreakingN?: number;
}

/**
 * What a reading may be, told before it is typed. Wide on purpose: what lies in here may be wrong, and is what the
 * check is for; what lies outside was mistyped. Twists up to four times the most that we ask for, a tail up to 50 mm,
 * a length within half of it, a force up to twice the wire's least strength (the standards' bands are far narrower).
 */
export function possibleReading(
  thing: Exclude<CheckedThing, 'seat'>,
  { lengthM, leastBreakingN = STRONGEST_N }: EndedPiece,
): { readonly least: number; readonly most: number } {
  switch (thing) {
    case 'length':
      return { least: lengthM / 2, most: lengthM * 1.5 };
    case 'twists':
      return { least: 0, most: 40 };
    case 'tail':
      return { least: 0, most: 0.05 };
    case 'pull':
      return { least: 0.1, most: 2 * leastBreakingN };
  }
}

/** The first reading that no such end can have; undefined where all may be. */
export function impossibleReading(check: EndCheck, piece: EndedPiece): ImpossibleReading | undefined {
  const readings = [
    ['length', check.lengthM],
    ['twists', check.twists],
    ['tail', check.tailM],
    ['pull', check.pull?.forceN],
  ] as const;
  for (const [thing, value] of readings) {
    if (value === undefined) continue;
    const { least, most } = possibleReading(thing, piece);
    if (!(value >= least && value <= most))
      return { code: 'end-check.impossible', thing, value, least, most };
  }
  return undefined;
}

/** Where the wire's strength is unknown: more than any string's core bears. */
const STRONGEST_N = 2500;
