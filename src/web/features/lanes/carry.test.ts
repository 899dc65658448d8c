import { describe, expect, it } from 'vitest';
import { carryStep, orderWith, placeBefore, standsAt } from './carry.js';

const order = [
  { machineId: 'wren', lotIds: ['a', 'b', 'c'] },
  { machineId: 'finch', lotIds: ['d'] },
  { machineId: 'bench', lotIds: [] },
];
const middles: Readonly<Record<string, number>> = { a: 10, b: 30, c: 50, d: 20 };
const middleOf = (lotId: string) => middles[lotId];

describe('a lot in hand', () => {
  it('is put down among the others, on its own machine or another', () => {
    expect(orderWith(order, { lotId: 'a', machineId: 'wren', place: 2 })[0]?.lotIds).toEqual(['b', 'c', 'a']);
    expect(orderWith(order, { lotId: 'b', machineId: 'finch', place: 0 })).toEqual([
      { machineId: 'wren', lotIds: ['a', 'c'] },
      { machineId: 'finch', lotIds: ['b', 'd'] },
      { machineId: 'bench', lotIds: [] },
    ]);
  });

  it('put down where it stood changes nothing', () => {
    for (const lotId of ['a', 'b', 'c', 'd'])
      expect(orderWith(order, standsAt(order, lotId)!)).toEqual(order);
    expect(standsAt(order, 'nobody')).toBeUndefined();
  });

  it('goes along its lane as far as the lane goes', () => {
    const first = standsAt(order, 'a')!;
    expect(carryStep(order, first, 'earlier', middleOf)).toEqual(first);
    const last = { ...first, place: 2 };
    expect(carryStep(order, first, 'later', middleOf).place).toBe(1);
    expect(carryStep(order, last, 'later', middleOf)).toEqual(last);
  });

  it('goes to the next machine at about the same time, and no farther than the last', () => {
    const c = standsAt(order, 'c')!;
    expect(carryStep(order, c, 'machine-below', middleOf)).toEqual({
      lotId: 'c',
      machineId: 'finch',
      place: 1,
    });
    const a = standsAt(order, 'a')!;
    expect(carryStep(order, a, 'machine-below', middleOf).place).toBe(0);
    expect(carryStep(order, a, 'machine-above', middleOf)).toEqual(a);
  });

  it('falls behind the lots whose middle lies before it', () => {
    expect(placeBefore(['a', 'b', 'c'], 'b', 45, middleOf)).toBe(1);
    expect(placeBefore(['a', 'b', 'c'], 'd', 45, middleOf)).toBe(2);
  });
});
