import {
  type Drift,
  machineWear,
  type ReadOfRun,
  type ShiftWithinRuns,
  shiftsWithinRuns,
  withoutShifts,
} from '../winding/index.js';
import { type OddLot, oddLots } from './odd-lots.js';
import { type RunSeen, valuesOf } from './run-seen.js';

/**
 * What the numbers say now, causes only, the strongest of each kind first: a machine whose first strings drift, an
 * instrument that reads otherwise from a day on, a lot of wire that is uneven along its length or of another weight.
 */
export interface Findings {
  readonly machines: readonly DriftingMachine[];
  readonly instruments: readonly ShiftWithinRuns[];
  readonly lots: readonly OddLot[];
}

export interface DriftingMachine {
  readonly machineId: string;
  readonly verdict: 'drifts' | 'replace';
  readonly drift: Drift;
  /** Mean day of the first month that it rests on. */
  readonly fromDay: number;
  readonly runs: number;
}

export interface FindingsAsked {
  readonly toleranceM: number;
  /** Of each machine the day from which it counts, where its gears were measured anew. */
  readonly countsFrom: ReadonlyMap<string, number>;
}

/**
 * Instruments first, since what they read wrong would be taken for a machine's drift; then machines by first strings
 * of wound runs, as `machineWear` has it; then lots.
 */
export function findings(runs: readonly RunSeen[], asked: FindingsAsked): Findings {
  const instruments = shiftsWithinRuns(readsOf(runs));
  const firsts = valuesOf(runs, 'first').filter(({ run }) => run.isWound);
  const strings = firsts.map(({ run: { machineId, day }, value, instrument }) =>
    withoutShifts({ machineId, instrument, day, offM: value, weight: 1 }, instruments),
  );
  const { machines } = machineWear(strings, { ...asked, areShiftsOut: true });
  return {
    machines: machines
      .flatMap(({ machineId, verdict, drift, points }) =>
        drift && (verdict === 'drifts' || verdict === 'replace')
          ? [
              {
                machineId,
                verdict,
                drift,
                fromDay: points[0]!.day,
                runs: points.reduce((sum, each) => sum + each.runs, 0),
              },
            ]
          : [],
      )
      .sort((a, b) => Math.abs(b.drift.z) - Math.abs(a.drift.z)),
    instruments: instruments.toSorted((a, b) => a.p - b.p),
    lots: [...oddLots(runs, 'along'), ...oddLots(runs, 'weight')],
  };
}

/** What each instrument read of each run. */
export const readsOf = (runs: readonly RunSeen[]): readonly ReadOfRun[] =>
  runs.flatMap(({ runId, day, parts }) =>
    parts.flatMap(({ instrument, offM, strings }) =>
      strings === 0 ? [] : [{ runId, instrument, day, offM, strings }],
    ),
  );
