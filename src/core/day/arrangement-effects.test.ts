import { describe, expect, it } from 'vitest';
import type { Arrangement } from './arrange-plan.js';
import { arrangementEffects } from './arrangement-effects.js';

type Run = Arrangement['runs'][number];

const at = (minute: number) => ({ date: '2027-03-01', minute }) as Run['to'];
const run = (lotId: string, machineId: string, from: number, rest: Partial<Run> = {}): Run =>
  ({
    ...{ lotId, machineId, setUpFrom: at(from), to: at(from + 30) },
    ...{ setUpMinutes: 10, scrapStrings: 2, lateMinutes: 0 },
    ...rest,
  }) as Run;
const arrangement = (changeCostMinor: number, ...runs: readonly Run[]): Arrangement =>
  ({ runs, underWay: [], score: { changeCostMinor } }) as unknown as Arrangement;

const lots = [
  { lotId: 'a', orderIds: ['first', 'both'] },
  { lotId: 'b', orderIds: ['second', 'both'] },
  { lotId: 'c', orderIds: [] },
];

describe('what a move of lots does', () => {
  const before = arrangement(
    500,
    run('a', 'm', 480),
    run('b', 'm', 510, { lateMinutes: 5 }),
    run('c', 'n', 480, { setUpMinutes: 20 }),
  );
  const after = arrangement(
    430,
    run('b', 'm', 480),
    run('a', 'm', 510, { lateMinutes: 8, scrapStrings: 0 }),
    run('c', 'n', 480, { setUpMinutes: 20 }),
  );

  it('is told by the runs that begin at another time or elsewhere, and no others', () => {
    const { moved } = arrangementEffects(before, after, lots);
    expect(moved.map(({ lotId, from, to }) => [lotId, from.setUpFrom.minute, to.setUpFrom.minute])).toEqual([
      ['b', 510, 480],
      ['a', 480, 510],
    ]);
    const elsewhere = arrangement(0, run('a', 'n', 480));
    expect(arrangementEffects(arrangement(0, run('a', 'm', 480)), elsewhere, lots).moved).toHaveLength(1);
  });

  it('is summed over all runs', () => {
    const { setUpMinutes, scrapStrings, changeCostMinor } = arrangementEffects(before, after, lots);
    expect([setUpMinutes, scrapStrings, changeCostMinor]).toEqual([
      { before: 40, after: 40 },
      { before: 6, after: 4 },
      { before: 500, after: 430 },
    ]);
  });

  it('makes an order late or saves it only where all that it waits for says so', () => {
    const { becomeLate, saved } = arrangementEffects(before, after, lots);
    // One waits for both lots: late before by one of them, late after by the other.
    expect([becomeLate, saved]).toEqual([['first'], ['second']]);
  });
});
