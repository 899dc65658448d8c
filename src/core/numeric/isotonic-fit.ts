/**
 * The rising sequence nearest to given values by least squares: neighbours that fall are pooled to their mean until
 * none do (pool adjacent violators; M. Ayer et al., Ann. Math. Statist. 26 (1955) 641). With weights, weighted means.
 */
export function isotonicFit(values: readonly number[], weights?: readonly number[]): readonly number[] {
  const pools: Pool[] = [];
  values.forEach((value, at) => {
    let pool: Pool = { mean: value, weight: weights?.[at] ?? 1, count: 1 };
    for (let before = pools.at(-1); before && before.mean > pool.mean; before = pools.at(-1)) {
      pools.pop();
      pool = pooled(before, pool);
    }
    pools.push(pool);
  });
  return pools.flatMap(({ mean, count }) => Array.from({ length: count }, () => mean));
}

interface Pool {
  readonly mean: number;
  readonly weight: number;
  readonly count: number;
}

function pooled(one: Pool, other: Pool): Pool {
  const weight = one.weight + other.weight;
  const mean = weight === 0 ? one.mean : (one.mean * one.weight + other.mean * other.weight) / weight;
  return { mean, weight, count: one.count + other.count };
}
