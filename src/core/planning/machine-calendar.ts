import { invariant } from '../foundation/index.js';
import type { PlanMachine } from './plan.js';

/**
 * A machine's shifts as one thread of worked minutes: work is laid on the thread end to end and read back on
 * the plan's axis, so that a run pauses where a shift ends.
 */
export interface MachineCalendar {
  /** Worked minutes that lie before a minute of the plan. */
  workedBefore(minute: number): number;
  /** Minute of the plan at which work resumes after so many worked minutes: at a shift's end, the next start. */
  startOf(worked: number): number;
  /** Minute of the plan at which so many worked minutes are done: at a shift's end, that end. */
  endOf(worked: number): number;
}

/** Reads a machine's shifts; the last one is open-ended. */
export function machineCalendar(shifts: PlanMachine['shifts']): MachineCalendar {
  invariant(shifts.length > 0, 'a machine has at least one shift');
  const from = shifts.map((shift) => shift.fromMinute);
  const length = shifts.map((shift) => shift.toMinute - shift.fromMinute);
  length[length.length - 1] = Number.POSITIVE_INFINITY;
  const workedAtStart: number[] = [];
  let worked = 0;
  for (const [i, minutes] of length.entries()) {
    invariant(minutes > 0 && (i === 0 || from[i]! >= from[i - 1]! + length[i - 1]!), 'shifts ascend, apart');
    workedAtStart.push(worked);
    worked += minutes;
  }
  return {
    workedBefore: (minute) => {
      const i = lastAtOrBefore(from, minute);
      return i < 0 ? 0 : workedAtStart[i]! + Math.min(minute - from[i]!, length[i]!);
    },
    startOf: (done) => {
      const i = Math.max(0, lastAtOrBefore(workedAtStart, done));
      return from[i]! + (done - workedAtStart[i]!);
    },
    endOf: (done) => {
      const i = Math.max(0, lastBefore(workedAtStart, done));
      return from[i]! + (done - workedAtStart[i]!);
    },
  };
}

/** Index of the last of ascending numbers that is <= x; -1 where none is. */
function lastAtOrBefore(ascending: readonly number[], x: number): number {
  let [low, high] = [0, ascending.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (ascending[middle]! <= x) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Index of the last of ascending numbers that is < x; -1 where none is. */
function lastBefore(ascending: readonly number[], x: number): number {
  let i = lastAtOrBefore(ascending, x);
  while (i >= 0 && ascending[i]! >= x) i--;
  return i;
}
