import { invariant } from '../../foundation/index.js';
import { choleskyFactor, choleskyInverse, choleskySolve, type SquareMatrix } from '../../numeric/index.js';
import type { CalibrationPrior } from './calibration-prior.js';
import type { WithoutLots } from './eliminate-lots.js';
import type { Layout } from './layout.js';
import { SEAT_UNKNOWNS, UNKNOWNS } from './seat-unknowns.js';

/** Variances, one for each of `SEAT_UNKNOWNS`: what a shop's strings share, how families differ, how machines do. */
export interface SeatSpreads {
  readonly shop: readonly number[];
  readonly family: readonly number[];
  readonly machine: readonly number[];
}

/** What is believed of all seat unknowns together, as deviations from the prior's middle, in the order of the layout. */
export interface SeatPosterior {
  readonly layout: Layout;
  readonly mean: Float64Array;
  readonly covariance: SquareMatrix;
  readonly spreads: SeatSpreads;
}

/** The spreads as the prior states them. */
export function statedSpreads({ unknowns, shares }: CalibrationPrior): SeatSpreads {
  const of = (share: number) => SEAT_UNKNOWNS.map((name) => share * unknowns[name].u ** 2);
  return { shop: of(shares.shop), family: of(shares.family), machine: of(shares.machine) };
}

/** Change of a variance below which another round teaches nothing. */
const SETTLED_SHARE = 0.01;
const MOST_ROUNDS = 4;

/**
 * Two-level normal model, seat = prior middle + shop + family + machine: exact posterior at given spreads, and the
 * spreads by EM, drawn towards the stated ones as if so many families had been seen before (A. P. Dempster, N. M.
 * Laird & D. B. Rubin, J. R. Stat. Soc. B 39 (1977) 1, 4.4; the draw is that of a scaled inverse chi-square prior,
 * A. Gelman et al., Bayesian Data Analysis, 3rd ed., 15.2). `start`: spreads of an earlier fit, to be sooner there.
 */
export function seatPosterior(
  equations: WithoutLots,
  layout: Layout,
  how: { readonly prior: CalibrationPrior; readonly start?: SeatSpreads | undefined },
): SeatPosterior {
  const stated = statedSpreads(how.prior);
  let spreads = how.start ?? stated;
  for (let round = 1; ; round++) {
    const posterior = posteriorAt(equations, layout, spreads);
    const next = learnedSpreads(posterior, stated, how.prior.spreadDegrees);
    if (round === MOST_ROUNDS || largestChange(spreads, next) < SETTLED_SHARE) return posterior;
    spreads = next;
  }
}

function posteriorAt({ seat, seatRight }: WithoutLots, layout: Layout, spreads: SeatSpreads): SeatPosterior {
  const { size } = seat;
  const entries = seat.entries.slice();
  for (let place = 0; place < size; place++) {
    const at = place * size + place;
    entries[at] = entries[at]! + 1 / varianceOf(place, layout, spreads);
  }
  const factor = choleskyFactor({ size, entries });
  invariant(factor, 'measurements and prior together determine every seat');
  return {
    layout,
    mean: choleskySolve(factor, seatRight),
    covariance: choleskyInverse(factor),
    spreads,
  };
}

function varianceOf(place: number, { families }: Layout, { shop, family, machine }: SeatSpreads): number {
  const unknown = place % UNKNOWNS;
  const block = (place - unknown) / UNKNOWNS;
  if (block === 0) return shop[unknown]!;
  return (block <= families.length ? family : machine)[unknown]!;
}

function learnedSpreads(posterior: SeatPosterior, stated: SeatSpreads, degrees: number): SeatSpreads {
  const { layout, mean, covariance } = posterior;
  const { families, machines } = layout;
  const learned = (from: number, count: number, before: readonly number[]): number[] =>
    before.map((variance, unknown) => {
      let sum = degrees * variance;
      for (let block = 0; block < count; block++) {
        const place = UNKNOWNS * (from + block) + unknown;
        sum += mean[place]! ** 2 + covariance.entries[place * covariance.size + place]!;
      }
      return sum / (degrees + count);
    });
  return {
    shop: stated.shop,
    family: learned(1, families.length, stated.family),
    machine: learned(1 + families.length, machines.length, stated.machine),
  };
}

const largestChange = (before: SeatSpreads, after: SeatSpreads): number =>
  Math.max(
    ...(['family', 'machine'] as const).flatMap((level) =>
      before[level].map((variance, unknown) => Math.abs(after[level][unknown]! / variance - 1)),
    ),
  );
