import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { labelCode } from '../../core/day/index.js';
import type { ReadTransaction } from '../../store/index.js';

export type Order = StoredRecord<BodyOf<'order'>>;
export type Pack = StoredRecord<BodyOf<'pack'>>;
export type OrderLine = BodyOf<'order'>['lines'][number];

/** One set of an order: which of how many of a line. */
export interface Copy {
  readonly line: OrderLine;
  readonly copy: number;
}

/** Packs of an order that were not given up, oldest first. */
export const packsOf = async (tx: ReadTransaction, orderId: string): Promise<readonly Pack[]> =>
  (await tx.records.all('pack', { orderId })).filter(({ state }) => state !== 'void');

/** Every set that an order asks for. */
export const copiesOf = ({ body }: Order): readonly Copy[] =>
  body.lines.flatMap((line) => Array.from({ length: line.quantity }, (_, at) => ({ line, copy: at + 1 })));

/** The sets of an order that no pack is open for. */
export function copiesWithoutPack(order: Order, packs: readonly Pack[]): readonly Copy[] {
  const packed = new Set(packs.map(({ body }) => `${body.lineNumber} ${body.copy}`));
  return copiesOf(order).filter(({ line, copy }) => !packed.has(`${line.lineNumber} ${copy}`));
}

/** What a pack's label reads as: that of its line, and which of its sets. */
export const packLabelCode = (order: Order, { line, copy }: Copy): string =>
  `${labelCode({ orderId: order.body.number, line: line.lineNumber })}:${copy}`;
