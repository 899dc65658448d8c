import type { MachineWearView } from '../../contract/index.js';
import { addDays, type CalendarDate, daysBetween } from '../../core/foundation/index.js';
import { readsOf } from '../../core/quality/index.js';
import { calibrationPoints, USUAL_TOLERANCE_M } from '../../core/recipes/index.js';
import {
  type FirstString,
  type MachineWear,
  machineWear,
  shiftsWithinRuns,
  withoutShifts,
} from '../../core/winding/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { shopCalibration } from '../calibration/shop-calibration.js';
import { stringsRead } from '../calibration/strings-read.js';
import { DAY_ZERO, runsSeen } from '../quality/runs-seen.js';
import { gearsSince } from './gears-since.js';

const EVER = { since: '', before: '9' };

/** Whether the winding machines drift, as a screen shows it; nothing is written. */
export async function machineWearSeen(tx: ReadTransaction, now: string): Promise<MachineWearView> {
  const since = await gearsSince(tx);
  const countsFrom = new Map([...since].map(([machineId, date]) => [machineId, dayOf(date)]));
  const met = shiftsWithinRuns(readsOf(await runsSeen(tx, EVER)));
  const strings = (await firstStrings(tx)).map((string) => withoutShifts(string, met));
  const found = machineWear(strings, { toleranceM: USUAL_TOLERANCE_M, countsFrom });
  const shifts = [...met, ...found.shifts].sort((a, b) => a.day - b.day);
  const byMachine = new Map(found.machines.map((wear) => [wear.machineId, wear]));
  const winders = (await tx.records.all('machine')).filter(({ body }) => body.kind === 'winder');
  return {
    at: now,
    toleranceM: USUAL_TOLERANCE_M,
    machines: winders.map(({ id }) =>
      wearSeen(byMachine.get(id) ?? { machineId: id, verdict: 'too-little', points: [] }, since.get(id)),
    ),
    instruments: shifts.map(({ instrument, day, byM }) => ({ instrument, from: dateOf(day), byM })),
  };
}

/** First strings wound by the sheet, against what their family on their machine lets expect all year round. */
async function firstStrings(tx: ReadTransaction): Promise<readonly FirstString[]> {
  const { calibration } = await shopCalibration(tx);
  const read = new Map((await stringsRead(tx)).map((string) => [string.stringId, string]));
  return calibrationPoints(calibration, Number.POSITIVE_INFINITY).diameters.points.flatMap((point) => {
    const string = read.get(point.stringId);
    if (!string) return [];
    const { machineId, measured, predicted, isFlagged } = point;
    // What lies a little off may be wear, and counts in full; only what lies far off counts for less.
    const weight = isFlagged ? point.weight : 1;
    const day = dayOf(string.at.slice(0, 10) as CalendarDate);
    return [{ machineId, instrument: string.instrument, day, offM: measured - predicted, weight }];
  });
}

const wearSeen = (
  { machineId, verdict, points, drift }: MachineWear,
  since: CalendarDate | undefined,
): MachineWearView['machines'][number] => ({
  machineId,
  verdict,
  points: points.map(({ day, ...point }) => ({ date: dateOf(day), ...point })),
  ...(since === undefined ? {} : { since }),
  ...(drift === undefined ? {} : { drift }),
});

const dayOf = (date: CalendarDate): number => daysBetween(DAY_ZERO, date);
const dateOf = (day: number): CalendarDate => addDays(DAY_ZERO, Math.round(day));
