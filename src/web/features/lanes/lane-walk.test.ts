import { describe, expect, it } from 'vitest';
import { laneWalk } from './lane-walk.js';
import type { Lane } from './lanes-of.js';

const lane = (...bars: readonly (readonly [lotId: string, from: number, to: number])[]): Lane =>
  ({
    bars: bars.map(([lotId, setUpAt, endsAt]) => ({ run: { lotId }, setUpAt, runAt: setUpAt, endsAt })),
  }) as unknown as Lane;

const lanes = [lane(['a', 0, 10], ['b', 10, 40]), lane(), lane(['c', 0, 2], ['d', 2, 10], ['e', 10, 40])];

describe('walking the lanes by arrow keys', () => {
  it.each([
    ['a', 'ArrowRight', 'b'],
    ['b', 'ArrowLeft', 'a'],
    ['b', 'ArrowRight', undefined],
    ['e', 'Home', 'c'],
    ['c', 'End', 'e'],
  ] as const)('leads from %s by %s to %s', (from, step, to) => {
    expect(laneWalk(lanes, from, step)).toBe(to);
  });

  it('leads up and down to the run at the same time, past lanes with none', () => {
    expect(laneWalk(lanes, 'a', 'ArrowDown')).toBe('d');
    expect(laneWalk(lanes, 'b', 'ArrowDown')).toBe('e');
    expect(laneWalk(lanes, 'c', 'ArrowUp')).toBe('a');
    expect(laneWalk(lanes, 'a', 'ArrowUp')).toBeUndefined();
  });
});
