import {
  baseOfSingles,
  type ControlLimits,
  changePoint,
  meanLimits,
  outside,
  patternEnds,
} from '../stats/index.js';
import type { Measure, RunValue } from './run-seen.js';

/** Runs in the order in which they were begun, one point each, or several in a row where there are very many. */
export interface RunSeries {
  readonly points: readonly SeriesPoint[];
  /** Where a point lies by chance alone; left out where there are too few to tell. */
  readonly limits?: ControlLimits;
  /** Places, from 0, of points outside of the limits, or last of nine in a row to one side of the centre. */
  readonly signals: readonly number[];
  /** Where the level changed for good, if it did. */
  readonly change?: SeriesChange;
}

export interface SeriesPoint {
  /** The run, or the first of those that the point stands for. */
  readonly runId: string;
  readonly at: string;
  readonly value: number;
  readonly strings: number;
  readonly runs: number;
}

export interface SeriesChange {
  /** Place of the first point after it. */
  readonly point: number;
  readonly before: number;
  readonly after: number;
  readonly p: number;
}

export const MOST_POINTS = 5000;

/** Values of runs as a chart shows them, with limits by the moving range and the clearest step, if one is proven. */
export function runSeries(values: readonly RunValue[], measure: Measure, most = MOST_POINTS): RunSeries {
  const points = inRows(values, Math.ceil(values.length / most)).map(asPoint);
  const [scaled, back] = measure === 'along' ? [Math.log, Math.exp] : [asIs, asIs];
  const figures = points.map(({ value }) => scaled(value));
  const base = points.length < LEAST_POINTS ? undefined : baseOfSingles(figures);
  const change = stepOf(figures);
  const inUnit = ({ centre, lower, upper }: ControlLimits): ControlLimits => ({
    centre: back(centre),
    lower: back(lower),
    upper: back(upper),
  });
  const limits = base?.ok ? meanLimits(base.value) : undefined;
  return {
    points,
    ...(limits ? { limits: inUnit(limits) } : {}),
    signals: limits ? signalsOf(figures, limits) : [],
    ...(change ? { change: { ...change, before: back(change.before), after: back(change.after) } } : {}),
  };
}

/** Our own choice, no source: limits from fewer points would say more of the points than of the work. */
const LEAST_POINTS = 20;
const asIs = (value: number): number => value;

function signalsOf(figures: readonly number[], limits: ControlLimits): readonly number[] {
  const run = patternEnds(
    figures.map((figure) => figure - limits.centre),
    { kind: 'beyond', need: 9, of: 9, sigmas: 0 },
  );
  return [...new Set([...outside(figures, limits), ...run])].sort((a, b) => a - b);
}

/** The test compares each point with each: of very many, means of some in a row say as much. */
const MOST_TESTED = 500;
const PROVEN = 0.001;

function stepOf(figures: readonly number[]): SeriesChange | undefined {
  const row = Math.max(1, Math.ceil(figures.length / MOST_TESTED));
  const step = changePoint(inRows(figures, row).map(mean));
  if (!step.ok || step.value.p >= PROVEN) return undefined;
  const { at, before, after, p } = step.value;
  return { point: at * row, before, after, p };
}

function asPoint(row: readonly RunValue[]): SeriesPoint {
  const { run } = row[0]!;
  const strings = row.reduce((sum, each) => sum + each.strings, 0);
  return {
    runId: run.runId,
    at: run.at,
    value: mean(row.map(({ value }) => value)),
    strings,
    runs: row.length,
  };
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

function inRows<Item>(items: readonly Item[], count: number): readonly (readonly Item[])[] {
  const rows: (readonly Item[])[] = [];
  for (let from = 0; from < items.length; from += count) rows.push(items.slice(from, from + count));
  return rows;
}
