/** What the neck has to bear. */
export interface NeckLoad {
  /** Sum of the pulls. */
  readonly totalN: number;
  /** More (or less, negative) than the reference, where one was given. */
  readonly changeN?: number;
  /** That change as a share of the reference. */
  readonly changeShare?: number;
}

interface Pulling {
  readonly tensionN: number;
}

/** Sum of the pulls, N, and how it stands against the set the neck was adjusted to. */
export function neckLoad(strings: readonly Pulling[], reference?: readonly Pulling[]): NeckLoad {
  const totalN = pullOf(strings);
  if (!reference) return { totalN };
  const referenceN = pullOf(reference);
  const changeN = totalN - referenceN;
  return { totalN, changeN, changeShare: changeN / referenceN };
}

const pullOf = (strings: readonly Pulling[]): number =>
  strings.reduce((sum, string) => sum + string.tensionN, 0);
