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

/** Moments along the width, from the first at 0 to the last at `width`; what lies beyond stands at the edge. */
export function alongTime(
  { from, to }: { readonly from: string; readonly to: string },
  width: number,
): (moment: string) => number {
  const [first, last] = [Date.parse(from), Date.parse(to)];
  return (moment) => {
    const share = last === first ? 0.5 : (Date.parse(moment) - first) / (last - first);
    return width * Math.min(1, Math.max(0, share));
  };
}

interface Moment {
  readonly at: string;
}

/** Readings in pieces, cut wherever a gap lies between two of them: no line is drawn over what nobody read. */
export function cutAtGaps<Reading extends Moment>(
  readings: readonly Reading[],
  gaps: readonly { readonly from: string; readonly to: string }[],
): readonly (readonly Reading[])[] {
  const pieces: Reading[][] = [];
  let before: Reading | undefined;
  for (const reading of readings) {
    const last = before;
    const isApart = !last || gaps.some(({ from, to }) => from >= last.at && to <= reading.at);
    if (isApart) pieces.push([reading]);
    else pieces.at(-1)!.push(reading);
    before = reading;
  }
  return pieces;
}
