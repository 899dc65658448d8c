import { describe, expect, it } from 'vitest';
import type { Day, DayRun } from '../../../core/day/index.js';
import { lanesOf } from './lanes-of.js';

const at = (date: string, minute: number) => ({ date, minute });

const run = (lotId: string, machineId: string, stringKey: string, day: string, minute: number, late = 0) =>
  ({
    lotId,
    machineId,
    stringKey,
    setUpFrom: at(day, minute),
    runFrom: at(day, minute + 10),
    to: at(day, minute + 30),
    lateMinutes: late,
  }) as unknown as DayRun;

const day = {
  date: '2027-03-01',
  lots: [
    { id: 'late', orderLines: [2], due: '2027-03-01' },
    { id: 'due', orderLines: [3], due: '2027-03-01' },
    { id: 'early', orderLines: [4], due: '2027-03-09' },
    { id: 'bin', orderLines: [], due: '2027-03-01' },
  ],
  plan: {
    machines: [{ machineId: 'm1' }, { machineId: 'm2' }],
    runs: [
      run('late', 'm1', '46 wound pure-nickel ball 1000 mm', '2027-03-01', 450, 5),
      run('due', 'm1', '36 wound pure-nickel ball 1000 mm', '2027-03-01', 480),
      run('early', 'm1', '42 wound phosphor-bronze ball 1000 mm', '2027-03-01', 510),
      run('bin', 'm1', '26 wound pure-nickel ball 1000 mm', '2027-03-02', 450),
    ],
  },
} as unknown as Day;

describe('the lanes of a plan', () => {
  it('hold what runs on the day, or all of it', () => {
    const lotsIn = (scope: 'day' | 'plan') =>
      lanesOf(day, scope)?.lanes.map(({ bars }) => bars.map((bar) => bar.run.lotId));
    expect(lotsIn('day')).toEqual([['late', 'due', 'early'], []]);
    expect(lotsIn('plan')).toEqual([['late', 'due', 'early', 'bin'], []]);
  });

  it('tell how each run stands to what was promised', () => {
    const bars = lanesOf(day, 'plan')?.lanes[0]?.bars;
    expect(bars?.map(({ promise }) => promise)).toEqual(['late', 'due', 'early', 'none']);
  });

  it('join runs of one material that follow each other', () => {
    const [lane] = lanesOf(day, 'day')?.lanes ?? [];
    expect(lane?.materials).toEqual([
      { material: 'pure nickel', fromAt: 0, toAt: 60 },
      { material: 'phosphor bronze', fromAt: 60, toAt: 90 },
    ]);
  });

  it('are none where nothing runs', () => {
    expect(lanesOf({ ...day, plan: { ...day.plan, runs: [] } }, 'plan')).toBeUndefined();
  });

  it('show what is in hand from before, as long as it keeps its machine', () => {
    const standing = (runId: string, from: number, to: number) => ({
      ...{ runId, name: runId, machineId: 'm2', stringKey: '46 wound pure-nickel ball 1000 mm', quantity: 5 },
      from: at('2027-03-01', from),
      to: at('2027-03-01', to),
    });
    const busy = { ...day, underWay: [standing('goes on', 420, 465), standing('over', 450, 450)] };
    const lanes = lanesOf(busy as unknown as Day, 'day');
    expect(lanes?.axis.windows[0]?.fromMinute).toBe(420);
    expect(lanes?.lanes[1]?.standing.map(({ run, fromAt, toAt }) => [run.runId, fromAt, toAt])).toEqual([
      ['goes on', 0, 45],
    ]);
  });
});
