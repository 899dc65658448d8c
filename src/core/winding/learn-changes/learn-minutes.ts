import type { Times } from './learn-scrap.js';
import type { PastSetUp } from './past-set-up.js';

/** How far a machine as a whole may be off its record, and a kind of change off its machine, as standard deviations of the logarithm.
 * Choices of ours. */
const MACHINE_SD = 0.4;
const KIND_SD = 0.25;
/** How much one set-up differs from the next of its kind, before they tell, and how many set-ups that counts for. Choices of ours. */
const USUAL_SD = 0.35;
const USUAL_WEIGHT = 6;
/** The middle nine tenths of a normal distribution. */
const NINE_TENTHS = 1.6449;

/** Mean and variance. */
interface Normal {
  readonly mean: number;
  readonly variance: number;
}

/**
 * Minutes of a set-up of one kind on a machine, as a multiple of what the machine's record says. Logarithms of the multiples are
 * normal about the kind's own mean, that about the machine's, that about 0; the scatter between set-ups is pooled over the machine's
 * kinds and taken as known. What is given is the expected multiple, exp(mean + half the variances), and where it may lie. Undefined
 * where no set-up tells its minutes.
 */
export function learnMinutes(
  own: readonly PastSetUp[],
  others: readonly (readonly PastSetUp[])[],
): (Times & { readonly setUps: number }) | undefined {
  const ownLogs = logs(own);
  if (ownLogs.length === 0) return undefined;
  const otherLogs = others.map(logs).filter(({ length }) => length > 0);
  const between = scatter([ownLogs, ...otherLogs]);
  const machine = otherLogs.reduce<Normal>(
    (known, kind) => together(known, { mean: mean(kind), variance: KIND_SD ** 2 + between / kind.length }),
    { mean: 0, variance: MACHINE_SD ** 2 },
  );
  const before = { mean: machine.mean, variance: machine.variance + KIND_SD ** 2 };
  const after = together(before, { mean: mean(ownLogs), variance: between / ownLogs.length });
  const times = (log: number): number => Math.exp(log + between / 2);
  const reach = NINE_TENTHS * Math.sqrt(after.variance);
  return {
    setUps: ownLogs.length,
    times: times(after.mean + after.variance / 2),
    low: times(after.mean - reach),
    high: times(after.mean + reach),
  };
}

const logs = (setUps: readonly PastSetUp[]): readonly number[] =>
  setUps.flatMap(({ minutes, figureMinutes }) =>
    minutes !== undefined && minutes > 0 && figureMinutes > 0 ? [Math.log(minutes / figureMinutes)] : [],
  );

function together(one: Normal, other: Normal): Normal {
  const variance = 1 / (1 / one.variance + 1 / other.variance);
  return { mean: variance * (one.mean / one.variance + other.mean / other.variance), variance };
}

/** Variance between set-ups of the same kind. */
function scatter(kinds: readonly (readonly number[])[]): number {
  const squares = kinds.flatMap((kind) => kind.map((log) => (log - mean(kind)) ** 2));
  const freedom = squares.length - kinds.length;
  const sum = squares.reduce((total, square) => total + square, 0);
  return (USUAL_WEIGHT * USUAL_SD ** 2 + sum) / (USUAL_WEIGHT + freedom);
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
