import type { ReadingAnswer } from '../../../contract/index.js';

export type Movement = ReadingAnswer<'movements'>['items'][number];

/** What a movement moved, seen from one account or from one item. */
export interface MovementLine {
  readonly movement: Movement;
  /** Accounts that gave, and those that got. */
  readonly from: readonly string[];
  readonly to: readonly string[];
  /** By unit. With an account: what came to it, negative where it left. Without: how much went from one to another. */
  readonly moved: Readonly<Record<string, number>>;
}

export interface MovementView {
  readonly account?: string;
  readonly item?: string;
  readonly lot?: string;
}

export function movementLine(movement: Movement, { account, item, lot }: MovementView): MovementLine {
  const entries = movement.entries.filter(
    (entry) => (item === undefined || entry.item === item) && (lot === undefined || entry.lot === lot),
  );
  const moved: Record<string, number> = {};
  for (const entry of entries) {
    const counts = account === undefined ? entry.quantity > 0 : entry.account === account;
    if (counts) moved[entry.unit] = (moved[entry.unit] ?? 0) + entry.quantity;
  }
  const accountsWhere = (gave: boolean) => [
    ...new Set(entries.filter(({ quantity }) => quantity < 0 === gave).map((entry) => entry.account)),
  ];
  return { movement, from: accountsWhere(true), to: accountsWhere(false), moved };
}
