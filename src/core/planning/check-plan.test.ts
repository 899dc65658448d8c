import { describe, expect, it } from 'vitest';
import { checkPlan } from './check-plan.js';
import type { Plan, PlanJob, PlannedRun, PlanProblem } from './plan.js';

const traits = { coreWireId: 'core-16', wrapWireIds: ['wrap-8'], wrapAlloy: 'pure-nickel', lengthM: 0.98 };
const job = (id: string, parts: Partial<PlanJob> = {}): PlanJob => ({
  id,
  traits,
  eligible: [{ machineId: 'm', processMinutes: 30 }],
  releaseMinute: 0,
  weight: 2,
  ...parts,
});
const changeOver = () => ({ minutes: 10, scrapStrings: 1, costMinor: 500 });
/** One machine, 60 minutes a day with a gap of 40; each job is 10 minutes of setting up and 30 of winding. */
const problem: PlanProblem = {
  jobs: [
    job('a', { frozen: { machineId: 'm', order: 1 } }),
    job('b', { dueMinute: 90 }),
    job('c', { releaseMinute: 150 }),
  ],
  machines: [
    {
      id: 'm',
      shifts: [0, 100, 200].map((fromMinute) => ({ fromMinute, toMinute: fromMinute + 60 })),
      changeOver,
    },
    { id: 'n', shifts: [{ fromMinute: 0, toMinute: 60 }], changeOver },
  ],
};
const run = (
  jobId: string,
  times: [number, number, number],
  parts: Partial<PlannedRun> = {},
): PlannedRun => ({
  jobId,
  machineId: 'm',
  setUpFromMinute: times[0],
  runFromMinute: times[1],
  toMinute: times[2],
  setUpMinutes: 10,
  scrapStrings: 1,
  lateMinutes: 0,
  reason: { kind: 'fills-bin' },
  ...parts,
});
// By hand: a 0-40; b sets up 40-50, winds 50-60 and, after the gap, 100-120, 30 late at weight 2; c waits
// for 150, sets up to 160, winds 200-230.
const a = run('a', [0, 10, 40]);
const b = run('b', [40, 50, 120], { lateMinutes: 30 });
const c = run('c', [150, 200, 230]);
const score = { weightedLateMinutes: 60, changeCostMinor: 1500, movedLots: 0, makespanMinutes: 230 };
const plan: Plan = { runs: [a, b, c], score };

const codes = (runs: readonly PlannedRun[], said = score) =>
  checkPlan(problem, { runs, score: said }).faults.map((fault) => fault.code);

describe('judging a plan', () => {
  it('finds nothing wrong with a plan worked out by hand, and gives its score', () => {
    expect(checkPlan(problem, plan)).toEqual({ faults: [], score });
  });

  it('finds a job left out and a job planned twice', () => {
    expect(codes([a, b])).toEqual(['plan.job-missing', 'plan.score-wrong']);
    expect(codes([a, b, c, c])).toContain('plan.job-twice');
  });

  it('finds a job and a machine nobody knows', () => {
    expect(codes([a, b, c, run('x', [240, 240, 240])])).toEqual(['plan.job-unknown']);
    expect(codes([a, b, { ...c, machineId: 'x' }])).toContain('plan.machine-unknown');
  });

  it('finds a machine that cannot make the lot', () => {
    expect(codes([a, b, { ...c, machineId: 'n' }])).toContain('plan.machine-not-able');
  });

  it('finds runs that overlap', () => {
    expect(codes([a, { ...b, setUpFromMinute: 30 }, c])).toEqual(['plan.runs-overlap', 'plan.times-wrong']);
  });

  it('finds a run before its release', () => {
    expect(codes([a, b, run('c', [120, 130, 160])])).toContain('plan.before-release');
  });

  it('finds work outside the shifts', () => {
    expect(codes([a, { ...b, toMinute: 80 }, c])).toContain('plan.outside-shifts');
  });

  it('finds work under way that was moved from the head of its lane or to another machine', () => {
    const swapped = [run('b', [0, 10, 40]), run('a', [40, 50, 120]), c];
    expect(codes(swapped, { ...score, weightedLateMinutes: 0 })).toEqual(['plan.frozen-moved']);
    expect(codes([{ ...a, machineId: 'n' }, b, c])).toContain('plan.frozen-moved');
  });

  it('finds times that leave out the pause between two shifts', () => {
    expect(codes([a, b, { ...c, toMinute: 225 }])).toEqual(['plan.times-wrong']);
  });

  it('finds lateness, change and score that are told wrong', () => {
    expect(codes([a, { ...b, lateMinutes: 0 }, c])).toEqual(['plan.lateness-wrong']);
    expect(codes([a, { ...b, setUpMinutes: 0 }, c])).toEqual(['plan.change-wrong']);
    expect(codes([a, b, { ...c, scrapStrings: 0 }])).toEqual(['plan.change-wrong']);
    expect(codes([a, b, c], { ...score, changeCostMinor: 1499 })).toEqual(['plan.score-wrong']);
  });
});
