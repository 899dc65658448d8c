import { CONFIDENCE, COVERAGE_AIM, type JointStrength } from './joint-strength.js';

/** How many ends of a set-up are pulled, and why. */
export interface PiecesToPull {
  readonly pieces: number;
  /** `no-record`: it is not known here what was pulled before. */
  readonly why: 'no-record' | 'not-shown-yet' | 'shown' | 'one-gave-way';
  /** Good ones one after the other so far, and how many it takes to show the aim. */
  readonly goodInARow: number;
  readonly goodNeeded: number;
  readonly confidence: number;
  readonly coverage: number;
}

/** Workshop values, no source: enough to find a wrong set-up at once, and few enough to be done. */
const WHILE_LEARNING = 3;
const ONCE_SHOWN = 1;
const AFTER_A_FAILURE = 5;

/**
 * Good ends in a row that show, with this confidence, that at least this share of all is good:
 * n = ln(1 - confidence) / ln(coverage), 59 for 95 % and 95 % (S. S. Wilks 1941).
 */
export const goodInARowFor = (confidence: number, coverage: number): number =>
  Math.ceil(Math.log(1 - confidence) / Math.log(coverage) - 1e-9);

/**
 * Ends to pull of a run: some of every run while the shop's own pulls do not yet show that such ends hold, one once
 * they do, more after one that gave way. No run is too short for one.
 */
export function piecesToPull(
  quantity: number,
  before?: Pick<JointStrength, 'tried' | 'good' | 'goodInARow'>,
): PiecesToPull {
  const goodNeeded = goodInARowFor(CONFIDENCE, COVERAGE_AIM);
  const why = before ? whyOf(before, goodNeeded) : 'no-record';
  return {
    pieces: Math.min(quantity, PIECES[why]),
    why,
    goodInARow: before?.goodInARow ?? 0,
    goodNeeded,
    confidence: CONFIDENCE,
    coverage: COVERAGE_AIM,
  };
}

const PIECES: Readonly<Record<PiecesToPull['why'], number>> = {
  'no-record': WHILE_LEARNING,
  'not-shown-yet': WHILE_LEARNING,
  shown: ONCE_SHOWN,
  'one-gave-way': AFTER_A_FAILURE,
};

function whyOf(
  { tried, good, goodInARow }: Pick<JointStrength, 'tried' | 'good' | 'goodInARow'>,
  goodNeeded: number,
): PiecesToPull['why'] {
  if (goodInARow >= goodNeeded) return 'shown';
  return tried > good && goodInARow < RECENT ? 'one-gave-way' : 'not-shown-yet';
}

/** After so many good ones a failure is past. Workshop value. */
const RECENT = 20;
