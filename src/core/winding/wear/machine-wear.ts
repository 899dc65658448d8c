import { type TimedValue, trendSlope, trendTest } from '../../stats/index.js';
import type { DatedString, FirstString } from './first-string.js';
import { type InstrumentShift, machinesAndShifts } from './instrument-shifts.js';
import { fitLevels, levelCells, type MonthOfMachine } from './machine-levels.js';

export interface WearAsked {
  /** How far the mean diameter may stand off to either side, m. */
  readonly toleranceM: number;
  /** Of each machine, the day from which it counts: strings before it were wound with other gears. */
  readonly countsFrom: ReadonlyMap<string, number>;
  /** Whether what instruments read otherwise is out of the strings already, and need not be sought in them. */
  readonly areShiftsOut?: boolean;
}

/** How a machine stood in one month, by strings wound as the sheet says. */
export interface WearPoint {
  /** Mean day of its strings. */
  readonly day: number;
  readonly offM: number;
  /** Standard uncertainty. */
  readonly u: number;
  readonly runs: number;
}

/**
 * What may be said of a machine:
 * - `too-little`: too few months to tell anything.
 * - `steady`: no trend, and one that would use up half the tolerance in a year can be excluded.
 * - `unclear`: no trend is proven, and none excluded.
 * - `drifts`: it drifts, and tolerance is left for a while.
 * - `replace`: it drifts, and the tolerance is used up, or will be within the quarter.
 */
export type WearVerdict = 'too-little' | 'steady' | 'unclear' | 'drifts' | 'replace';

export interface MachineWear {
  readonly machineId: string;
  readonly points: readonly WearPoint[];
  readonly verdict: WearVerdict;
  /** Left out where there is too little. */
  readonly drift?: Drift;
}

export interface Drift {
  /** Kendall's statistic over its standard deviation. */
  readonly z: number;
  /** m a day; the interval is of 90 %. */
  readonly perDayM: { readonly value: number; readonly from: number; readonly to: number };
  /** How far it has come over the days seen, m. */
  readonly soFarM: number;
  readonly days: number;
  /** Until the tolerance is used up, from the last day seen; 0 where it is. Only where a trend is proven; `latest` is
   * left out where the slowest rate of the interval never uses it up. */
  readonly daysLeft?: { readonly value: number; readonly earliest: number; readonly latest?: number };
}

/** Our own choices, no source: three runs for a month to count, six of them to speak of a trend. */
const MONTH_DAYS = 30;
const LEAST_RUNS = 3;
const LEAST_MONTHS = 6;
/** 1 in 100 by chance (two-sided): a shop of a few machines looks every month. */
const PROVEN_Z = 2.576;
const NINETY_Z = 1.6449;
const YEAR_DAYS = 365;
/** A quarter: time to order gears and to choose the day. */
const SOON_DAYS = 90;

export interface WearFound {
  readonly machines: readonly MachineWear[];
  /** Instruments that read otherwise from some day on. */
  readonly shifts: readonly (InstrumentShift & { readonly day: number })[];
}

/**
 * Whether machines drift, from first strings of runs: what instruments read is taken out, then a trend is sought in each
 * machine's months (Kendall's test) with its rate (median of pairwise slopes, Sen 1968).
 */
export function machineWear(strings: readonly FirstString[], asked: WearAsked): WearFound {
  if (strings.length === 0) return { machines: [], shifts: [] };
  const first = Math.min(...strings.map(({ day }) => day));
  const dated = strings.map(
    (string): DatedString => ({ ...string, month: Math.floor((string.day - first) / MONTH_DAYS) }),
  );
  const { fit, shifts } = asked.areShiftsOut ? machinesAlone(dated) : machinesAndShifts(dated);
  const machineIds = new Set(strings.map(({ machineId }) => machineId));
  return {
    machines: [...machineIds].map((machineId) => {
      const own = fit.machines.filter((month) => month.machineId === machineId);
      const points = pointsOf(own, asked.countsFrom.get(machineId));
      return { machineId, points, ...judged(points, asked.toleranceM) };
    }),
    shifts: shifts.map((shift) => ({ ...shift, day: first + shift.month * MONTH_DAYS })),
  };
}

const machinesAlone = (strings: readonly DatedString[]) => ({
  fit: fitLevels(levelCells(strings), (instrument) => instrument),
  shifts: [],
});

const pointsOf = (
  months: readonly MonthOfMachine[],
  countsFrom = Number.NEGATIVE_INFINITY,
): readonly WearPoint[] =>
  months
    .filter(({ runs, day }) => runs >= LEAST_RUNS && day >= countsFrom)
    .map(({ machineId: _, ...point }) => point)
    .sort((a, b) => a.day - b.day);

function judged(points: readonly WearPoint[], toleranceM: number): Pick<MachineWear, 'verdict' | 'drift'> {
  const timed = points.map(({ day, offM }): TimedValue => ({ time: day, value: offM }));
  const slope = points.length < LEAST_MONTHS ? undefined : trendSlope(timed, NINETY_Z);
  if (!slope) return { verdict: 'too-little' };
  const { z } = trendTest(timed);
  const days = points.at(-1)!.day - points[0]!.day;
  const drift: Drift = {
    z,
    perDayM: { value: slope.slope, from: slope.from, to: slope.to },
    soFarM: slope.slope * days,
    days,
  };
  const isProven = Math.abs(z) > PROVEN_Z && Math.sign(slope.from) === Math.sign(slope.to);
  if (!isProven) {
    const fastest = Math.max(Math.abs(slope.from), Math.abs(slope.to));
    return { verdict: fastest * YEAR_DAYS <= toleranceM / 2 ? 'steady' : 'unclear', drift };
  }
  const daysLeft = leftOf(drift, toleranceM);
  return { verdict: daysLeft.value <= SOON_DAYS ? 'replace' : 'drifts', drift: { ...drift, daysLeft } };
}

/** How long a drift takes to use up what it has left of the tolerance, reckoned from where the machine began. */
function leftOf({ perDayM, days }: Drift, toleranceM: number): NonNullable<Drift['daysLeft']> {
  const at = (rate: number): number => Math.max(0, toleranceM / Math.abs(rate) - days);
  const slow = Math.min(Math.abs(perDayM.from), Math.abs(perDayM.to));
  const fast = Math.max(Math.abs(perDayM.from), Math.abs(perDayM.to));
  return {
    value: at(perDayM.value),
    earliest: at(fast),
    ...(slow > 0 ? { latest: at(slow) } : {}),
  };
}
