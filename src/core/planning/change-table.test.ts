import { describe, expect, it } from 'vitest';
import type { SetUpTraits } from '../winding/index.js';
import { COLD, changeTable } from './change-table.js';
import type { PlanProblem } from './plan.js';

const traits = (core: number): SetUpTraits => ({
  coreWireId: `core-${core}`,
  wrapWireIds: ['wrap-8'],
  wrapAlloy: 'pure-nickel',
  lengthM: 0.98,
});

/** Three kinds of job on two machines that change over alike; counts how often the shop is asked. */
function counted(): { problem: PlanProblem; asked: () => number } {
  let asked = 0;
  const changeOver = (from: SetUpTraits | undefined, to: SetUpTraits) => {
    asked += 1;
    const minutes = Math.abs(
      Number((from?.coreWireId ?? 'core-9').slice(5)) - Number(to.coreWireId.slice(5)),
    );
    return { minutes, scrapStrings: 0, costMinor: minutes * 7 };
  };
  const machine = (id: string) => ({ id, shifts: [{ fromMinute: 0, toMinute: 60 }], changeOver });
  const problem: PlanProblem = {
    jobs: [1, 3, 1, 4].map((core, j) => ({
      id: `job-${j}`,
      traits: traits(core),
      eligible: [{ machineId: 'm', processMinutes: 10 }],
      releaseMinute: 0,
      weight: 1,
    })),
    machines: [{ ...machine('m'), setUp: traits(3) }, machine('n')],
  };
  return { problem, asked: () => asked };
}

describe('change-overs remembered', () => {
  it('lots of equal traits are of one class, and so is a machine set up for them', () => {
    const table = changeTable(counted().problem);
    expect(table.jobClass[0]).toBe(table.jobClass[2]);
    expect(new Set(table.jobClass).size).toBe(3);
    expect(table.machineClass).toEqual([table.jobClass[1], COLD]);
  });

  it('asks the shop once for a pair, whichever machine of a kind asks', () => {
    const { problem, asked } = counted();
    const table = changeTable(problem);
    for (const machine of [0, 1, 0]) {
      expect(table.minutes(machine, 0, 2)).toBe(3);
      expect(table.costMinor(machine, 0, 2)).toBe(21);
    }
    expect(table.minutes(0, COLD, 0)).toBe(8);
    expect(asked()).toBe(2);
  });

  it('gives the same answers where it can remember next to nothing', () => {
    const { problem } = counted();
    const [ample, scant] = [changeTable(problem), changeTable(problem, 1)];
    for (const from of [COLD, 0, 1, 2, 0, 1])
      for (const to of [0, 1, 2]) {
        expect(scant.minutes(0, from, to)).toBe(ample.minutes(0, from, to));
        expect(scant.costMinor(0, from, to)).toBe(ample.costMinor(0, from, to));
      }
  });
});
