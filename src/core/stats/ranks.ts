export interface Ranks {
  /** Place of a value among all, from 1; equal ones share the mean of their places. */
  readonly rankOf: (value: number) => number;
  /** SUM t^3 - t over the groups of equal values. */
  readonly ties: number;
}

export function ranksOf(values: readonly number[]): Ranks {
  const sorted = values.toSorted((a, b) => a - b);
  const known = new Map<number, number>();
  let ties = 0;
  for (let first = 0; first < sorted.length; ) {
    let next = first;
    while (next < sorted.length && sorted[next] === sorted[first]) next += 1;
    known.set(sorted[first]!, (first + 1 + next) / 2);
    ties += (next - first) ** 3 - (next - first);
    first = next;
  }
  return { rankOf: (value) => known.get(value)!, ties };
}
