import { afterCounts, type Gamma, gammaBand, gammaMean } from './gamma-poisson.js';
import { LEAST_FIGURE } from './learned-change.js';
import type { PastSetUp } from './past-set-up.js';

/** How far a machine as a whole may be off its record, and a kind of change off its machine, as shapes of gammas of mean 1: standard
 * deviations of 1/2 and 0.35. Choices of ours. */
const MACHINE_SHAPE = 4;
const KIND_SHAPE = 8;
/** So much weight has it, in set-ups, that scrap scatters as Poisson says. */
const POISSON_WEIGHT = 4;

/** How many times the figure of the record: mean and the middle nine tenths. */
export interface Times {
  readonly times: number;
  readonly low: number;
  readonly high: number;
}

interface Sums {
  readonly counted: number;
  readonly exposure: number;
}

/**
 * Scrap per set-up of one kind on a machine, as a multiple of what the machine's record says. Counts are Poisson with mean figure x
 * theta; theta has a gamma prior about the machine's own multiple, which comes from its other kinds of change and, before there are
 * any, from its record. Where scrap scatters more than Poisson, every set-up counts for less by as much.
 */
export function learnScrap(own: readonly PastSetUp[], others: readonly (readonly PastSetUp[])[]): Times {
  const spread = overdispersion([own, ...others]);
  const counted = (setUps: readonly PastSetUp[]): Sums => {
    const { counted: strings, exposure } = sums(setUps);
    return { counted: strings / spread, exposure: exposure / spread };
  };
  const machine = afterCounts({ shape: MACHINE_SHAPE, rate: MACHINE_SHAPE }, counted(others.flat()));
  const kind = afterCounts(widened(machine), counted(own));
  return { times: gammaMean(kind), ...gammaBand(kind) };
}

/** A kind of change about its machine: the same mean, the two variances together. */
function widened(machine: Gamma): Gamma {
  const shape = 1 / (1 / machine.shape + 1 / KIND_SHAPE);
  return { shape, rate: shape / gammaMean(machine) };
}

const exposureOf = ({ figureScrap }: PastSetUp): number => Math.max(figureScrap, LEAST_FIGURE);

function sums(setUps: readonly PastSetUp[]): Sums {
  return {
    counted: setUps.reduce((sum, { scrap }) => sum + scrap, 0),
    exposure: setUps.reduce((sum, setUp) => sum + exposureOf(setUp), 0),
  };
}

/** Pearson's chi-squared about each kind's own mean over its degrees of freedom, drawn towards 1; never below it. */
function overdispersion(kinds: readonly (readonly PastSetUp[])[]): number {
  let chiSquared = 0;
  let freedom = 0;
  for (const setUps of kinds) {
    const { counted, exposure } = sums(setUps);
    if (setUps.length < 2 || counted === 0) continue;
    freedom += setUps.length - 1;
    for (const setUp of setUps) {
      const expected = (exposureOf(setUp) * counted) / exposure;
      chiSquared += (setUp.scrap - expected) ** 2 / expected;
    }
  }
  return Math.max(1, (chiSquared + POISSON_WEIGHT) / (freedom + POISSON_WEIGHT));
}
