import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { movedByHand } from './moved-by-hand.js';

const lanes = (m: readonly string[], n: readonly string[] = []) => [
  { machineId: 'm', lotIds: m },
  { machineId: 'n', lotIds: n },
];
const moved = (before: ReturnType<typeof lanes>, after: ReturnType<typeof lanes>) =>
  [...movedByHand(before, after)].sort();

describe('the lots that somebody moved', () => {
  it('are none where all stand as they stood', () => {
    expect(moved(lanes(['a', 'b'], ['c']), lanes(['a', 'b'], ['c']))).toEqual([]);
  });

  it('are the one that was taken past others, not the others', () => {
    expect(moved(lanes(['a', 'b', 'c', 'd']), lanes(['b', 'c', 'd', 'a']))).toEqual(['a']);
    expect(moved(lanes(['a', 'b', 'c', 'd']), lanes(['d', 'a', 'b', 'c']))).toEqual(['d']);
  });

  it('are those that changed machines', () => {
    expect(moved(lanes(['a', 'b'], ['c']), lanes(['a'], ['b', 'c']))).toEqual(['b']);
  });

  it('are never more than one where one lot was moved', () => {
    fc.assert(
      fc.property(fc.nat(7), fc.nat(7), (from, to) => {
        const before = ['a', 'b', 'c', 'd', 'e', 'f', 'g', 'h'];
        const [lot] = before.slice(from, from + 1);
        const after = before.toSpliced(from, 1).toSpliced(to, 0, lot!);
        expect(moved(lanes(before), lanes(after)).length).toBe(from === to ? 0 : 1);
      }),
    );
  });
});
