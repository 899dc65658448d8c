import type { Machine } from '../machine.js';
import type { DialQuantity, DialValue } from './dial-reading.js';

/** The table that a machine is set by; empty where it has none, undefined where it has no such dial. */
export function dialTableOf(
  machine: Omit<Machine, 'id'>,
  quantity: DialQuantity,
): readonly DialValue[] | undefined {
  const it = machine as Machine;
  if (it.kind !== 'winder') return undefined;
  if (quantity === 'pull') return (it.pullTable ?? []).map(({ dial, pullN }) => ({ dial, value: pullN }));
  if (it.drive !== 'gear') return undefined;
  return it.dialTable.map(({ dial, traversePerTurnM }) => ({ dial, value: traversePerTurnM }));
}

/** A machine that is set by another table from now on; one of pulls that is empty goes. */
export function withDialTable<Kept extends object>(
  machine: Kept,
  quantity: DialQuantity,
  rows: readonly DialValue[],
): Kept {
  if (quantity === 'traverse') {
    const dialTable = rows.map(({ dial, value }) => ({ dial, traversePerTurnM: value }));
    return { ...machine, dialTable };
  }
  const { pullTable: _, ...bare } = machine as { pullTable?: unknown };
  const pullTable = rows.map(({ dial, value }) => ({ dial, pullN: value }));
  return { ...bare, ...(rows.length > 0 ? { pullTable } : {}) } as Kept;
}
