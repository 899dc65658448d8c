import type { QualityView } from '../../contract/index.js';
import { addDays, type CalendarDate, daysBetween } from '../../core/foundation/index.js';
import { findings, type RunSeen } from '../../core/quality/index.js';
import { USUAL_TOLERANCE_M } from '../../core/recipes/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { gearsSince } from '../wear/gears-since.js';
import { DAY_ZERO } from './runs-seen.js';

/** How far back a cause is sought: what is older than a year says little of today's machines. Our own choice, no source. */
export const YEAR_DAYS = 365;

/** What the numbers of a year say, with days as dates. */
export async function findingsSeen(
  tx: ReadTransaction,
  runs: readonly RunSeen[],
  from: CalendarDate,
): Promise<QualityView['findings']> {
  const since = await gearsSince(tx);
  const countsFrom = new Map([...since].map(([machineId, date]) => [machineId, daysBetween(DAY_ZERO, date)]));
  const { machines, instruments, lots } = findings(runs, { toleranceM: USUAL_TOLERANCE_M, countsFrom });
  return {
    from,
    machines: machines.map(({ machineId, verdict, drift, runs, fromDay }) => ({
      machineId,
      verdict,
      perDayM: drift.perDayM,
      soFarM: drift.soFarM,
      days: drift.days,
      since: dateOf(fromDay),
      ...(drift.daysLeft ? { daysLeft: drift.daysLeft.value } : {}),
      z: drift.z,
      runs,
    })),
    instruments: instruments.map(({ day, ...shift }) => ({ ...shift, since: dateOf(day) })),
    lots: [...lots],
  };
}

const dateOf = (day: number): CalendarDate => addDays(DAY_ZERO, Math.round(day));
