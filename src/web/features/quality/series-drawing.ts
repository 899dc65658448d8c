import type { QualityView } from '../../../contract/index.js';
import { plotScale } from '../../parts/plot-scale.js';

type Series = QualityView['series'];

export const PLOT = { width: 900, height: 360, left: 70, right: 20, top: 34, bottom: 34 } as const;

/** A chart of runs as lines to draw: thousands of points as two paths, so that they are there at once. */
export interface SeriesDrawing {
  readonly ordinary: string;
  readonly signals: string;
  readonly xs: readonly number[];
  readonly ticks: readonly number[];
  /** Where a value lies; and where a tick of the axis does, in the axis's own unit. */
  readonly up: (value: number) => number;
  readonly tickUp: (tick: number) => number;
  /** Where days are written below: the first, the middle and the last point. */
  readonly dated: readonly number[];
}

/** Points by their time, up by their value; `onAxis` turns a value into what the axis is read in, lines are drawn too. */
export function seriesDrawing(
  { points, signals, limits }: Series,
  onAxis: (value: number) => number,
  lines: readonly number[],
): SeriesDrawing {
  const times = points.map(({ at }) => Date.parse(at));
  const across = plotScale([times[0] ?? 0, times.at(-1) ?? 0], [PLOT.left, PLOT.width - PLOT.right]);
  const values = points.map(({ value }) => onAxis(value));
  const [least, most] = [smallest(values), -smallest(values.map((value) => -value))];
  const shown = [
    least,
    most,
    ...(limits ? [limits.lower, limits.upper].map(onAxis) : []),
    ...lines.map(onAxis),
  ];
  const { place, ticks } = plotScale(shown, [PLOT.height - PLOT.bottom, PLOT.top]);
  const xs = times.map((time) => across.place(time));
  const isSignal = new Set(signals);
  const dot = (at: number): string => `M${xs[at]!.toFixed(1)} ${place(values[at]!).toFixed(1)}h0`;
  const last = points.length - 1;
  return {
    ordinary: points.map((_, at) => (isSignal.has(at) ? '' : dot(at))).join(''),
    signals: signals.map((at) => diamond(xs[at]!, place(values[at]!))).join(''),
    xs,
    ticks,
    up: (value) => place(onAxis(value)),
    tickUp: place,
    dated: [...new Set([0, Math.floor(last / 2), last])].filter((at) => at >= 0),
  };
}

const smallest = (values: readonly number[]): number =>
  values.reduce((least, each) => Math.min(least, each), Number.POSITIVE_INFINITY);

const diamond = (x: number, y: number): string => `M${x.toFixed(1)} ${(y - 5).toFixed(1)}l5 5l-5 5l-5 -5z`;

/** Place of the point nearest to a place across the drawing. */
export function nearestPoint(xs: readonly number[], x: number): number {
  let nearest = 0;
  xs.forEach((each, at) => {
    if (Math.abs(each - x) < Math.abs(xs[nearest]! - x)) nearest = at;
  });
  return nearest;
}
