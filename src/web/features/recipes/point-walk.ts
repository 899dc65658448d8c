/** A point of a picture, and where it stands: x to the right, y downwards. */
export interface PlacedPoint {
  readonly key: string;
  readonly x: number;
  readonly y: number;
}

/** The point that a key leads to from another: sideways by x, up and down by y, Home and End by x. Undefined where the key leads nowhere. */
export function nextPoint(points: readonly PlacedPoint[], from: string, key: string): string | undefined {
  const byX = points.toSorted((a, b) => a.x - b.x || a.y - b.y);
  const byY = points.toSorted((a, b) => b.y - a.y || a.x - b.x);
  const beside = (order: readonly PlacedPoint[], step: number): string | undefined =>
    order[order.findIndex((point) => point.key === from) + step]?.key;
  switch (key) {
    case 'ArrowRight':
      return beside(byX, 1);
    case 'ArrowLeft':
      return beside(byX, -1);
    case 'ArrowUp':
      return beside(byY, 1);
    case 'ArrowDown':
      return beside(byY, -1);
    case 'Home':
      return byX[0]?.key;
    case 'End':
      return byX.at(-1)?.key;
    default:
      return undefined;
  }
}
