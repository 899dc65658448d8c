import type { MachineWearView } from '../../contract/index.js';
import { addDays, type CalendarDate, daysBetween } from '../../core/foundation/index.js';
import { calibrationPoints, USUAL_TOLERANCE_M } from '../../core/recipes/index.js';
import { type FirstString, type MachineWear, machineWear } from '../../core/winding/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { shopCalibration } from '../calibration/shop-calibration.js';
import { stringsRead } from '../calibration/strings-read.js';

/** Days are counted from here; only their differences mean something. */
const DAY_ZERO = '2000-01-01' as CalendarDate;

/** Whether the winding machines drift, as a screen shows it; nothing is written. */
export async function machineWearSeen(tx: ReadTransaction, now: string): Promise<MachineWearView> {
  const since = await gearsSince(tx);
  const countsFrom = new Map([...since].map(([machineId, date]) => [machineId, dayOf(date)]));
  const found = machineWear(await firstStrings(tx), { toleranceM: USUAL_TOLERANCE_M, countsFrom });
  const byMachine = new Map(found.machines.map((wear) => [wear.machineId, wear]));
  const winders = (await tx.records.all('machine')).filter(({ body }) => body.kind === 'winder');
  return {
    at: now,
    toleranceM: USUAL_TOLERANCE_M,
    machines: winders.map(({ id }) =>
      wearSeen(byMachine.get(id) ?? { machineId: id, verdict: 'too-little', points: [] }, since.get(id)),
    ),
    instruments: found.shifts.map(({ instrument, day, byM }) => ({ instrument, from: dateOf(day), byM })),
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

/** When the gears of a machine were last measured anew, where they were: its record then has another dial table. */
async function gearsSince(tx: ReadTransaction): Promise<ReadonlyMap<string, CalendarDate>> {
  const since = new Map<string, CalendarDate>();
  for (const { id, version } of await tx.records.all('machine')) {
    if (version === 1) continue;
    const versions = await tx.records.versions('machine', id);
    versions.forEach(({ body, updatedAt }, at) => {
      const before = versions[at - 1]?.body;
      if (before && gearsOf(before) !== gearsOf(body)) since.set(id, updatedAt.slice(0, 10) as CalendarDate);
    });
  }
  return since;
}

const gearsOf = (body: object): string => JSON.stringify('dialTable' in body ? body.dialTable : null);

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
