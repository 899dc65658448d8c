import { machineCalendar } from './machine-calendar.js';
import type { PlanMachine, PlannedRun } from './plan.js';

/** A window on the plan's axis, such as one day. */
export interface PlanWindow {
  readonly fromMinute: number;
  readonly toMinute: number;
}

/**
 * Good strings of a run that are finished inside a window: its quantity comes off evenly over its running
 * time, whole strings counted when done. Over windows that meet, the counts add up to the quantity.
 */
export function stringsMadeWithin(
  window: PlanWindow,
  run: PlannedRun & { readonly quantity: number },
  shifts: PlanMachine['shifts'],
): number {
  const { workedBefore } = machineCalendar(shifts);
  const running = workedBefore(run.toMinute) - workedBefore(run.runFromMinute);
  const madeBy = (minute: number): number => {
    if (minute >= run.toMinute) return run.quantity;
    if (minute <= run.runFromMinute) return 0;
    return Math.floor((run.quantity * (workedBefore(minute) - workedBefore(run.runFromMinute))) / running);
  };
  return madeBy(window.toMinute) - madeBy(window.fromMinute);
}

/** Worked minutes of a run, set-up included, that fall inside a window. */
export function busyMinutesWithin(
  window: PlanWindow,
  run: PlannedRun,
  shifts: PlanMachine['shifts'],
): number {
  const { workedBefore } = machineCalendar(shifts);
  const from = Math.max(window.fromMinute, run.setUpFromMinute);
  const to = Math.min(window.toMinute, run.toMinute);
  return to > from ? workedBefore(to) - workedBefore(from) : 0;
}
