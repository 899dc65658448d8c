import type { SinglePlan } from './single-plan.js';

/** Letters of the standard and their sample sizes in single sampling. */
const SIZES = {
  A: 2,
  B: 3,
  C: 5,
  D: 8,
  E: 13,
  F: 20,
  G: 32,
  H: 50,
  J: 80,
  K: 125,
  L: 200,
  M: 315,
  N: 500,
  P: 800,
  Q: 1250,
  R: 2000,
} as const;

export type CodeLetter = keyof typeof SIZES;
export type InspectionLevel = 'S1' | 'S2' | 'S3' | 'S4' | 'I' | 'II' | 'III';

/** Acceptable quality levels whose columns were read, bad strings in a hundred. */
export const QUALITY_LEVELS = [0.65, 1, 1.5, 2.5, 4, 6.5, 10, 15] as const;
export type QualityLevel = (typeof QUALITY_LEVELS)[number];

const LETTERS = Object.keys(SIZES) as CodeLetter[];

/** Largest lot of each row, and its letters in the order of the levels (MIL-STD-105E, table I). */
const ROWS: readonly (readonly [number, string])[] = [
  [8, 'AAAAAAB'],
  [15, 'AAAAABC'],
  [25, 'AABBBCD'],
  [50, 'ABBCCDE'],
  [90, 'BBCCCEF'],
  [150, 'BBCDDFG'],
  [280, 'BCDEEGH'],
  [500, 'BCDEFHJ'],
  [1200, 'CCEFGJK'],
  [3200, 'CDEGHKL'],
  [10_000, 'CDFGJLM'],
  [35_000, 'CDFHKMN'],
  [150_000, 'DEGJLNP'],
  [500_000, 'DEGJMPQ'],
  [Number.POSITIVE_INFINITY, 'DEHKNQR'],
];
const LEVELS: readonly InspectionLevel[] = ['S1', 'S2', 'S3', 'S4', 'I', 'II', 'III'];

/**
 * Code letter for a lot of two or more (MIL-STD-105E (1989), table I; the same in ANSI/ASQ Z1.4 and ISO 2859-1). Level
 * II was read; the other columns are from memory of the standard.
 */
export function codeLetter(lot: number, level: InspectionLevel = 'II'): CodeLetter {
  const [, letters] = ROWS.find(([most]) => lot <= most)!;
  return letters[LEVELS.indexOf(level)] as CodeLetter;
}

/** What stands in a cell: an acceptance number, or the way to the plan that is used instead. */
export type PlanCell = number | 'up' | 'down';

/**
 * The acceptance number rises one step with each letter and each quality level, so a cell is known by their sum. Below
 * nought stand arrows down, beyond 21 arrows up.
 */
const NORMAL: readonly PlanCell[] = [0, 'up', 'down', 1, 2, 3, 5, 7, 10, 14, 21];
const FIRST_OF_NORMAL = 5;

/** MIL-STD-105E, table II-A, levels 0.65 to 15, letters A to Q. */
export function normalCell(letter: CodeLetter, level: QualityLevel): PlanCell {
  const place = LETTERS.indexOf(letter) + QUALITY_LEVELS.indexOf(level) - FIRST_OF_NORMAL;
  const cell = place < 0 ? 'down' : (NORMAL[place] ?? 'up');
  // Above A there is no plan to go to.
  return cell === 'up' && letter === 'A' ? 'down' : cell;
}

/**
 * MIL-STD-105E, table II-B (tightened). Only the run of the acceptance numbers was read, not where its arrows point:
 * undefined there.
 */
export function tightenedCell(letter: CodeLetter, level: QualityLevel): number | undefined {
  return TIGHTENED[LETTERS.indexOf(letter) + QUALITY_LEVELS.indexOf(level) - FIRST_OF_TIGHTENED];
}

const FIRST_OF_TIGHTENED = 6;
const TIGHTENED: readonly (number | undefined)[] = [0, undefined, undefined, 1, 2, 3, 5, 8, 12, 18];

/** The plan of the standard for a lot, arrows followed; a sample as large as the lot means to look at all. */
export function standardPlan(
  lot: number,
  level: QualityLevel,
  inspection: InspectionLevel = 'II',
): SinglePlan & { readonly letter: CodeLetter } {
  let place = LETTERS.indexOf(codeLetter(lot, inspection));
  let cell = normalCell(LETTERS[place]!, level);
  while (typeof cell !== 'number') {
    place += cell === 'up' ? -1 : 1;
    cell = normalCell(LETTERS[place]!, level);
  }
  const letter = LETTERS[place]!;
  return { letter, size: Math.min(SIZES[letter], lot), acceptUpTo: cell };
}
