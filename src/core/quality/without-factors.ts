/**
 * What is left of values when the levels of some factors are taken out, such as machine, recipe and instrument: a level
 * for each name of each factor, held by turns (backfitting; J. Friedman & W. Stuetzle, J. Amer. Statist. Assoc. 76
 * (1981) 817), which comes to least squares. `namesOf` gives for each factor the name at each value.
 */
export function withoutFactors(
  values: readonly number[],
  namesOf: readonly (readonly string[])[],
): readonly number[] {
  const rest = Float64Array.from(values);
  const factors = namesOf.map(numbered);
  for (let round = 0; round < ROUNDS; round++) {
    let moved = 0;
    for (const factor of factors) moved = Math.max(moved, takeOut(rest, factor));
    if (moved < SETTLED) break;
  }
  return [...rest];
}

const ROUNDS = 40;
/** A nanometre's thousandth, or a millionth of a millionth of a share: far below what any instrument shows. */
const SETTLED = 1e-12;

interface Factor {
  readonly numbers: Int32Array;
  readonly levels: number;
}

function numbered(names: readonly string[]): Factor {
  const known = new Map<string, number>();
  const numbers = Int32Array.from(names, (name) => {
    const number = known.get(name) ?? known.size;
    known.set(name, number);
    return number;
  });
  return { numbers, levels: known.size };
}

/** Takes the mean of each level off; gives the largest of them. */
function takeOut(rest: Float64Array, { numbers, levels }: Factor): number {
  const sums = new Float64Array(levels);
  const counts = new Float64Array(levels);
  rest.forEach((value, at) => {
    const level = numbers[at]!;
    sums[level] = sums[level]! + value;
    counts[level] = counts[level]! + 1;
  });
  rest.forEach((value, at) => {
    const level = numbers[at]!;
    rest[at] = value - sums[level]! / counts[level]!;
  });
  return sums.reduce((most, sum, level) => Math.max(most, Math.abs(sum / counts[level]!)), 0);
}
