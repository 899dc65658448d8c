import { describe, expect, it } from 'vitest';
import { BAD_LOT, plantedRuns } from '../../../test/fixtures/planted-runs.js';
import { findings } from './findings.js';

const ASKED = { toleranceM: 12.7e-6, countsFrom: new Map<string, number>() };
const CAUSES = {
  driftMPerDay: 40e-9,
  shift: { day: 200, byM: 5e-6 },
  badLot: { along: 3, weight: -0.02 },
};

describe('what the numbers say', () => {
  it('is each cause that is there and no other, all three at once', () => {
    const { machines, instruments, lots } = findings(plantedRuns(CAUSES), ASKED);
    expect(machines.map(({ machineId }) => machineId)).toEqual(['machine 1']);
    const { perDayM } = machines[0]!.drift;
    expect(perDayM.from).toBeLessThan(CAUSES.driftMPerDay);
    expect(perDayM.to).toBeGreaterThan(CAUSES.driftMPerDay);
    expect(instruments.map(({ instrument }) => instrument)).toEqual(['micrometer 2']);
    const [shift] = instruments;
    expect(Math.abs(shift!.day - CAUSES.shift.day)).toBeLessThan(10);
    expect([shift!.fromM < 5e-6, shift!.toM > 5e-6]).toEqual([true, true]);
    expect(lots.map(({ lot, by }) => [lot, by])).toEqual([
      [BAD_LOT, 'along'],
      [BAD_LOT, 'weight'],
    ]);
    expect([lots[0]!.from < 3, lots[0]!.to > 3]).toEqual([true, true]);
    expect(lots[1]!.value).toBeCloseTo(-0.02, 2);
  });

  it('is nothing where nothing is wrong, in thirty years of thirty shops', () => {
    const said = Array.from({ length: 30 }, (_, seed) => findings(plantedRuns({ seed: 100 + seed }), ASKED));
    // Each kind of finding is made at 1 in 100 or rarer: of thirty years some one may speak.
    expect(
      said.flatMap(({ machines, instruments, lots }) => [...machines, ...instruments, ...lots]).length,
    ).toBeLessThan(3);
  });

  it('does not take a micrometer that reads large for a machine that wears', () => {
    const shifted = plantedRuns({ shift: { day: 165, byM: 8e-6 }, seed: 9 });
    const { machines, instruments } = findings(shifted, ASKED);
    expect(instruments.map(({ instrument }) => instrument)).toEqual(['micrometer 2']);
    expect(machines).toEqual([]);
  });

  it('leaves out of a machine what was wound before its gears were measured anew', () => {
    const countsFrom = new Map([['machine 1', 280]]);
    expect(findings(plantedRuns(CAUSES), { ...ASKED, countsFrom }).machines).toEqual([]);
  });

  it('is nothing of a shop that has no runs', () => {
    expect(findings([], ASKED)).toEqual({ machines: [], instruments: [], lots: [] });
  });
});
