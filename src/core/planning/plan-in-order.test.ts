import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from './check-plan.js';
import { dispatch } from './dispatch.js';
import type { PlanJob, PlanProblem } from './plan.js';
import { planInOrder } from './plan-in-order.js';

const traits = (core: string, wrap: string) => ({
  coreWireId: core,
  wrapWireIds: [wrap],
  wrapAlloy: 'pure-nickel' as const,
  lengthM: 1,
});

const job = (id: string, part: Partial<PlanJob> = {}): PlanJob => ({
  id,
  traits: traits('c', id),
  eligible: [
    { machineId: 'm', processMinutes: 30 },
    { machineId: 'n', processMinutes: 45 },
  ],
  releaseMinute: 0,
  weight: 1,
  ...part,
});

const problem: PlanProblem = {
  jobs: [
    job('under way', {
      frozen: { machineId: 'm', order: 0 },
      eligible: [{ machineId: 'm', processMinutes: 20 }],
    }),
    job('a', { dueMinute: 60 }),
    job('b', { dueMinute: 200 }),
    job('bench', { eligible: [{ machineId: 'n', processMinutes: 5 }] }),
  ],
  machines: ['m', 'n'].map((id) => ({
    id,
    shifts: [
      { fromMinute: 0, toMinute: 100 },
      { fromMinute: 140, toMinute: 240 },
    ],
    changeOver: (from, to) => {
      const changed = from?.wrapWireIds[0] !== to.wrapWireIds[0];
      return { minutes: changed ? 10 : 0, scrapStrings: changed ? 2 : 0, costMinor: changed ? 100 : 0 };
    },
  })),
};

const told = (m: readonly string[], n: readonly string[]) => [
  { machineId: 'm', jobIds: m },
  { machineId: 'n', jobIds: n },
];

describe('an order of jobs that a person tells', () => {
  it('begins each as soon as its machine is free, behind what is under way', () => {
    const plan = planInOrder(problem, told(['b', 'a'], ['bench']));
    if (!plan.ok) throw new Error(plan.fault.code);
    // Under way: 10 minutes of change and 20 of work. b to 70; a changes over to 80, pauses from 100 to 140.
    expect(
      plan.value.runs.map(({ jobId, setUpFromMinute, toMinute }) => [jobId, setUpFromMinute, toMinute]),
    ).toEqual([
      ['under way', 0, 30],
      ['bench', 0, 15],
      ['b', 30, 70],
      ['a', 70, 150],
    ]);
    expect(plan.value.runs.at(-1)?.lateMinutes).toBe(90);
  });

  it('is a sound plan whatever the order, as another hand judges it', () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(['a', 'b'], { minLength: 2 }), fc.nat(2), (order, split) => {
        const plan = planInOrder(problem, told(order.slice(0, split), [...order.slice(split), 'bench']));
        expect(plan.ok && checkPlan(problem, plan.value).faults).toEqual([]);
      }),
    );
  });

  it('is the dispatched plan itself when it tells that plan’s own order', () => {
    const dispatched = dispatch(problem, { seed: 1, iterations: 0 });
    const laneOf = (machineId: string) =>
      dispatched.runs
        .filter((run) => run.machineId === machineId && run.jobId !== 'under way')
        .map(({ jobId }) => jobId);
    expect(planInOrder(problem, told(laneOf('m'), laneOf('n')))).toEqual({ ok: true, value: dispatched });
  });

  it('is refused where jobs are missing, told twice or not of the plan, and where a machine cannot', () => {
    expect(planInOrder(problem, told(['a', 'a'], ['bench', 'under way']))).toEqual({
      ok: false,
      fault: { code: 'jobs-differ', missing: ['b'], unknown: ['a', 'under way'] },
    });
    expect(planInOrder(problem, told(['a', 'b', 'bench'], []))).toEqual({
      ok: false,
      fault: { code: 'machine-not-able', machineId: 'm', jobId: 'bench' },
    });
    expect(planInOrder(problem, [{ machineId: 'x', jobIds: [] }])).toEqual({
      ok: false,
      fault: { code: 'machine-unknown', machineId: 'x' },
    });
  });
});
