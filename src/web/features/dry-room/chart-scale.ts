/** Where values stand in a strip of a chart. */
export interface Strip {
  /** From the top of the strip, in its own units of height. */
  readonly place: (value: number) => number;
  readonly least: number;
  readonly most: number;
}

/** A strip that shows all values and all limits, with some air above and below. */
export function stripOf(values: readonly number[], limits: readonly number[], height: number): Strip {
  const all = [...values, ...limits];
  const low = Math.min(...all);
  const high = Math.max(...all);
  const air = Math.max((high - low) * 0.12, 1e-9);
  const [least, most] = [low - air, high + air];
  return { least, most, place: (value) => height * ((most - value) / (most - least)) };
}

/** Moments along the width, the first at 0 and the last at `width`; a single one in the middle. */
export function alongTime(moments: readonly string[], width: number): (moment: string) => number {
  const times = moments.map((moment) => Date.parse(moment));
  const from = Math.min(...times);
  const to = Math.max(...times);
  return (moment) => (to === from ? width / 2 : (width * (Date.parse(moment) - from)) / (to - from));
}
