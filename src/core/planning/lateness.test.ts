import { describe, expect, it } from 'vitest';
import { dispatch } from './dispatch.js';
import { whyLate } from './lateness.js';
import type { PlanJob, PlanProblem } from './plan.js';

const job = (id: string, dueMinute: number, parts: Partial<PlanJob> = {}): PlanJob => ({
  id,
  traits: { coreWireId: 'core-16', wrapWireIds: ['wrap-8'], wrapAlloy: 'pure-nickel', lengthM: 0.98 },
  eligible: [{ machineId: 'm', processMinutes: 50 }],
  releaseMinute: 0,
  weight: 1,
  dueMinute,
  ...parts,
});
/** One machine; every lot takes 10 minutes of setting up and 50 of winding. */
const why = (...jobs: PlanJob[]) => {
  const problem: PlanProblem = {
    jobs,
    machines: [
      {
        id: 'm',
        shifts: [{ fromMinute: 0, toMinute: 480 }],
        changeOver: () => ({ minutes: 10, scrapStrings: 0, costMinor: 0 }),
      },
    ],
  };
  return Object.fromEntries(whyLate(problem, dispatch(problem, { seed: 1, iterations: 0 })));
};

describe('why a lot is late', () => {
  it('says nothing of lots in time', () => {
    expect(why(job('a', 60))).toEqual({});
  });

  it('its due date had passed before the plan began', () => {
    expect(why(job('a', 0))).toEqual({ a: { kind: 'due-already-past', dueMinute: 0 } });
  });

  it('even alone in the shop it takes longer than there is time', () => {
    expect(why(job('a', 59))).toEqual({ a: { kind: 'too-short-notice', dueMinute: 59, minutesNeeded: 60 } });
    expect(why(job('a', 90, { releaseMinute: 40 }))).toMatchObject({ a: { kind: 'too-short-notice' } });
  });

  it('other work takes its machine', () => {
    expect(why(job('a', 60, { weight: 9 }), job('b', 100))).toEqual({
      b: { kind: 'machine-full', dueMinute: 100, machineId: 'm' },
    });
  });
});
