import { WINDER_AT } from '../../../demo/index.js';
import type { Act, HistoryDay } from './act.js';
import { chooseRuns } from './choose-runs.js';
import { actsOfRun } from './wind-run.js';

/** The winders begin at twenty to eight, and take breath between runs. Minutes of the day. */
const FIRST_RUN = 460;
const BETWEEN_RUNS = 12;

/** The day's runs, one after the other where one winder has them. */
export function actsOfWinding(day: HistoryDay): readonly Act[] {
  const free = new Map<string, number>();
  return chooseRuns(day.book).flatMap((run) => {
    const winder = WINDER_AT[run.machine] ?? '';
    const acts = actsOfRun(day, run, free.get(winder) ?? FIRST_RUN);
    const end = acts.reduce((last, { minute }) => Math.max(last, minute), 0);
    free.set(winder, end + BETWEEN_RUNS);
    return acts;
  });
}
