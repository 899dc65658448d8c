import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { seededChance } from '../../src/core/foundation/index.js';
import {
  allPairs,
  benjaminiHochberg,
  changePoint,
  exposureTest,
  groupDifference,
  holm,
  meanOf,
  normalDraw,
  oneWay,
  pareto,
  predictOnLine,
  rankedGroups,
  readBack,
  spreadOf,
  straightLine,
  timeCluster,
  welchOneWay,
} from '../../src/core/stats/index.js';
import { given, qualityRows, relativeError } from './data/quality-rows.js';

const near = (found: number, expected: number, tolerance: number): void =>
  expect(Math.abs(found - expected)).toBeLessThan(tolerance);

describe('mean and standard deviation (NIST StRD, univariate, by construction exact)', () => {
  const numAcc = (middle: number, beside: number, pairs: number): number[] => [
    middle,
    ...Array.from({ length: pairs }, () => [middle - beside, middle + beside]).flat(),
  ];

  it.each([
    ['NumAcc1', [10_000_001, 10_000_003, 10_000_002], 10_000_002, 1, 1e-15],
    ['NumAcc2', numAcc(1.2, 0.1, 500), 1.2, 0.1, 1e-14],
    // As the decimals are stored, 0.1 is known to 1e-9 and 1e-8 of itself only.
    ['NumAcc3', numAcc(1_000_000.2, 0.1, 500), 1_000_000.2, 0.1, 2e-9],
    ['NumAcc4', numAcc(10_000_000.2, 0.1, 500), 10_000_000.2, 0.1, 2e-8],
  ])('%s', (_, values, mean, spread, tolerance) => {
    expect(relativeError(meanOf(values), mean)).toBeLessThan(1e-15);
    expect(relativeError(spreadOf(values), spread)).toBeLessThan(tolerance);
  });
});

describe('lots compared by analysis of variance (NIST StRD, certified values)', () => {
  /** Certified sums of squares and F, and the groups, of a file as NIST gives it. */
  function anovaFile(name: string) {
    const text = readFileSync(new URL(`data/quality/nist-anova/${name}.dat`, import.meta.url), 'utf8');
    const lines = text.split(/\r?\n/);
    const between = lines.find((line) => line.startsWith('Between'))!.split(/\s+/);
    const within = lines.find((line) => line.startsWith('Within'))!.split(/\s+/);
    const groups = new Map<string, number[]>();
    for (const line of lines.slice(
      lines.findIndex((each) => /^Data:.*(Resistance|AgWt|Response)/.test(each)) + 1,
    )) {
      const [group = '', value] = line.trim().split(/\s+/);
      if (value !== undefined) groups.set(group, [...(groups.get(group) ?? []), Number(value)]);
    }
    return {
      groups: [...groups.values()],
      betweenSquares: Number(between[3]),
      withinSquares: Number(within[3]),
      f: Number(between[5]),
    };
  }

  it.each([
    // How many digits the data leave: seven or thirteen of fifteen stand before the first that differs.
    ['SiRstv', 1e-11],
    ['SmLs01', 1e-12],
    ['AtmWtAg', 1e-8],
    ['SmLs04', 1e-8],
    ['SmLs07', 1e-2],
  ])('%s: F to %d', (name, tolerance) => {
    const { groups, betweenSquares, withinSquares, f } = anovaFile(name);
    const found = given(oneWay(groups));
    expect(relativeError(found.betweenSquares, betweenSquares)).toBeLessThan(tolerance);
    expect(relativeError(found.withinSquares, withinSquares)).toBeLessThan(tolerance);
    expect(relativeError(found.statistic, f)).toBeLessThan(tolerance);
  });
});

/** NIST/SEMATECH e-Handbook 7.4.3.3 (three levels) and 7.4.7.1 (with the fourth). */
const LEVELS = [
  [6.9, 5.4, 5.8, 4.6, 4.0],
  [8.3, 6.8, 7.8, 9.2, 6.5],
  [8.0, 10.5, 8.1, 6.9, 9.3],
  [5.8, 3.8, 6.1, 5.6, 6.2],
];

describe('the resistances of the e-Handbook (NIST/SEMATECH 7.4.3.3, 7.4.7.1; SciPy 1.17.1)', () => {
  it('three levels: 27.897 between, 17.452 within, F 9.59', () => {
    const found = given(oneWay(LEVELS.slice(0, 3)));
    near(found.betweenSquares, 27.897, 5e-4);
    near(found.withinSquares, 17.452, 5e-4);
    near(found.statistic, 9.591107036442812, 1e-12);
    near(found.p, 0.0032482226008593005, 1e-14);
  });

  it('spreads that may differ: F 8.0728, p 0.006672', () => {
    const found = given(welchOneWay(LEVELS));
    near(found.statistic, 8.07276941194172, 1e-12);
    near(found.p, 0.0066723771789866035, 1e-14);
  });

  it('all pairs: 1 with 2, 1 with 3, 2 with 4 and 3 with 4 differ, as the page finds', () => {
    const pairs = given(allPairs(LEVELS));
    const differing = pairs.filter(({ p }) => p < 0.05).map(({ first, second }) => [first + 1, second + 1]);
    expect(differing).toEqual([
      [1, 2],
      [1, 3],
      [2, 4],
      [3, 4],
    ]);
    const [oneTwo, oneThree, oneFour] = pairs;
    near(oneTwo!.p, 0.02279338, 5e-8);
    near(oneThree!.p, 0.00221082, 5e-8);
    near(oneFour!.p, 0.99612108, 5e-8);
    near(oneTwo!.interval.from, 0.29263161, 5e-8);
    near(oneTwo!.interval.to, 4.46736839, 5e-8);
  });

  it('two levels by themselves (Welch): t 3.3896 with 7.9987 degrees, p 0.0095, 0.7608 to 3.9992', () => {
    const found = given(groupDifference(LEVELS[0]!, LEVELS[1]!));
    near(found.t, 3.389639386780516, 1e-12);
    near(found.degrees, 7.998734940809775, 1e-12);
    near(found.p, 0.009507253160036151, 1e-13);
    near(found.interval.from, 0.7608186333053608, 1e-11);
    near(found.interval.to, 3.999181366694639, 1e-11);
  });
});

describe('lots compared by ranks', () => {
  it('clearance by the lungs of three groups: H 0.77143, p 0.6800 (Hollander & Wolfe 1973, p. 116; R, kruskal.test)', () => {
    const found = given(
      rankedGroups([
        [2.9, 3.0, 2.5, 2.6, 3.2],
        [3.8, 2.7, 4.0, 2.4],
        [2.8, 3.4, 3.7, 2.2, 2.0],
      ]),
    );
    near(found.statistic, 0.7714285714285722, 1e-13);
    near(found.p, 0.6799647735788936, 1e-13);
  });

  it('with ties: H 7.850467, p 0.019738 (SciPy 1.17.1)', () => {
    const found = given(
      rankedGroups([
        [1, 2, 2, 3],
        [2, 4, 4, 5],
        [6, 7, 7],
      ]),
    );
    near(found.statistic, 7.85046728971963, 1e-12);
    near(found.p, 0.019737524761509865, 1e-14);
  });
});

describe('many questions at once', () => {
  /** Benjamini & Hochberg 1995, section 4: fifteen p values of a study of the heart. */
  const PS = [
    0.0001, 0.0004, 0.0019, 0.0095, 0.0201, 0.0278, 0.0298, 0.0344, 0.0459, 0.324, 0.4262, 0.5719, 0.6528,
    0.759, 1,
  ];

  it('Benjamini & Hochberg keep the first four at 5 %; values as by SciPy 1.17.1', () => {
    const adjusted = benjaminiHochberg(PS);
    expect(adjusted.filter((p) => p <= 0.05)).toHaveLength(4);
    near(adjusted[3]!, 0.035625, 1e-12);
    near(adjusted[5]!, 0.06385714285714286, 1e-12);
    near(adjusted[10]!, 0.5811818181818182, 1e-12);
  });

  it('Holm keeps the first three, as Bonferroni does there', () => {
    const adjusted = holm(PS);
    expect(adjusted.filter((p) => p <= 0.05)).toHaveLength(3);
    near(adjusted[0]!, 0.0015, 1e-12);
    near(adjusted[2]!, 13 * 0.0019, 1e-12);
    expect(Math.max(...adjusted)).toBe(1);
  });

  it('answers stand in the order of the questions', () => {
    expect(holm([0.04, 0.01, 0.03])).toEqual([0.06, 0.03, 0.06].map((p) => expect.closeTo(p, 12)));
    expect(benjaminiHochberg([0.04, 0.01, 0.03])).toEqual(
      [0.04, 0.03, 0.04].map((p) => expect.closeTo(p, 12)),
    );
  });

  it('of a hundred shops in which all is well no more than some five are disturbed (Holm, six lots)', () => {
    const chance = seededChance(12);
    let disturbed = 0;
    for (let shop = 0; shop < 1000; shop++) {
      const ps = Array.from({ length: 6 }, () => chance.next());
      if (holm(ps).some((p) => p <= 0.05)) disturbed += 1;
    }
    expect(disturbed / 1000).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / 1000));
  });
});

describe('where a level changed', () => {
  /** Flow of the Nile at Aswan, 1871 to 1970 (G. Cobb, Biometrika 65 (1978) 243; R, datasets). */
  const NILE = [
    1120, 1160, 963, 1210, 1160, 1160, 813, 1230, 1370, 1140, 995, 935, 1110, 994, 1020, 960, 1180, 799, 958,
    1140, 1100, 1210, 1150, 1250, 1260, 1220, 1030, 1100, 774, 840, 874, 694, 940, 833, 701, 916, 692, 1020,
    1050, 969, 831, 726, 456, 824, 702, 1120, 1100, 832, 764, 821, 768, 845, 864, 862, 698, 845, 744, 796,
    1040, 759, 781, 865, 845, 944, 984, 897, 822, 1010, 771, 676, 649, 846, 812, 742, 801, 1040, 860, 874,
    848, 890, 744, 749, 838, 1050, 918, 986, 797, 923, 975, 815, 1020, 906, 901, 1170, 912, 746, 919, 718,
    714, 740,
  ];

  it('the Nile: after the 28th year, 1898 (Cobb 1978); K is 1617 (all pairs counted in Python)', () => {
    expect(NILE).toHaveLength(100);
    const found = given(changePoint(NILE));
    expect(found.at).toBe(28);
    near(found.p, 2 * Math.exp((-6 * 1617 ** 2) / (100 ** 3 + 100 ** 2)), 1e-18);
    expect([found.before, found.after]).toEqual([1130, 842.5]);
  });

  it('is claimed of steady values no more than five times in a hundred', () => {
    const chance = seededChance(44);
    let claimed = 0;
    for (let round = 0; round < 1500; round++) {
      const { p } = given(changePoint(Array.from({ length: 40 }, () => normalDraw(chance))));
      if (p <= 0.05) claimed += 1;
    }
    expect(claimed / 1500).toBeLessThan(0.05 + 3 * Math.sqrt((0.05 * 0.95) / 1500));
    expect(claimed / 1500).toBeGreaterThan(0.01);
  });
});

describe('a straight line: Norris, ozone monitors (NIST StRD, certified values)', () => {
  const points = qualityRows('nist-strd-norris.csv').map((row) => ({ x: Number(row.x), y: Number(row.y) }));
  const line = given(straightLine(points));

  it('intercept, slope, their deviations, residual, R2, SSE and F', () => {
    expect(relativeError(line.intercept, -0.262323073774029)).toBeLessThan(1e-9);
    expect(relativeError(line.interceptU, 0.232818234301152)).toBeLessThan(1e-10);
    expect(relativeError(line.slope, 1.00211681802045)).toBeLessThan(1e-10);
    expect(relativeError(line.slopeU, 0.429796848199937e-3)).toBeLessThan(1e-10);
    expect(relativeError(line.residual, 0.884796396144373)).toBeLessThan(1e-10);
    expect(relativeError(line.explained, 0.999993745883712)).toBeLessThan(1e-10);
    expect(relativeError(line.squaresLeft, 26.6173985294224)).toBeLessThan(1e-10);
    expect(relativeError(line.f, 5436385.54079785)).toBeLessThan(1e-10);
  });

  it('at 500: 500.796085936, 498.971794053 to 502.620377819; 500.5 read is 499.7045395 (R 4.2.2)', () => {
    const { value, from, to } = predictOnLine(line, 500);
    near(value, 500.796085936, 1e-7);
    near(from, 498.971794053, 1e-7);
    near(to, 502.620377819, 1e-7);
    const back = readBack(line, 500.5);
    near(back.value, 499.7045395, 1e-7);
    near(back.u, 0.8957723, 1e-7);
  });
});

describe('complaints and where they come from', () => {
  const chance = () => seededChance(5);

  it('7, 2 and 1 on shares 0.4, 0.35, 0.25: p 0.21846; 10, 3, 2 on 0.3, 0.4, 0.3: 0.021825 (all splits added up in Python)', () => {
    const test = (counts: readonly number[], shares: readonly number[]) =>
      given(
        exposureTest(
          counts.map((count, at) => ({ name: `${at}`, count, exposure: shares[at]! })),
          chance(),
        ),
      );
    const first = test([7, 2, 1], [0.4, 0.35, 0.25]);
    expect(first.isExact).toBe(true);
    near(first.p, 0.21846186718749977, 1e-12);
    near(test([10, 3, 2], [0.3, 0.4, 0.3]).p, 0.021824563737663987, 1e-12);
    near(first.sources[0]!.times, 7 / 4, 1e-12);
  });

  it('one bad lot among eight is named, and sound ones are not', () => {
    const sources = [3, 2, 4, 19, 1, 3, 2, 4].map((count, at) => ({
      name: `lot ${at + 1}`,
      count,
      exposure: 1000,
    }));
    const found = given(exposureTest(sources, chance()));
    expect(found.p).toBeLessThan(0.001);
    expect(found.sources.filter(({ p }) => p < 0.05).map(({ name }) => name)).toEqual(['lot 4']);
  });

  it('drawn splits agree with all of them added up', () => {
    // 12 on 6 lots are 6,188 splits; with 10 lots more of hardly any strings they are too many.
    const own = [5, 1, 2, 0, 3, 1].map((count, at) => ({ name: `${at}`, count, exposure: 1 }));
    const empty = Array.from({ length: 10 }, (_, at) => ({ name: `none ${at}`, count: 0, exposure: 1e-12 }));
    const exact = given(exposureTest(own, chance()));
    const drawn = given(exposureTest([...own, ...empty], chance()));
    expect([exact.isExact, drawn.isExact]).toEqual([true, false]);
    near(drawn.p, exact.p, 4 * Math.sqrt((exact.p * (1 - exact.p)) / 20_000));
  });

  it('all within one window: N w^(N-1) - (N-1) w^N, exactly (J. Naus, J. Amer. Statist. Assoc. 60 (1965) 532)', () => {
    const { count, p } = given(timeCluster([11, 12, 14, 15], { from: 0, to: 50, window: 5 }));
    expect(count).toBe(4);
    near(p, 4 * 0.1 ** 3 - 3 * 0.1 ** 4, 1e-15);
  });

  it('crowds as drawn: of 12 in a year six in a month come as often as it says, to a tenth', () => {
    const draws = seededChance(66);
    let crowded = 0;
    const rounds = 40_000;
    for (let round = 0; round < rounds; round++) {
      const times = Array.from({ length: 12 }, () => 12 * draws.next());
      if (given(timeCluster(times, { from: 0, to: 12, window: 1 })).count >= 5) crowded += 1;
    }
    const five = [0, 0.1, 0.2, 0.3, 0.4, 3, 4.5, 6, 7.5, 9, 10.5, 12];
    const { count, p } = given(timeCluster(five, { from: 0, to: 12, window: 1 }));
    expect(count).toBe(5);
    expect(relativeError(crowded / rounds, p)).toBeLessThan(0.1);
  });
});

describe('reasons in order', () => {
  it('fall, equal ones by name, and add up to all', () => {
    const rows = pareto(
      new Map([
        ['gap', 3],
        ['large', 12],
        ['end', 3],
        ['kink', 2],
      ]),
    );
    expect(rows.map(({ reason }) => reason)).toEqual(['large', 'end', 'gap', 'kink']);
    expect(rows.map(({ cumulative }) => cumulative)).toEqual([0.6, 0.75, 0.9, 1]);
  });
});
