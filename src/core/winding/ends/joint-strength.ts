import { betaDistribution } from '../../stats/index.js';
import { censoredMean, type SpreadPrior } from './censored-normal.js';
import { type EndPull, gaveWay, judgePull, shareOf } from './end-pull.js';

/** What the pull tests of one kind of end say, in shares of the wire's own least breaking force. */
export interface JointStrength {
  /** Ends pulled to the proof force or until something gave way. */
  readonly tried: number;
  readonly good: number;
  /** The last so many were good, without one between that was not. */
  readonly goodInARow: number;
  /** Share of all such ends that hold the proof force, with exact limits. Left out before the first. */
  readonly holds?: { readonly low: number; readonly high: number; readonly confidence: number };
  /** The middle end's strength with credible limits; left out until enough ends gave way. */
  readonly efficiency?: {
    readonly middle: number;
    readonly low: number;
    readonly high: number;
    readonly credible: number;
    readonly gaveWay: number;
  };
  /** At least `coverage` of such ends carry at least `share`: sure to `confidence`, whatever the distribution. */
  readonly atLeast?: {
    readonly share: number;
    readonly coverage: number;
    readonly confidence: number;
    readonly isEnough: boolean;
  };
}

export const CONFIDENCE = 0.95;
/** So many of the ends are to be shown good before the checks are thinned out. Our own aim. */
export const COVERAGE_AIM = 0.95;
/** Fewer ends that gave way say little of where they do. */
const LEAST_GIVEN_WAY = 3;
const CREDIBLE = 0.9;
/** Older pulls than these say little of how ends are made now. */
const LAST = 300;

/**
 * Before any pull: the middle end holds 90 % of the wire's least strength, give or take a third; single ends lie
 * within some 8 % of it. Workshop values, no source; a dozen ends that gave way overrule them.
 */
const PRIOR: SpreadPrior = {
  mean: { value: Math.log(0.9), u: 0.3 },
  logSpread: { value: Math.log(0.08), u: 0.7 },
};

/** What pulls tell of the ends, the latest last; all of one kind of end in one kind of wire. */
export function jointStrength(all: readonly EndPull[], proofShare: number): JointStrength {
  const pulls = all.slice(-LAST).filter((pull) => judgePull(pull, proofShare) !== 'short');
  const verdicts = pulls.map((pull) => judgePull(pull, proofShare) === 'good');
  const good = verdicts.filter(Boolean).length;
  const tried = pulls.length;
  return {
    tried,
    good,
    goodInARow: tried - 1 - verdicts.lastIndexOf(false),
    ...(tried === 0
      ? {}
      : {
          holds: { ...limitsOf(good, tried), confidence: CONFIDENCE },
          atLeast: atLeastOf(pulls),
        }),
    ...efficiencyOf(pulls),
  };
}

/** Exact limits of a share (C. J. Clopper & E. S. Pearson, Biometrika 26, 1934, 404). */
function limitsOf(good: number, tried: number): { readonly low: number; readonly high: number } {
  const tail = (1 - CONFIDENCE) / 2;
  return {
    low: good === 0 ? 0 : betaDistribution(good, tried - good + 1).quantile(tail),
    high: good === tried ? 1 : betaDistribution(good + 1, tried - good).quantileAbove(tail),
  };
}

/**
 * The lowest of n pulls bounds a share p of all ends with confidence 1 - p^n (S. S. Wilks, Ann. Math. Statist. 12,
 * 1941, 91). An end that did not give way is as strong as it was pulled, or stronger: the bound stays true.
 */
function atLeastOf(pulls: readonly EndPull[]): NonNullable<JointStrength['atLeast']> {
  const coverage = (1 - CONFIDENCE) ** (1 / pulls.length);
  return {
    share: Math.min(...pulls.map(shareOf)),
    coverage,
    confidence: CONFIDENCE,
    isEnough: coverage >= COVERAGE_AIM,
  };
}

/** In logarithms of the share: strengths are spread by shares of themselves. */
function efficiencyOf(pulls: readonly EndPull[]): Pick<JointStrength, 'efficiency'> {
  const broken = pulls.filter(gaveWay);
  if (broken.length < LEAST_GIVEN_WAY) return {};
  const times = new Map<number, number>();
  for (const pull of pulls) {
    if (gaveWay(pull)) continue;
    const reading = Math.round(Math.log(shareOf(pull)) * ALIKE) / ALIKE;
    times.set(reading, (times.get(reading) ?? 0) + 1);
  }
  const { middle, low, high } = censoredMean(
    {
      seen: broken.map((pull) => Math.log(shareOf(pull))),
      higherThan: [...times].map(([reading, count]) => ({ reading, times: count })),
    },
    PRIOR,
    CREDIBLE,
  );
  return {
    efficiency: {
      middle: Math.exp(middle),
      low: Math.exp(low),
      high: Math.exp(high),
      credible: CREDIBLE,
      gaveWay: broken.length,
    },
  };
}

/** Pulls that were let go within a thousandth of each other count as one. */
const ALIKE = 1000;
