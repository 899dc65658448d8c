import { describe, expect, it } from 'vitest';
import type { DayView } from '../../../contract/index.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { promiseInWords, promises } from './promise.js';

const view = {
  day: {
    date: '2027-03-01',
    orders: [
      { line: 1, readyAt: 'now', daysLate: 0 },
      { line: 2, readyAt: { date: '2027-03-03', lotIds: [] }, daysLate: 0 },
      { line: 3, readyAt: { date: '2027-03-04', lotIds: [] }, daysLate: 2 },
    ],
    faults: [{ line: 4 }],
  },
  orderIds: { 1: 'a', 2: 'a', 3: 'b', 4: 'c' },
} as unknown as DayView;

const order = (id: string, state = 'received', due = '2027-03-02') => ({ id, state, body: { due } });

describe('what can be promised of an order', () => {
  const promiseOf = promises(view);

  it('is when the last of its lines is ready', () => {
    expect(promiseOf(order('a'))).toEqual({ kind: 'ready', readyOn: '2027-03-03', daysLate: 0 });
    expect(promiseOf(order('b'))).toEqual({ kind: 'ready', readyOn: '2027-03-04', daysLate: 2 });
  });

  it('is now where nothing of it is wanted any more, late if its day is past', () => {
    expect(promiseOf(order('d'))).toEqual({ kind: 'ready', readyOn: 'now', daysLate: 0 });
    expect(promiseOf(order('d', 'packing', '2027-02-26'))).toMatchObject({ daysLate: 3 });
  });

  it('is nothing where a string has no recipe, where it is gone, and while nothing is known', () => {
    expect(promiseOf(order('c'))).toEqual({ kind: 'cannot' });
    expect(promiseOf(order('b', 'shipped'))).toEqual({ kind: 'shipped' });
    expect(promises(undefined)(order('a'))).toEqual({ kind: 'unknown' });
  });

  it('is told in words', () => {
    const told = (id: string) => promiseInWords(promiseOf(order(id)), '2027-03-01', ORDERS_WORDS.en, String);
    expect(told('a')).toBe('ready 2027-03-03');
    expect(told('b')).toBe('2 days late, ready 2027-03-04');
    expect(told('d')).toBe('from the shelf');
  });
});
