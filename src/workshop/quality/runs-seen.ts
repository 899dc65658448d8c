import { type CalendarDate, daysBetween } from '../../core/foundation/index.js';
import type { PartSeen, RunSeen, StringSums } from '../../core/quality/index.js';
import type { MeasuredRun, ReadTransaction } from '../../store/index.js';
import { lotName } from '../calibration/lot-name.js';
import { type Wanted, wantedOfRun } from './wanted-of-run.js';

/** Days are counted from here; only their differences mean something. */
export const DAY_ZERO = '2000-01-01' as CalendarDate;

export interface Period {
  readonly since: string;
  readonly before: string;
}

/** Runs of a period as the quality room takes them: what was measured against what was wanted, spools by their lots. */
export async function runsSeen(tx: ReadTransaction, period: Period): Promise<readonly RunSeen[]> {
  const runs = await tx.quality.runs(period);
  const wantedOf = await wantedOfRun(tx, runs);
  const lotOf = new Map(
    (await tx.records.all('spool')).map(({ id, body }) => [id, lotName(body.wireId, body.lot)]),
  );
  return runs.map((run) => runSeen(run, wantedOf(run), lotOf));
}

function runSeen(run: MeasuredRun, wanted: Wanted | undefined, lotOf: ReadonlyMap<string, string>): RunSeen {
  const { runId, machineId, recipeId, winderId, at, goodCount, scrapCount, spoolIds, lengthM } = run;
  return {
    runId,
    machineId,
    recipeId,
    winderId,
    isWound: wanted?.isWound ?? false,
    lots: [...new Set(spoolIds.flatMap((id) => lotOf.get(id) ?? []))],
    at,
    day: daysBetween(DAY_ZERO, at.slice(0, 10) as CalendarDate),
    good: goodCount,
    scrap: scrapCount,
    readings: run.sums.reduce((sum, { readings }) => sum + readings, 0),
    parts: wanted ? run.sums.map((sums) => partSeen(sums, wanted, lengthM)) : [],
  };
}

function partSeen(sums: StringSums, wanted: Wanted, lengthM: number): PartSeen {
  const { instrument, isFirst, isLargest, strings, meanM, meanKg, weighed } = sums;
  const { squaresM2, alongSquaresM2, alongDegrees } = sums;
  return {
    instrument,
    isFirst,
    strings,
    offM: strings === 0 ? 0 : meanM - (isLargest ? wanted.largestDiameterM : wanted.meanDiameterM),
    squaresM2,
    alongSquaresM2,
    alongDegrees,
    weighed,
    weightOff: weighed === 0 ? 0 : meanKg / (wanted.unitWeightKgPerM * lengthM) - 1,
  };
}
