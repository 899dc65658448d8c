import { dateInWords } from '../../../contract/index.js';
import type { Day, DayOrder } from '../../../core/day/index.js';
import { orderKindInWords, readyInWords } from './order-words.js';

export interface OrderWish {
  /** Every word of it must stand somewhere in the row. */
  readonly text: string;
  readonly only: 'all' | 'late' | 'to-tell';
}

/** The orders that a person looks for, in the order of the file. */
export function pickOrders(day: Day, { text, only }: OrderWish): readonly DayOrder[] {
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  return day.orders.filter((order) => isOfKind(order, only) && holdsAll(textOf(order, day), words));
}

const isOfKind = (order: DayOrder, only: OrderWish['only']): boolean =>
  only === 'all' || (only === 'late' ? order.daysLate > 0 : order.warnings.length > 0 || order.note !== '');

const holdsAll = (text: string, words: readonly string[]): boolean =>
  words.every((word) => text.includes(word));

const textOf = (order: DayOrder, day: Day): string =>
  [
    order.orderId,
    order.player,
    order.setName,
    order.note,
    orderKindInWords(order.kind),
    dateInWords(order.due),
    order.due,
    readyInWords(order, day),
  ]
    .join(' ')
    .toLowerCase();
