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
  const inOrder = Float64Array.from(figures).sort();
  const at = (share: number): number =>
    inOrder[Math.min(inOrder.length - 1, Math.floor(share * inOrder.length))]!;
  return {
    median: at(0.5),
    p75: at(0.75),
    p95: at(0.95),
    p05: at(0.05),
    mean: inOrder.reduce((sum, each) => sum + each, 0) / inOrder.length,
  };
}
