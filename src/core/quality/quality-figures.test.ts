import { describe, expect, it } from 'vitest';
import { plantedRuns } from '../../../test/fixtures/planted-runs.js';
import { comparedGroups } from './compared-groups.js';
import { handsShare } from './hands-share.js';
import { valuesOf } from './run-seen.js';
import { runSeries } from './run-series.js';
import { runningCapability } from './running-capability.js';
import { withoutFactors } from './without-factors.js';
import { firstPass, type ScrapSeen, scrapReasons } from './yield-of-runs.js';

const sound = plantedRuns();

describe('a chart of runs', () => {
  it('has a point a run, limits about them and hardly a signal where nothing happens', () => {
    const series = runSeries(valuesOf(sound, 'first'), 'first');
    expect(series.points).toHaveLength(sound.length);
    expect(series.limits!.lower).toBeLessThan(0);
    expect(series.limits!.upper).toBeGreaterThan(0);
    // Three sigma 1 in 370, nine on a side 1 in 256: together some 6 of 990.
    expect(series.signals.length).toBeLessThan(15);
    expect(series.change).toBeUndefined();
  });

  it('marks the day from which the level is another', () => {
    const shifted = plantedRuns({ shift: { day: 200, byM: 12e-6 } });
    const { points, change } = runSeries(valuesOf(shifted, 'first', 'micrometer 2'), 'first');
    expect(Math.abs(Date.parse(points[change!.point]!.at) - Date.UTC(2031, 0, 206, 8))).toBeLessThan(
      20 * 864e5,
    );
    expect(change!.after - change!.before).toBeGreaterThan(6e-6);
  });

  it('of more runs than it can show has several in a row for a point, and loses none', () => {
    const { points } = runSeries(valuesOf(sound, 'running'), 'running', 100);
    expect(points.length).toBeLessThanOrEqual(100);
    expect(points.reduce((sum, { runs }) => sum + runs, 0)).toBe(sound.length);
  });

  it('of a spread along strings has limits that are never below nothing', () => {
    const { limits } = runSeries(valuesOf(sound, 'along'), 'along');
    expect(limits!.lower).toBeGreaterThan(0);
  });
});

describe('groups compared', () => {
  it('differ where one is otherwise, and not where none is, however many there are', () => {
    const drifting = plantedRuns({ driftMPerDay: 40e-9 });
    const groups = comparedGroups(valuesOf(drifting, 'first'), 'machine');
    const worn = groups.find(({ name }) => name === 'machine 1')!;
    expect(worn.against!.p).toBeLessThan(1e-6);
    expect(worn.against!.from).toBeGreaterThan(0);
    const lots = comparedGroups(valuesOf(sound, 'running'), 'lot');
    expect(lots.length).toBeGreaterThan(10);
    expect(lots.filter(({ against }) => against && against.p < 0.05)).toEqual([]);
  });
});

describe('hands', () => {
  it('show only when two of them work one machine and wind otherwise', () => {
    const same = handsShare(valuesOf(sound, 'running'))!;
    expect(same.p).toBeGreaterThan(0.01);
    const other = handsShare(valuesOf(plantedRuns({ handM: 8e-6 }), 'running'))!;
    expect(other.p).toBeLessThan(1e-4);
    expect(other.share).toBeGreaterThan(same.share);
  });

  it('cannot be told from machines where each has its own', () => {
    const apart = sound.filter(({ machineId }) => machineId !== 'machine 3');
    expect(handsShare(valuesOf(apart, 'running'))).toBeUndefined();
  });

  it('are seen against what machines, recipes and wire do: a balanced table has its margins taken out whole', () => {
    // Two ways crossed: rows 0 and 10, columns 0 and 4, and one cell more.
    const rest = withoutFactors(
      [0, 4, 10, 15],
      [
        ['a', 'a', 'b', 'b'],
        ['x', 'y', 'x', 'y'],
      ],
    );
    for (const [at, left] of [0.25, -0.25, -0.25, 0.25].entries()) expect(rest[at]).toBeCloseTo(left, 9);
  });
});

describe('right the first time', () => {
  const runs = sound.slice(0, 3);
  const scrap: readonly ScrapSeen[] = [
    { runId: runs[0]!.runId, station: 'winder', reason: 'gap', count: 1 },
    { runId: runs[0]!.runId, station: 'coiler', reason: 'kink', count: 2 },
    { runId: 'of another day', station: 'coiler', reason: 'kink', count: 5 },
  ];

  it('is what neither winder nor coiler threw away, of all that was wound', () => {
    const right = firstPass(runs, scrap)!;
    expect([right.wound, right.right]).toEqual([33, 28]);
    expect(right.share).toBeCloseTo(28 / 33, 12);
    expect([right.from < right.share, right.to > right.share]).toEqual([true, true]);
    expect(firstPass([], [])).toBeUndefined();
  });

  it('137 of 144 wound strings is 0.951 (worked by hand)', () => {
    const run = { ...runs[0]!, good: 137, scrap: 7 };
    expect(firstPass([run], [])!.share).toBeCloseTo(0.951_389, 6);
  });

  it('names reasons by how often they come, and keeps apart what nobody told', () => {
    expect(scrapReasons(runs, scrap)).toEqual([
      { winder: 2, coiler: 0, cumulative: 0.4 },
      { reason: 'kink', winder: 0, coiler: 2, cumulative: 0.8 },
      { reason: 'gap', winder: 1, coiler: 0, cumulative: 1 },
    ]);
  });
});

describe('capability of running strings', () => {
  it('is bounded by the number of runs, and falls with the tolerance', () => {
    const wide = runningCapability(sound, 30e-6)!;
    const narrow = runningCapability(sound, 10e-6)!;
    expect(wide.runs).toBe(sound.length);
    expect(wide.ratio.atLeast).toBeLessThan(wide.ratio.value);
    expect(narrow.ratio.value).toBeLessThan(wide.ratio.value);
    // Setting 6 µm and string 2 µm: 6.3 µm in all, within three standard errors of a spread of 990.
    expect(wide.sigmaM * 1e6).toBeCloseTo(Math.hypot(6, 2), 0);
    expect(runningCapability(sound.slice(0, 5), 30e-6)).toBeUndefined();
  });
});
