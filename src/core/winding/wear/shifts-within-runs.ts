import { grouped } from '../../foundation/index.js';
import { changePoint, groupDifference, holm } from '../../stats/index.js';

/** What one instrument read of the strings of a run, less what was wanted. */
export interface ReadOfRun {
  readonly runId: string;
  readonly instrument: string;
  readonly day: number;
  readonly offM: number;
  readonly strings: number;
}

/** That an instrument reads otherwise from a day on, as strings show that came off one machine in one run. */
export interface ShiftWithinRuns {
  readonly instrument: string;
  readonly day: number;
  /** How much more it reads since, m, with its 95 % interval. */
  readonly byM: number;
  readonly fromM: number;
  readonly toM: number;
  /** Made good for the instruments looked at. */
  readonly p: number;
  /** Runs in which it was met by another, before and since. */
  readonly runsBefore: number;
  readonly runsSince: number;
}

/** Our own choices, no source: a clear verdict, and as many runs as a month gives. */
const PROVEN = 0.01;
const LEAST_RUNS = 8;
const MOST_SHIFTS = 6;

/**
 * Instruments that read otherwise from some day on, told by runs that were measured with more than one: what machine,
 * recipe and wire do is the same for all strings of a run, so the difference between its instruments is theirs. A step is
 * sought in the differences of each (Pettitt's test, made good for the number of instruments by Holm); the clearest is
 * taken out of the readings, and the next one sought, so that a true micrometer does not stand accused of its neighbour.
 */
export function shiftsWithinRuns(reads: readonly ReadOfRun[]): readonly ShiftWithinRuns[] {
  const shifts: ShiftWithinRuns[] = [];
  let left = [...reads].sort((a, b) => a.day - b.day);
  while (shifts.length < MOST_SHIFTS) {
    const clearest = clearestShift(left);
    if (!clearest) break;
    shifts.push(clearest);
    left = left.map((read) => withoutShifts(read, [clearest]));
  }
  return shifts.sort((a, b) => a.day - b.day);
}

/** A reading as it would have been had the instrument read on as it did. */
export const withoutShifts = <Read extends Pick<ReadOfRun, 'instrument' | 'day' | 'offM'>>(
  read: Read,
  shifts: readonly ShiftWithinRuns[],
): Read => ({
  ...read,
  offM: shifts
    .filter(({ instrument, day }) => instrument === read.instrument && read.day >= day)
    .reduce((off, { byM }) => off - byM, read.offM),
});

function clearestShift(reads: readonly ReadOfRun[]): ShiftWithinRuns | undefined {
  const looked = [...againstOthers(reads)].flatMap(([instrument, met]) => {
    const step = changePoint(met.map(({ apartM }) => apartM));
    return step.ok ? [{ instrument, met, at: step.value.at, p: step.value.p }] : [];
  });
  const adjusted = holm(looked.map(({ p }) => p));
  const found = looked.flatMap(({ instrument, met, at }, index): readonly ShiftWithinRuns[] => {
    const [before, since] = [met.slice(0, at), met.slice(at)];
    const size = groupDifference(
      before.map(({ apartM }) => apartM),
      since.map(({ apartM }) => apartM),
    );
    const isShort = Math.min(before.length, since.length) < LEAST_RUNS;
    if (adjusted[index]! >= PROVEN || isShort || !size.ok) return [];
    const { difference: byM, interval } = size.value;
    return [
      {
        instrument,
        day: since[0]!.day,
        byM,
        fromM: interval.from,
        toM: interval.to,
        p: adjusted[index]!,
        runsBefore: before.length,
        runsSince: since.length,
      },
    ];
  });
  // Of two that met mostly each other both look changed: the one whose step is the larger against all has changed.
  return found.sort((a, b) => Math.abs(b.byM) - Math.abs(a.byM))[0];
}

interface Met {
  readonly day: number;
  readonly apartM: number;
}

/** Of each instrument, run by run in time, how much more it read than the others in the same run. */
function againstOthers(reads: readonly ReadOfRun[]): ReadonlyMap<string, readonly Met[]> {
  const met = new Map<string, Met[]>();
  for (const run of grouped(reads, ({ runId }) => runId).values()) {
    const instruments = [...grouped(run, ({ instrument }) => instrument)];
    if (instruments.length < 2) continue;
    for (const [instrument, own] of instruments) {
      const others = run.filter((read) => read.instrument !== instrument);
      const known = met.get(instrument) ?? [];
      met.set(instrument, known);
      known.push({ day: own[0]!.day, apartM: meanOff(own) - meanOff(others) });
    }
  }
  return met;
}

function meanOff(reads: readonly ReadOfRun[]): number {
  const strings = reads.reduce((sum, read) => sum + read.strings, 0);
  return reads.reduce((sum, read) => sum + read.strings * read.offM, 0) / strings;
}
