import type { LotOrder } from './lot-order.js';

/**
 * The fewest lots that somebody must have taken up to make one order of another: those that changed machines, and on each
 * machine all but the longest row of lots that kept their order.
 */
export function movedByHand(before: LotOrder, after: LotOrder): ReadonlySet<string> {
  const moved = new Set<string>();
  for (const { machineId, lotIds } of after) {
    const was = before.find((lane) => lane.machineId === machineId)?.lotIds ?? [];
    const kept = longestInOrder(lotIds.map((lotId) => was.indexOf(lotId)));
    for (const [at, lotId] of lotIds.entries()) if (!kept.has(at)) moved.add(lotId);
  }
  return moved;
}

/** Places of a longest ascending row among these; what is below zero belongs to none. By quadratic time: lanes are short. */
function longestInOrder(values: readonly number[]): ReadonlySet<number> {
  const rows: number[][] = [];
  for (const [at, value] of values.entries()) {
    if (value < 0) {
      rows.push([]);
      continue;
    }
    const before = rows.filter((row, place) => row.length > 0 && values[place]! < value).reduce(longer, []);
    rows.push([...before, at]);
  }
  return new Set(rows.reduce(longer, []));
}

const longer = (one: number[], other: number[]): number[] => (other.length > one.length ? other : one);
