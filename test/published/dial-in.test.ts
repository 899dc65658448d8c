import { describe, expect, it } from 'vitest';
import { compareRules, inHindsight } from '../../bench/index.js';
import { seededChance } from '../../src/core/foundation/index.js';
import {
  type Belief,
  learn,
  type PublishedRule,
  processError,
  processResponse,
  ruleGain,
  SIMULATED_MACHINES,
} from '../../src/core/winding/index.js';
import { qualityRows } from './data/quality-rows.js';

const rowsOf = (file: string): readonly (readonly string[])[] =>
  qualityRows(file).map((row) => Object.values(row));

const RULES: Readonly<Record<string, PublishedRule>> = {
  harmonic: { kind: 'harmonic' },
  'extended_0.25': { kind: 'extended', varianceRatio: 0.25 },
  full: { kind: 'full' },
  'fixed_0.3': { kind: 'fixed', gain: 0.3 },
};

interface Step {
  readonly y: number;
  readonly gain: number;
  readonly move: number;
  readonly after: number;
}

/** The rule on a process of known response with these errors. */
function follow(
  rule: PublishedRule,
  offset: number,
  errors: readonly number[],
  response = 1,
): readonly Step[] {
  let mean = offset;
  return errors.map((error, index) => {
    const gain = ruleGain(rule, index + 1);
    const y = mean + error;
    const move = -gain * y;
    mean += response * move;
    return { y, gain, move, after: mean };
  });
}

describe('Set-up adjustment, constructed cases (formulas: Grubbs 1954; del Castillo, Pan & Colosimo 2003)', () => {
  const rows = rowsOf('setup-adjustment.csv');

  it.each(Object.entries(RULES))('%s: every row of ten strings, to 1e-9', (name, rule) => {
    const own = rows.filter(([which]) => which === name).map((row) => row.slice(1).map(Number));
    expect(own).toHaveLength(10);
    const steps = follow(
      rule,
      6,
      own.map(([, error]) => error!),
    );
    for (const [index, [, , , y, gain, move, after]] of own.entries()) {
      const step = steps[index]!;
      expect(step.y).toBeCloseTo(y!, 9);
      expect(step.gain).toBeCloseTo(gain!, 9);
      expect(step.move).toBeCloseTo(move!, 8);
      expect(step.after).toBeCloseTo(after!, 8);
    }
  });

  it('leaves no case of the file out', () => {
    expect([...new Set(rows.map(([name]) => name))].sort()).toEqual(Object.keys(RULES).sort());
  });

  it.each([0, -40, 6, 1000])(
    'harmonic from an offset of %d ends at minus the mean of the errors',
    (offset) => {
      const errors = [0.4, -1.1, 0.7, -0.3, 1.5, -0.9, 0.2, -0.6, 1, -0.4];
      expect(follow({ kind: 'harmonic' }, offset, errors).at(-1)!.after).toBeCloseTo(-0.05, 9);
    },
  );

  it.each([
    ['harmonic', 8.9712],
    ['extended_0.25', 9.2048],
    ['full', 21.86],
    ['fixed_0.3', 39.1959],
  ])('%s: sum of squares of strings 2 to 10 is %d', (name, sum) => {
    const errors = [0.4, -1.1, 0.7, -0.3, 1.5, -0.9, 0.2, -0.6, 1, -0.4];
    const squares = follow(RULES[name]!, 6, errors)
      .slice(1)
      .map(({ y }) => y ** 2);
    expect(squares.reduce((total, each) => total + each, 0)).toBeCloseTo(sum, 4);
  });

  it.each([
    [0.5, 3, 0.3125],
    [0.5, 5, 0.246],
    [0.5, 10, 0.176],
    [1.5, 3, 0.0625],
    [1.5, 5, 0.027],
    [1.5, 10, 0.009],
  ])(
    'harmonic with a response %d times the reckoned one leaves, after %d, %d of the offset',
    (r, n, left) => {
      const after = follow({ kind: 'harmonic' }, 1, Array(n).fill(0) as number[], r).at(-1)!.after;
      expect(Math.abs(after)).toBeCloseTo(left, 3);
    },
  );

  it('full adjustment for ever doubles the variance (Deming, Out of the Crisis, ch. 11), gain 0.2 adds a ninth', () => {
    const chance = seededChance(1);
    const errors = Array.from({ length: 40_000 }, () => Math.sqrt(12) * (chance.next() - 0.5));
    const variance = (rule: PublishedRule): number =>
      follow(rule, 0, errors).reduce((sum, { y }) => sum + y ** 2, 0) / errors.length;
    // Standard error of the ratio below 1 %.
    expect(variance({ kind: 'full' })).toBeCloseTo(2, 1);
    expect(variance({ kind: 'fixed', gain: 0.2 })).toBeCloseTo(1.111, 1);
  });
});

describe('Learning from strings', () => {
  const belief = (mean: readonly [number, number], offset: number, response: number): Belief => ({
    referenceSettings: [0],
    mean,
    covariance: [
      [offset, 0],
      [0, response],
    ],
  });

  it('of known response is the extended rule: K = 1/(t + r), variance sigma^2 K (del Castillo et al. 2003)', () => {
    const errors = [0.4, -1.1, 0.7, -0.3, 1.5, -0.9];
    let setting = 0;
    let now = belief([0, 1], 4, 0);
    const steps = follow({ kind: 'extended', varianceRatio: 0.25 }, 6, errors);
    for (const [index, { after, gain }] of steps.entries()) {
      now = learn(now, { position: 0, setting, errorM: 6 + setting + errors[index]!, varianceM2: 1 });
      const error = processError(now, 0, setting);
      setting -= error.value;
      expect(6 + setting).toBeCloseTo(after, 9);
      expect(error.u ** 2).toBeCloseTo(gain, 9);
    }
  });

  it('of unknown response is recursive least squares: NIST StRD Norris from P0 = 1e8 ends at -0.2623, 1.0021168', () => {
    const end = rowsOf('nist-strd-norris.csv').reduce(
      (now, [x, y]) => learn(now, { position: 0, setting: Number(x), errorM: Number(y), varianceM2: 1 }),
      belief([0, 0], 1e8, 1e8),
    );
    expect(Math.abs(processError(end, 0, 0).value - -0.262323073774029)).toBeLessThan(1e-4);
    expect(Math.abs(processResponse(end, 0).value - 1.00211681802045)).toBeLessThan(1e-6);
    // Certified standard deviations over the certified residual standard deviation.
    expect(processError(end, 0, 0).u).toBeCloseTo(0.232818234301152 / 0.884796396144373, 4);
    expect(processResponse(end, 0).u).toBeCloseTo(0.429796848199937e-3 / 0.884796396144373, 7);
  });
});

describe('Our rule beside the harmonic rule (Grubbs 1954), 80 simulated dial-ins', () => {
  it.each([
    ['new-servo', 0, 1],
    ['new-servo', 5, 0.75],
  ] as const)('%s, %d past runs: at most %d times its strings for runs as good', (kind, pastRuns, times) => {
    const comparison = compareRules(SIMULATED_MACHINES[kind], { pastRuns, count: 80, seed: 31_000 });
    const harmonic = inHindsight(comparison).get('harmonic');
    if (!harmonic) throw new Error('no release of the harmonic rule makes runs as good');
    expect(comparison.ours.strings.mean).toBeLessThanOrEqual(times * harmonic.strings.mean);
    expect(comparison.ours.good.mean).toBeGreaterThan(0.98);
  });
});
