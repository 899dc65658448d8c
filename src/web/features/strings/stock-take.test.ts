import { describe, expect, it } from 'vitest';
import { stockTake } from './stock-take.js';

const LYING = [
  { lotId: 'a', lot: 'lot a', stringKey: 'ten', state: 'released', count: 12 },
  { lotId: 'b', lot: 'lot b', stringKey: 'ten', state: 'in-check', count: 6 },
];

describe('taking stock of a bin', () => {
  it('tells what differs before it is written, and wants a reason for it', () => {
    const take = stockTake(LYING, { a: '10' }, '');
    expect(take).toMatchObject({ counted: 1, differing: 1, isWritable: false });
    expect(stockTake(LYING, { a: '10' }, 'two lost').isWritable).toBe(true);
  });

  it('takes an empty field for not counted, and a nought for none there', () => {
    const { lines } = stockTake(LYING, { a: ' ', b: '0' }, '');
    expect(lines.map(({ counted }) => counted)).toEqual([undefined, 0]);
  });

  it('needs no reason where all is as the books have it', () => {
    expect(stockTake(LYING, { a: '12', b: '6' }, '')).toMatchObject({ differing: 0, isWritable: true });
  });

  it('is not written while a count cannot be read, or before anything was counted', () => {
    expect(stockTake(LYING, { a: '12', b: 'six' }, 'x').isWritable).toBe(false);
    expect(stockTake(LYING, {}, 'x').isWritable).toBe(false);
  });
});
