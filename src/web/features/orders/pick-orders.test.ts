import { describe, expect, it } from 'vitest';
import type { Day, DayOrder } from '../../../core/day/index.js';
import { pickOrders } from './pick-orders.js';

const order = (line: number, about: Partial<DayOrder>): DayOrder =>
  ({
    line,
    orderId: `T-${line}`,
    player: 'Jorla Barleycroft',
    setName: 'Meadow six, 10',
    note: '',
    kind: 'stock',
    due: '2027-03-05',
    readyAt: 'now',
    daysLate: 0,
    warnings: [],
    ...about,
  }) as unknown as DayOrder;

const day = {
  date: '2027-03-01',
  orders: [
    order(2, {}),
    order(3, { player: 'Brila Winnowholt', kind: 'request', daysLate: 2 }),
    order(4, { note: 'as last time' }),
  ],
} as unknown as Day;

const linesOf = (wish: Parameters<typeof pickOrders>[1]) => pickOrders(day, wish).map(({ line }) => line);

describe('picking orders', () => {
  it('finds every word wherever it stands in the row, in any case', () => {
    expect(linesOf({ text: '', only: 'all' })).toEqual([2, 3, 4]);
    expect(linesOf({ text: 'winnow REQUEST', only: 'all' })).toEqual([3]);
    expect(linesOf({ text: 't-4', only: 'all' })).toEqual([4]);
    expect(linesOf({ text: '5 mar barleycroft', only: 'all' })).toEqual([2, 4]);
    expect(linesOf({ text: 'nobody', only: 'all' })).toEqual([]);
  });

  it('keeps to late ones, or to those with a word to tell, when asked to', () => {
    expect(linesOf({ text: '', only: 'late' })).toEqual([3]);
    expect(linesOf({ text: '', only: 'to-tell' })).toEqual([4]);
  });
});
