import { describe, expect, it } from 'vitest';
import { type CalendarDate, calendarDate } from '../foundation/index.js';
import type { ResolvedOrder } from '../orders/index.js';
import { type StringSpec, stringKey } from '../sets/index.js';
import { netDemand } from './net-demand.js';

const DUE = calendarDate('2026-03-05') as CalendarDate;
const plain = (gaugeThou: number): StringSpec => ({
  gaugeThou,
  kind: 'plain',
  material: 'plain-steel',
  end: 'ball',
  lengthM: 0.98,
});
const order = (line: number, quantity: number, gauges: readonly number[]): ResolvedOrder => ({
  line,
  orderId: `order-${line}`,
  player: 'A player',
  quantity,
  due: DUE,
  note: '',
  kind: 'custom',
  setName: 'a set',
  strings: gauges.map((gauge, i) => ({
    position: i + 1,
    spec: plain(gauge),
    stringKey: stringKey(plain(gauge)),
    recipeId: `recipe-${gauge}`,
  })),
  warnings: [],
});

describe('orders set against the shelf', () => {
  it('a set of which three are ordered wants three of each string, six where it holds the kind twice', () => {
    const { shortages } = netDemand({ orders: [order(2, 3, [10, 13, 10])], strings: [] });
    expect(shortages.map(({ stringKey: key, count }) => [key, count])).toEqual([
      [stringKey(plain(10)), 6],
      [stringKey(plain(13)), 3],
    ]);
  });

  it('a bin that orders empty below its level is filled up again', () => {
    const strings = [{ spec: plain(10), count: 100, binId: 'A', lot: 'x', reorderLevel: 96 }];
    const { takes, shortages, reorder } = netDemand({ orders: [order(2, 10, [10])], strings });
    expect(takes).toMatchObject([{ line: 2, count: 10, binId: 'A' }]);
    expect(shortages).toEqual([]);
    expect(reorder).toMatchObject([{ binId: 'A', count: 6 }]);
  });

  it('have the shelf before what is still coming, and of that what comes first', () => {
    const row = (lot: string, count: number) => ({
      spec: plain(10),
      count,
      binId: 'A',
      lot,
      reorderLevel: 0,
    });
    const { takes, awaits, shortages } = netDemand({
      orders: [{ ...order(2, 4, [10]), due: calendarDate('2026-03-09')! }, order(3, 6, [10])],
      strings: [row('z shelf', 7)],
      coming: [row('soon', 1), row('later', 1)],
    });
    expect(takes.map(({ line, lot, count }) => [line, lot, count])).toEqual([
      [3, 'z shelf', 6],
      [2, 'z shelf', 1],
    ]);
    expect(awaits.map(({ line, lot, count }) => [line, lot, count])).toEqual([
      [2, 'soon', 1],
      [2, 'later', 1],
    ]);
    expect(shortages).toMatchObject([{ line: 2, count: 1 }]);
  });

  it('a bin that strings are coming to is filled up only by what it lacks beside them', () => {
    const row = (lot: string, count: number) => ({
      spec: plain(10),
      count,
      binId: 'A',
      lot,
      reorderLevel: 96,
    });
    const { reorder } = netDemand({ orders: [], strings: [row('x', 20)], coming: [row('run', 60)] });
    expect(reorder).toMatchObject([{ binId: 'A', count: 16 }]);
  });
});
