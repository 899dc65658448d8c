/** A straight scale from what is drawn to where. */
export interface PlotScale {
  readonly place: (value: number) => number;
  readonly ticks: readonly number[];
}

/**
 * A scale that holds all values with some room at both ends, its ticks at round figures. Where all values are one,
 * it opens round that one.
 */
export function plotScale(values: readonly number[], [from, to]: readonly [number, number]): PlotScale {
  const least = Math.min(...values);
  const most = Math.max(...values);
  const size = Math.max(Math.abs(least), Math.abs(most));
  const spread = most - least > size * ONE_VALUE ? most - least : size * 0.1 || 1;
  const low = least - spread * ROOM;
  const high = most + spread * ROOM;
  const place = (value: number): number => from + ((value - low) / (high - low)) * (to - from);
  return { place, ticks: roundTicks(low, high) };
}

const ROOM = 0.08;
/** Values that differ by less than this of their size differ by the rounding of a sum only: they are one value. */
const ONE_VALUE = 1e-9;
const WISHED_TICKS = 5;

/** Multiples of 1, 2 or 5 times a power of ten between two figures, about five of them. */
export function roundTicks(low: number, high: number): readonly number[] {
  const rough = (high - low) / WISHED_TICKS;
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((times) => times * power).find((size) => size >= rough) ?? rough;
  const first = Math.ceil(low / step - 1e-9);
  const count = Math.floor(high / step + 1e-9) - first + 1;
  return Array.from({ length: Math.max(0, count) }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}

/** Decimals by which every tick can be told from the next. */
export function tickDecimals(ticks: readonly number[]): number {
  const [first, second] = ticks;
  if (first === undefined || second === undefined) return 2;
  return Math.max(0, -Math.floor(Math.log10(second - first) + 1e-9));
}
