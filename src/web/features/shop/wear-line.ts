import type { MachineWearView } from '../../../contract/index.js';

type Machine = MachineWearView['machines'][number];

const A_DAY_MS = 86_400_000;
const NINETY = 1.6449;

export interface WearLine {
  /** Months with half of their 90 % intervals, days counted from the first of them. */
  readonly points: readonly { readonly day: number; readonly offM: number; readonly halfM: number }[];
  /** The straight line of the drift: at the first day and at the last. */
  readonly line?: { readonly fromM: number; readonly toM: number };
  /** Where the tolerance ends on the side to which it drifts, from where the machine began. */
  readonly limitM?: number;
}

/** What is drawn of a machine's months: points, the drift through the middle of them, and where tolerance ends. */
export function wearLine({ points, drift }: Machine, toleranceM: number): WearLine {
  const first = points[0];
  if (!first) return { points: [] };
  const dated = points.map(({ date, offM, u }) => ({
    day: (Date.parse(date) - Date.parse(first.date)) / A_DAY_MS,
    offM,
    halfM: NINETY * u,
  }));
  if (!drift) return { points: dated };
  const rate = drift.perDayM.value;
  const fromM = median(dated.map(({ day, offM }) => offM - rate * day));
  const toM = fromM + rate * dated.at(-1)!.day;
  return {
    points: dated,
    line: { fromM, toM },
    ...(drift.daysLeft ? { limitM: fromM + Math.sign(rate) * toleranceM } : {}),
  };
}

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[half]! : (sorted[half - 1]! + sorted[half]!) / 2;
}
