import { pareto, shareInterval } from '../stats/index.js';
import type { RunSeen } from './run-seen.js';

/** Strings of a run that somebody threw away for one reason. */
export interface ScrapSeen {
  readonly runId: string;
  readonly station: 'winder' | 'coiler';
  readonly reason: string;
  readonly count: number;
}

/** How many strings came through winding and coiling right the first time. */
export interface FirstPass {
  readonly wound: number;
  readonly right: number;
  /** The share, with its exact 95 % interval. */
  readonly share: number;
  readonly from: number;
  readonly to: number;
}

export interface ReasonRow {
  /** Nobody told the reason where it is left out: mostly what was thrown away in setting up. */
  readonly reason?: string;
  readonly winder: number;
  readonly coiler: number;
  /** Of all scrap, with all reasons above. */
  readonly cumulative: number;
}

/** Right first time over all wound, of runs that were closed (J. Clopper & E. Pearson's interval). None where nothing was wound. */
export function firstPass(runs: readonly RunSeen[], scrap: readonly ScrapSeen[]): FirstPass | undefined {
  const closed = new Set(runs.filter(({ good, scrap }) => good + scrap > 0).map(({ runId }) => runId));
  const wound = runs.reduce((sum, run) => sum + run.good + run.scrap, 0);
  const good = runs.reduce((sum, run) => sum + run.good, 0);
  const rejected = scrap
    .filter(({ runId, station }) => station === 'coiler' && closed.has(runId))
    .reduce((sum, { count }) => sum + count, 0);
  const right = Math.max(0, good - rejected);
  const interval = shareInterval({ bad: right, of: wound });
  return interval.ok ? { wound, right, share: right / wound, ...interval.value } : undefined;
}

/** Reasons of scrap, the commonest first, at the machine and in coiling; what was thrown away untold comes as one more. */
export function scrapReasons(runs: readonly RunSeen[], scrap: readonly ScrapSeen[]): readonly ReasonRow[] {
  const known = new Set(runs.map(({ runId }) => runId));
  const own = scrap.filter(({ runId }) => known.has(runId));
  const counts = new Map<string, { winder: number; coiler: number }>();
  const add = (reason: string, station: 'winder' | 'coiler', count: number): void => {
    const row = counts.get(reason) ?? { winder: 0, coiler: 0 };
    row[station] += count;
    counts.set(reason, row);
  };
  for (const { reason, station, count } of own) add(reason, station, count);
  const untold = runs.reduce((sum, run) => sum + run.scrap, 0) - told(own);
  if (untold > 0) add(UNTOLD, 'winder', untold);
  return pareto(new Map([...counts].map(([reason, { winder, coiler }]) => [reason, winder + coiler]))).map(
    ({ reason, cumulative }) => ({
      ...(reason === UNTOLD ? {} : { reason }),
      ...counts.get(reason)!,
      cumulative,
    }),
  );
}

/** No reason that anybody can give. */
const UNTOLD = '\u0000';

const told = (scrap: readonly ScrapSeen[]): number =>
  scrap.filter(({ station }) => station === 'winder').reduce((sum, { count }) => sum + count, 0);
