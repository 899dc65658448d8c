import { describe, expect, it } from 'vitest';
import { nearCoreTensions, nearMean, nearSpindleRpm, nearWrapTensions } from './near-runs.js';
import type { PastRun } from './past-run.js';

const run = (wireDiameterM: number, tensionN: number, over: Partial<PastRun> = {}): PastRun => ({
  machineId: 'servo-1',
  recipeId: 'bronze 36',
  core: { shape: 'hex', sizeM: 4e-4, tensionN: 60, lot: 'core lot' },
  layers: [{ alloy: 'phosphor-bronze', wireDiameterM, tensionN, spindleRpm: 2000, lot: 'A' }],
  ...over,
});

const ahead = { machineId: 'servo-1', recipeId: 'bronze 36', lot: 'A' };
const wrap = { layer: { alloy: 'phosphor-bronze', wireDiameterM: 2.5e-4 }, index: 0 } as const;
const weightOf = (past: PastRun, wish = ahead) => nearWrapTensions([past], wish, wrap)[0]!.weight;

describe('how near a past run is', () => {
  it('is wholly where machine, recipe, lot and size are the same', () => {
    expect(nearWrapTensions([run(2.5e-4, 6)], ahead, wrap)).toMatchObject([{ value: 6, weight: 1 }]);
  });

  it('is half where the wire is a tenth thicker, and not at all beyond three tenths', () => {
    expect(weightOf(run(2.75e-4, 6))).toBeCloseTo(0.5, 12);
    expect(nearWrapTensions([run(3.4e-4, 6)], ahead, wrap)).toEqual([]);
  });

  it('is less on another machine, by another recipe, of another lot or of one that nobody knows', () => {
    const other = {
      machine: weightOf(run(2.5e-4, 6, { machineId: 'gear-2' })),
      recipe: weightOf(run(2.5e-4, 6, { recipeId: 'bronze 38' })),
      lot: weightOf(run(2.5e-4, 6), { ...ahead, lot: 'B' }),
    };
    for (const weight of Object.values(other)) expect(weight).toBeLessThan(1);
    expect(other.machine).toBeLessThan(other.recipe);
    const { lot: _, ...unknown } = ahead;
    expect(nearWrapTensions([run(2.5e-4, 6)], unknown, wrap)[0]!.weight).toBe(other.lot);
  });

  it('carries a tension over to another size by equal stress', () => {
    expect(nearWrapTensions([run(2.4e-4, 6)], ahead, wrap)[0]!.value).toBeCloseTo(6 * (2.5 / 2.4) ** 2, 9);
    const [core] = nearCoreTensions([run(2.4e-4, 6)], ahead, { shape: 'hex', sizeM: 4.2e-4 });
    expect(core!.value).toBeCloseTo(60 * 1.05 ** 2, 9);
  });

  it('says nothing to other alloys, layers and core shapes', () => {
    const past = run(2.5e-4, 6);
    const brass = { ...past, layers: [{ ...past.layers[0]!, alloy: 'bronze-80-20' as const }] };
    expect(nearWrapTensions([brass], ahead, wrap)).toEqual([]);
    expect(nearWrapTensions([past], ahead, { ...wrap, index: 1 })).toEqual([]);
    expect(nearCoreTensions([past], ahead, { shape: 'round', sizeM: 4e-4 })).toEqual([]);
  });

  it('means spindle speeds of this machine alone, as they are', () => {
    const fast = run(2.5e-4, 6);
    const faster = { ...fast, layers: [{ ...fast.layers[0]!, spindleRpm: 2400 }] };
    expect(nearMean(nearSpindleRpm([fast, faster], ahead, wrap))).toBe(2200);
    expect(nearMean(nearSpindleRpm([{ ...fast, machineId: 'gear-2' }], ahead, wrap))).toBeUndefined();
  });
});
