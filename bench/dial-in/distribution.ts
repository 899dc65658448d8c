/** How a figure is spread over many dial-ins. */
export interface Distribution {
  readonly median: number;
  readonly p75: number;
  readonly p95: number;
  readonly mean: number;
  /** One in twenty is below. */
  readonly p05: number;
}

export function distributionOf(figures: ArrayLike<number>): Distribution {
  const inOrder = (figures instanceof Uint8Array ? figures.slice() : Float32Array.from(figures)).sort();
  const at = (share: number): number =>
    inOrder[Math.min(inOrder.length - 1, Math.floor(share * inOrder.length))]!;
  let sum = 0;
  for (let index = 0; index < figures.length; index++) sum += figures[index]!;
  return { median: at(0.5), p75: at(0.75), p95: at(0.95), p05: at(0.05), mean: sum / figures.length };
}
