import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seededChance } from '../foundation/index.js';
import { leanOnRuns } from './lean-on-runs.js';
import type { NearFigure } from './near-runs.js';

const near = (value: number, weight = 1, name = 'run'): NearFigure => ({
  run: { machineId: 'servo-1', name, core: { shape: 'hex', sizeM: 4e-4 }, layers: [] },
  value,
  weight,
});

describe('a setting that leans on past runs', () => {
  it('is the cautious start where there are none, and wide', () => {
    const guess = leanOnRuns([], 8)!;
    expect(guess.value).toBeCloseTo(8, 12);
    expect(guess).toMatchObject({ runs: 0, worthRuns: 0, startShare: 1, leanedOn: [] });
    expect(guess.high / guess.low).toBeGreaterThan(3);
    expect(leanOnRuns([], undefined)).toBeUndefined();
  });

  it('weighs one run of the same kind by precision: 1/0.1² beside 1/0.35² of the start, by hand', () => {
    const found = leanOnRuns([near(12)], 8)!;
    const startShare = 1 / 0.35 ** 2 / (1 / 0.35 ** 2 + 1 / 0.1 ** 2);
    expect(found.startShare).toBeCloseTo(startShare, 12);
    expect(Math.log(found.value)).toBeCloseTo(startShare * Math.log(8) + (1 - startShare) * Math.log(12), 12);
    expect(found.leanedOn[0]!.share).toBeCloseTo(1 - startShare, 12);
  });

  it('leaves the start behind as near runs come in, and narrows', () => {
    const found = [1, 2, 5, 20].map((count) => leanOnRuns(Array(count).fill(near(12)), 8)!);
    for (const [at, each] of found.slice(1).entries()) {
      expect(each.startShare).toBeLessThan(found[at]!.startShare);
      expect(each.high - each.low).toBeLessThan(found[at]!.high - found[at]!.low);
    }
    expect(found.at(-1)!.value).toBeCloseTo(12, 1);
  });

  it('lies between the least and the most of what it leans on, whatever the runs', () => {
    const runs = fc.array(
      fc.record({
        value: fc.double({ min: 1, max: 100, noNaN: true }),
        weight: fc.double({ min: 0.01, max: 1, noNaN: true }),
      }),
      { minLength: 1, maxLength: 12 },
    );
    fc.assert(
      fc.property(runs, fc.double({ min: 1, max: 100, noNaN: true }), (past, start) => {
        const found = leanOnRuns(
          past.map(({ value, weight }) => near(value, weight)),
          start,
        )!;
        const all = [start, ...past.map(({ value }) => value)];
        expect(found.value).toBeGreaterThanOrEqual(Math.min(...all) * (1 - 1e-9));
        expect(found.value).toBeLessThanOrEqual(Math.max(...all) * (1 + 1e-9));
        expect(found.low).toBeLessThan(found.value);
      }),
    );
  });

  it('names the nearest runs first, five at most, with what each has of the figure', () => {
    const past = [0.2, 0.9, 0.5, 0.4, 0.3, 0.7].map((weight) => near(10, weight, `run ${weight}`));
    const { leanedOn, startShare, runs } = leanOnRuns(past, 10)!;
    expect(leanedOn.map(({ name }) => name)).toEqual(['run 0.9', 'run 0.7', 'run 0.5', 'run 0.4', 'run 0.3']);
    expect(runs).toBe(6);
    const all = leanedOn.reduce((sum, { share }) => sum + share, startShare);
    expect(all + leanedOn.at(-1)!.share * (0.2 / 0.3)).toBeCloseTo(1, 12);
  });

  it('holds what the next run is set to nine times in ten, where shops are as it supposes', () => {
    const chance = seededChance(2026);
    const normal = () => Math.sqrt(-2 * Math.log(1 - chance.next())) * Math.cos(2 * Math.PI * chance.next());
    const TRIALS = 2000;
    let inside = 0;
    for (let trial = 0; trial < TRIALS; trial++) {
      const truth = Math.exp(0.35 * normal());
      const draw = () => truth * Math.exp(0.1 * normal());
      const past = Array.from({ length: trial % 6 }, () => near(10 * draw()));
      const { low, high } = leanOnRuns(past, 10)!;
      const next = 10 * draw();
      if (next >= low && next <= high) inside++;
    }
    // Student's t with at least four degrees where the spread is really known: a little wide, never narrow.
    expect(inside / TRIALS).toBeGreaterThan(0.89);
    expect(inside / TRIALS).toBeLessThan(0.97);
  });
});
