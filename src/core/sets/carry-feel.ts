/** Pull and, where it is known, bend force of one string. */
export interface StringFeel {
  readonly pullN: number;
  readonly bendN: number | undefined;
}

/**
 * The feel of a liked set carried to an instrument of `count` strings.
 *
 * As many strings: each its own. Twelve from six: both strings of a course take the liked string's; six from
 * twelve: each takes that of its course's low string. Otherwise by position from the treble; bass strings
 * that the liked set does not have carry on the trend of ln pull (and ln bend force) over the whole liked
 * set, a straight line by least squares, from its last string. The whole set tells the trend, not its last step: neighbouring
 * pulls zigzag by several per cent, and that must not be carried on.
 */
export function carriedTo(liked: readonly StringFeel[], count: number): StringFeel[] {
  if (liked.length === 6 && count === 12) return liked.flatMap((feel) => [feel, feel]);
  if (liked.length === 12 && count === 6) return liked.filter((_, index) => index % 2 === 1);
  const last = liked.at(-1)!;
  const pullSlope = slope(liked.map(({ pullN }) => Math.log(pullN)));
  const bends = liked.flatMap(({ bendN }) => (bendN === undefined ? [] : [Math.log(bendN)]));
  const bendSlope = bends.length === liked.length ? slope(bends) : undefined;
  return Array.from({ length: count }, (_, index) => {
    const known = liked[index];
    if (known) return known;
    const beyond = index - (liked.length - 1);
    return {
      pullN: last.pullN * Math.exp(pullSlope * beyond),
      bendN:
        bendSlope === undefined || last.bendN === undefined
          ? undefined
          : last.bendN * Math.exp(bendSlope * beyond),
    };
  });
}

/** Slope of the least-squares line through values at 0, 1, 2 ...; 0 for one value. */
function slope(values: readonly number[]): number {
  const middle = (values.length - 1) / 2;
  let rise = 0;
  let run = 0;
  for (const [index, value] of values.entries()) {
    rise += (index - middle) * value;
    run += (index - middle) ** 2;
  }
  return run === 0 ? 0 : rise / run;
}
