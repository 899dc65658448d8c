import { describe, expect, it } from 'vitest';
import { seededChance } from '../../src/core/foundation/index.js';
import {
  badCountLimits,
  baseByPooledSpread,
  baseByRange,
  baseBySpread,
  baseOfSingles,
  type ChartConstants,
  chartConstants,
  cusumLimitFor,
  cusumPath,
  cusumRunLength,
  drawnRunLength,
  ewmaLimits,
  ewmaPath,
  ewmaRunLength,
  ewmaWidthFor,
  falseAlarmRate,
  meanLimits,
  meanOf,
  movingRanges,
  NELSON_RULES,
  outerWidthFor,
  outside,
  overallRate,
  patternEnds,
  phaseOne,
  RULE_SETS,
  rangeLimits,
  rateLimits,
  rulesRunLength,
  shareLimits,
  singlesRunLength,
  spreadLimits,
  spreadOf,
  WESTERN_ELECTRIC_RULES,
} from '../../src/core/stats/index.js';
import { given, qualityRows, relativeError } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

const isFirstPhase = (row: Readonly<Record<string, string>>): boolean => row.phase1 === 'TRUE';

/** Rows of a sample or a group together, in the order of the file. */
function groupsOf(rows: readonly Readonly<Record<string, string>>[], by: string, value: string): number[][] {
  const groups = new Map<string, number[]>();
  for (const row of rows) groups.set(row[by]!, [...(groups.get(row[by]!) ?? []), Number(row[value])]);
  return [...groups.values()];
}

describe('constants of charts (R 4.2.2, as printed in ASTM E2587 and by Montgomery, appendix VI)', () => {
  it.each(qualityRows('control-chart-constants.csv'))('for groups of $n, all twelve to 1e-8', (row) => {
    const found = chartConstants(Number(row.n));
    for (const name of Object.keys(found) as (keyof ChartConstants)[])
      near(found[name], Number(row[name]), name === 'd2' || name === 'd3' || name === 'c4' ? 1e-9 : 1e-8);
  });
});

describe('piston rings (Montgomery 1991, pp. 206-213; R 4.2.2, confirmed with qcc 2.7)', () => {
  const rows = qualityRows('montgomery-piston-rings.csv');
  const first = groupsOf(rows.filter(isFirstPhase), 'subgroup', 'diameter_mm');
  const byRange = given(baseByRange(first));

  it('means and ranges: 74.001176, limits 73.988048 and 74.014304, ranges 0 to 0.048126', () => {
    expect(first).toHaveLength(25);
    near(byRange.mean, 74.001176, 1e-6);
    near(byRange.sigma, 0.00978534, 1e-6);
    near(rangeLimits(byRange, 5).centre, 0.02276, 1e-6);
    near(meanLimits(byRange, 5).lower, 73.988048, 1e-6);
    near(meanLimits(byRange, 5).upper, 74.014304, 1e-6);
    expect(rangeLimits(byRange, 5).lower).toBe(0);
    near(rangeLimits(byRange, 5).upper, 0.048126, 1e-6);
  });

  it('means and standard deviations: s 0.009240037, limits 73.987988 and 74.014364, s 0 to 0.019302', () => {
    const bySpread = given(baseBySpread(first));
    near(bySpread.sigma, 0.00982998, 1e-6);
    near(spreadLimits(bySpread, 5).centre, 0.009240037, 1e-6);
    near(meanLimits(bySpread, 5).lower, 73.987988, 1e-6);
    near(meanLimits(bySpread, 5).upper, 74.014364, 1e-6);
    expect(spreadLimits(bySpread, 5).lower).toBe(0);
    near(spreadLimits(bySpread, 5).upper, 0.019302, 1e-6);
    near(given(baseByPooledSpread(first)).sigma, 0.00986286, 1e-6);
    near(spreadOf(first.flat()), 0.01006997, 1e-6);
  });

  it('later groups against those limits: 37, 38 and 39 are out', () => {
    const later = groupsOf(
      rows.filter((row) => !isFirstPhase(row)),
      'subgroup',
      'diameter_mm',
    );
    const signals = outside(later.map(meanOf), meanLimits(byRange, 5)).map((at) => 26 + at);
    expect(signals).toEqual([37, 38, 39]);
    expect(outside(first.map(meanOf), meanLimits(byRange, 5))).toEqual([]);
  });
});

describe('cans of orange juice (Montgomery 1991, pp. 152-155; R 4.2.2)', () => {
  const samples = qualityRows('montgomery-orange-juice-np.csv')
    .filter(isFirstPhase)
    .map((row) => ({ count: Number(row.defectives), size: Number(row.n) }));
  const charted = (leftOut: ReadonlySet<number>) =>
    given(
      phaseOne({
        points: samples,
        leftOut,
        limitsFrom: (points) => {
          const rate = overallRate(points);
          return rate.ok ? { ok: true, value: ({ size }) => shareLimits(rate.value, size) } : rate;
        },
        valueAt: ({ count, size }) => count / size,
      }),
    );

  it('347 of 1,500: p 0.231333, limits 0.052428 and 0.410239, signals 15 and 23', () => {
    expect(samples.reduce((sum, { count }) => sum + count, 0)).toBe(347);
    const { limitsOf, toExplain } = charted(new Set());
    near(limitsOf(samples[0]!).centre, 0.231333, 1e-6);
    near(limitsOf(samples[0]!).lower, 0.052428, 1e-6);
    near(limitsOf(samples[0]!).upper, 0.410239, 1e-6);
    expect(toExplain.map((at) => at + 1)).toEqual([15, 23]);
  });

  it('as counts: limits 2.62138 and 20.51196', () => {
    const limits = badCountLimits(given(overallRate(samples)), 50);
    near(limits.lower, 2.62138, 1e-5);
    near(limits.upper, 20.51196, 1e-5);
  });

  it('without the two whose cause was found: p 0.2150, limits 0.040703 and 0.389297', () => {
    const { limitsOf, toExplain } = charted(new Set([14, 22]));
    near(limitsOf(samples[0]!).centre, 0.215, 1e-6);
    near(limitsOf(samples[0]!).lower, 0.040703, 1e-6);
    near(limitsOf(samples[0]!).upper, 0.389297, 1e-6);
    // Montgomery finds no cause for sample 21 and keeps it.
    expect(toExplain.map((at) => at + 1)).toEqual([21]);
  });
});

describe('faults on circuit boards (Montgomery 1991, pp. 173-175; R 4.2.2)', () => {
  const counts = qualityRows('montgomery-circuit-c.csv')
    .filter(isFirstPhase)
    .map((row) => Number(row.nonconformities));
  const limitsFrom = (own: readonly number[]) =>
    rateLimits(given(overallRate(own.map((count) => ({ count, size: 1 })))));

  it('516 on 26: c 19.846154, limits 6.481447 and 33.210861, signals 6 and 20', () => {
    expect(counts.reduce((sum, count) => sum + count, 0)).toBe(516);
    near(limitsFrom(counts).centre, 19.846154, 1e-6);
    near(limitsFrom(counts).lower, 6.481447, 1e-6);
    near(limitsFrom(counts).upper, 33.210861, 1e-6);
    expect(outside(counts, limitsFrom(counts)).map((at) => at + 1)).toEqual([6, 20]);
  });

  it('without those two: 19.666667, 6.362532, 32.970801', () => {
    const limits = limitsFrom(counts.filter((_, at) => at !== 5 && at !== 19));
    near(limits.centre, 19.666667, 1e-6);
    near(limits.lower, 6.362532, 1e-6);
    near(limits.upper, 32.970801, 1e-6);
  });
});

describe('faults on computers (Montgomery 1991, pp. 181-182; R 4.2.2)', () => {
  it('u 1.93, limits 0.066133 and 3.793867 for five', () => {
    const samples = qualityRows('montgomery-pc-u.csv').map((row) => ({
      count: Number(row.nonconformities),
      size: Number(row.units),
    }));
    const limits = rateLimits(given(overallRate(samples)), 5);
    near(limits.centre, 1.93, 1e-6);
    near(limits.lower, 0.066133, 1e-6);
    near(limits.upper, 3.793867, 1e-6);
  });
});

describe('flow rate, single readings (NIST/SEMATECH e-Handbook 6.3.2.2)', () => {
  it('mean 50.81, mean range 1.8778, limits 45.82 and 55.80, ranges up to 6.1347', () => {
    const values = qualityRows('nist-flowrate-imr.csv').map((row) => Number(row.flowrate));
    const base = given(baseOfSingles(values));
    near(base.mean, 50.81, 1e-9);
    near(meanOf(movingRanges(values)), 1.877778, 1e-6);
    // The page rounds d2 to 1.128 and D4 to 3.267: 0.002 of the limits.
    near(meanLimits(base).lower, 45.8159, 2e-3);
    near(meanLimits(base).upper, 55.8041, 2e-3);
    near(rangeLimits(base).upper, 6.1347, 2e-3);
    // With the page's own constants they are its figures.
    const rounded = { ...base, sigma: meanOf(movingRanges(values)) / 1.128 };
    near(meanLimits(rounded).lower, 45.8159, 1e-4);
    near(meanLimits(rounded).upper, 55.8041, 1e-4);
  });
});

describe('a mean that runs along (NIST/SEMATECH e-Handbook 6.3.2.4)', () => {
  const rows = qualityRows('nist-ewma.csv');
  const chart = { target: 50, sigma: 2.0539, weight: 0.3, width: 3 };
  const path = ewmaPath(
    rows.map((row) => Number(row.y)),
    chart,
  );

  it('has the twenty values of the page to their two decimals', () => {
    expect(path).toHaveLength(20);
    rows.forEach((row, at) => {
      near(path[at]!, Number(row.ewma_printed), 0.00501);
    });
    near(path[19]!, 51.98824326, 1e-7);
  });

  it('limits 47.4116 and 52.5884, and no signal', () => {
    const limits = ewmaLimits(chart);
    near(limits.lower, 47.4116, 1e-3);
    near(limits.upper, 52.5884, 1e-3);
    expect(outside(path, limits)).toEqual([]);
  });

  it('starts with narrower limits: those of the first value are of weight sigma (Montgomery, 9.2)', () => {
    near(ewmaLimits(chart, 1).upper, 50 + 3 * 0.3 * 2.0539, 1e-12);
    near(ewmaLimits(chart, 50).upper, ewmaLimits(chart).upper, 1e-7);
  });
});

describe('sums of what is off (Montgomery, table 9.1; K 0.5, H 5)', () => {
  const rows = qualityRows('montgomery-cusum.csv');
  const path = cusumPath(
    rows.map((row) => Number(row.x)),
    { target: 10, sigma: 1 },
    { allowance: 0.5, limit: 5 },
  );

  it.each(rows.map((row, at) => ({ row, at })))(
    'reading $row.i: both sums and both counts',
    ({ row, at }) => {
      const step = path[at]!;
      near(step.upper, Number(row.Cplus), 0.005);
      near(step.lower, Number(row.Cminus), 0.005);
      expect([step.sinceUpper, step.sinceLower]).toEqual([Number(row.Nplus), Number(row.Nminus)]);
    },
  );

  it('the first signal is 29, of a shift after 22', () => {
    const signal = path.findIndex((step) => step.signal);
    expect(signal + 1).toBe(29);
    expect(signal + 1 - path[signal]!.sinceUpper).toBe(22);
  });
});

describe('patterns of points (L. Nelson, J. Quality Technology 16 (1984) 237; constructed series)', () => {
  const series = (name: string): readonly number[] =>
    qualityRows('run-rules.csv')
      .filter((row) => row.series === name)
      .map((row) => Number(row.z));
  const found = (name: string): string[] =>
    NELSON_RULES.flatMap((rule, number) => {
      const ends = patternEnds(series(name), rule).map((at) => at + 1);
      return ends.length > 0 ? [`${number + 1}@${ends.join()}`] : [];
    });
  const eightInARow = (name: string): number[] =>
    patternEnds(series(name), WESTERN_ELECTRIC_RULES[3]).map((at) => at + 1);

  it.each([
    ['NR1', ['1@4']],
    ['NR2', ['2@10']],
    ['NR3', ['3@7']],
    ['NR4', ['4@14,15', '7@15']],
    ['NR5', ['5@4']],
    ['NR6', ['6@6']],
    ['NR7', ['4@16', '7@15']],
    ['NR8', ['8@9']],
    ['NONE', []],
    ['EDGE9vs8', []],
  ])('%s: %j', (name, expected) => {
    expect(found(name)).toEqual(expected);
  });

  it('eight in a row (Western Electric 1956) come one point earlier than nine (Nelson)', () => {
    expect(eightInARow('NR2')).toEqual([9, 10]);
    expect(eightInARow('EDGE9vs8')).toEqual([10]);
  });

  it('leaves no series of the file out', () => {
    expect(new Set(qualityRows('run-rules.csv').map((row) => row.series)).size).toBe(10);
  });

  it('a point on the centre belongs to neither side', () => {
    expect(patternEnds([1, 1, 1, 1, 0, 1, 1, 1, 1], NELSON_RULES[1])).toEqual([]);
  });
});

describe('how far false alarms lie apart, and how soon a shift is seen', () => {
  it.each([
    [0, 370.4],
    [0.5, 155.22],
    [1, 43.895],
    [1.5, 14.968],
    [2, 6.303],
    [3, 2],
  ])('single readings, shift %d sigma: %d readings (Montgomery, table 9.3)', (shift, length) => {
    expect(relativeError(singlesRunLength(3, shift), length)).toBeLessThan(1e-4);
  });

  it.each([
    [4, 0, 167.68],
    [4, 1, 8.38],
    [5, 0, 465.44],
    [5, 1, 10.38],
  ])(
    'sums, K 0.5, H %d, shift %d: %d (spc 0.6.7; Montgomery, 9.1: 168, 465, 10.4)',
    (limit, shift, length) => {
      expect(relativeError(cusumRunLength({ allowance: 0.5, limit }, shift), length)).toBeLessThan(1e-3);
    },
  );

  it.each([
    [0.1, 2.7, 0, 369],
    [0.1, 2.7, 1, 9.73],
    [0.2, 2.962, 0, 499.7],
  ])('running mean, weight %d, width %d, shift %d: %d (spc 0.6.7)', (weight, width, shift, length) => {
    expect(relativeError(ewmaRunLength({ weight, width }, shift), length)).toBeLessThan(1e-3);
  });

  it('all four rules of Western Electric: 91.75 (C. Champ & W. Woodall, Technometrics 29 (1987) 393)', () => {
    expect(rulesRunLength(WESTERN_ELECTRIC_RULES, 0)).toBeCloseTo(91.75, 2);
  });

  it.each([
    // Champ & Woodall 1987, table 1: rule 1 alone, with 2 of 3, with 4 of 5, with eight in a row; from memory.
    ['one beyond 3', [0], 370.4],
    ['and 2 of 3', [0, 1], 225.44],
    ['and 4 of 5', [0, 2], 166.05],
    ['and eight in a row', [0, 3], 152.73],
  ] as const)('%s: %j of them lie %d apart', (_, which, length) => {
    const rules = which.map((at) => WESTERN_ELECTRIC_RULES[at]!);
    expect(relativeError(rulesRunLength(rules, 0), length)).toBeLessThan(5e-5);
  });

  it('the chain and drawn points agree, nine in a row: 216.7 within 4 standard errors', () => {
    const chance = seededChance(9);
    const rules = [NELSON_RULES[0], NELSON_RULES[1]];
    const draws = Array.from({ length: 2000 }, () => drawnRunLength(rules, 0, chance));
    expect(Math.abs(meanOf(draws) - rulesRunLength(rules, 0))).toBeLessThan(
      (4 * spreadOf(draws)) / Math.sqrt(2000),
    );
  });

  it.each([
    ['calm', 370.4, 43.9],
    ['usual', 216.7, 17.05],
    ['quick', 91.75, 9.22],
  ] as const)('the set "%s": a false alarm in %d points, a shift of one sigma in %d', (set, apart, seen) => {
    expect(relativeError(1 / falseAlarmRate(set), apart)).toBeLessThan(1e-3);
    expect(relativeError(rulesRunLength(RULE_SETS[set], 1), seen)).toBeLessThan(1e-3);
  });

  it('limits are found for the distance that is asked for', () => {
    near(ewmaWidthFor(499.735, 0.2)!, 2.962, 1e-4);
    near(cusumLimitFor(465.4435, 0.5)!, 5, 1e-4);
    near(outerWidthFor(152.73, [WESTERN_ELECTRIC_RULES[3]])!, 3, 1e-3);
    expect(cusumLimitFor(2, 0.5)).toBeUndefined();
    expect(outerWidthFor(1000, [WESTERN_ELECTRIC_RULES[3]])).toBeUndefined();
  });
});
