import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { airByPeriod } from './air-by-period.js';
import { corrosionRisk } from './corrosion-risk.js';
import { excursions } from './excursions.js';
import { type ClimateReading, spokenFor } from './spoken-for.js';
import { thinOut } from './thin-out.js';

const HOUR = 3_600_000;
const MINUTE = 60_000;
const LIMITS = { leastC: 15, mostC: 27, mostHumidity: 0.5 };
const DAY = { fromMs: 0, toMs: 24 * HOUR };

/** Readings at these hours, at 20 °C where nothing else is said. */
const read = (...readings: readonly (readonly [hour: number, humidity: number, celsius?: number])[]) =>
  readings.map(
    ([hour, relativeHumidity, temperatureC = 20]): ClimateReading => ({
      atMs: hour * HOUR,
      relativeHumidity,
      temperatureC,
    }),
  );

const everyTenMinutes = (hours: number, humidityAt: (hour: number) => number): readonly ClimateReading[] =>
  Array.from({ length: hours * 6 + 1 }, (_, at) => ({
    atMs: at * 10 * MINUTE,
    temperatureC: 20,
    relativeHumidity: humidityAt(at / 6),
  }));

describe('the time that readings speak for', () => {
  it('is shared out half-way between neighbours', () => {
    const { stretches, gaps } = spokenFor(read([6, 0.4], [12, 0.4], [20, 0.4]), {
      fromMs: 6 * HOUR,
      toMs: 20 * HOUR,
    });
    expect(stretches.map(({ fromMs, toMs }) => [fromMs / HOUR, toMs / HOUR])).toEqual([
      [6, 9],
      [9, 16],
      [16, 20],
    ]);
    expect(gaps).toEqual([]);
  });

  it('ends at a silence: what nobody read over a weekend is a gap, not good air', () => {
    const hours = [7, 15, 31, 39, 103, 111];
    const span = { fromMs: 7 * HOUR, toMs: 111 * HOUR };
    const { gaps, usualStepMs } = spokenFor(read(...hours.map((hour) => [hour, 0.4] as const)), span);
    expect(usualStepMs).toBe(8 * HOUR);
    expect(gaps).toEqual([{ fromMs: 43 * HOUR, toMs: 99 * HOUR }]);
  });

  it('does not take one reading that a fast logger lost for a gap, but two hours of them', () => {
    const all = everyTenMinutes(12, () => 0.4);
    const span = { fromMs: 0, toMs: 12 * HOUR };
    expect(
      spokenFor(
        all.filter((_, at) => at !== 20),
        span,
      ).gaps,
    ).toEqual([]);
    const { gaps } = spokenFor(
      all.filter(({ atMs }) => atMs <= 4 * HOUR || atMs >= 6 * HOUR),
      span,
    );
    expect(gaps).toEqual([{ fromMs: 4 * HOUR + 5 * MINUTE, toMs: 6 * HOUR - 5 * MINUTE }]);
  });

  it('and the gaps together are the whole time, whatever was read', () => {
    const hours = fc.array(fc.integer({ min: -30, max: 200 }), { maxLength: 40 });
    fc.assert(
      fc.property(hours, (when) => {
        const readings = read(...when.sort((a, b) => a - b).map((hour) => [hour, 0.4] as const));
        const span = { fromMs: 0, toMs: 168 * HOUR };
        const { stretches, gaps } = spokenFor(readings, span);
        const pieces = [...stretches, ...gaps].sort((a, b) => a.fromMs - b.fromMs);
        expect(pieces.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0)).toBeCloseTo(168 * HOUR, 3);
        for (const [at, { fromMs }] of pieces.entries())
          if (at > 0) expect(fromMs).toBeGreaterThanOrEqual(pieces[at - 1]!.toMs - 1e-6);
      }),
    );
  });

  it('is nothing where nothing was read', () => {
    expect(spokenFor([], DAY)).toMatchObject({ stretches: [], gaps: [DAY] });
  });
});

describe('an excursion', () => {
  it('has a beginning, an end, and how far the air went', () => {
    const readings = everyTenMinutes(24, (hour) => (hour >= 9 && hour < 13 ? 0.5 + 0.01 * (hour - 8) : 0.45));
    const found = excursions(spokenFor(readings, DAY).stretches, LIMITS);
    expect(found).toHaveLength(1);
    const [one] = found;
    expect(one!.fromMs).toBe(9 * HOUR - 5 * MINUTE);
    expect(one!.toMs).toBe(13 * HOUR - 5 * MINUTE);
    expect(one).toMatchObject({ readings: 24, beginsUnseen: false, endsUnseen: false, warmerByC: 0 });
    expect(one!.humidityOver).toBeCloseTo(0.0483, 4);
  });

  it('is cut by a gap, and says on which side nobody looked', () => {
    const readings = read([0, 0.4], [4, 0.55], [8, 0.55], [60, 0.6], [64, 0.6], [68, 0.4]);
    const { stretches } = spokenFor(readings, { fromMs: 0, toMs: 70 * HOUR });
    const found = excursions(stretches, LIMITS);
    expect(found.map(({ beginsUnseen, endsUnseen }) => [beginsUnseen, endsUnseen])).toEqual([
      [false, true],
      [true, false],
    ]);
  });

  it('is of cold and of heat too', () => {
    const readings = read([0, 0.4, 20], [6, 0.4, 12], [12, 0.4, 20], [18, 0.4, 30], [24, 0.4, 20]);
    const found = excursions(spokenFor(readings, DAY).stretches, LIMITS);
    expect(found.map(({ colderByC, warmerByC }) => [colderByC, warmerByC])).toEqual([
      [3, 0],
      [0, 3],
    ]);
  });

  it('is none while the air keeps to the edges of its limits', () => {
    const readings = read([0, 0.5, 27], [12, 0.5, 15], [24, 0.5, 20]);
    expect(excursions(spokenFor(readings, DAY).stretches, LIMITS)).toEqual([]);
  });
});

describe('the air of a day', () => {
  it('has a mean that weighs each reading by its time, and hours that add up', () => {
    // 0.40 from 0 to 3 and 9 to 12 h, 0.64 from 3 to 9 h: (6 x 0.40 + 6 x 0.64)/12.
    const air = spokenFor(read([0, 0.4], [6, 0.64], [12, 0.4]), { fromMs: 0, toMs: 12 * HOUR });
    const [day] = airByPeriod(air, [DAY], LIMITS);
    expect(day).toMatchObject({
      readings: 3,
      knownHours: 12,
      unknownHours: 12,
      outsideHours: 6,
      criticalHours: 6,
      wetHours: 0,
    });
    expect(day!.air!.meanHumidity).toBeCloseTo(0.52, 12);
    expect(day!.air).toMatchObject({ leastHumidity: 0.4, mostHumidity: 0.64 });
  });

  it('is told day by day, a stretch over midnight shared between both', () => {
    const air = spokenFor(read([20, 0.4], [28, 0.6]), { fromMs: 20 * HOUR, toMs: 28 * HOUR });
    const days = [DAY, { fromMs: 24 * HOUR, toMs: 48 * HOUR }];
    expect(airByPeriod(air, days, LIMITS).map(({ knownHours, readings }) => [knownHours, readings])).toEqual([
      [4, 1],
      [4, 1],
    ]);
  });

  it('that nobody read has no figures, not zeros', () => {
    const [day] = airByPeriod(spokenFor([], DAY), [DAY], LIMITS);
    expect(day).toMatchObject({ knownHours: 0, unknownHours: 24, air: undefined });
  });
});

describe('what the air means for steel', () => {
  it('is not said of a room that nobody read', () => {
    expect(corrosionRisk([])).toMatchObject({ verdict: 'unknown', wetHoursAYear: undefined });
  });

  it('speaks of a year only where a month is known', () => {
    const week = everyTenMinutes(7 * 24, (hour) => (hour < 1 ? 0.85 : 0.4));
    const { stretches } = spokenFor(week, { fromMs: 0, toMs: 7 * 24 * HOUR });
    expect(corrosionRisk(stretches)).toMatchObject({ verdict: 'wet', wetness: undefined });
  });
});

describe('readings thinned out', () => {
  it('keep every peak, and stand in order', () => {
    const readings = everyTenMinutes(1000, (hour) => (Math.abs(hour - 377.5) < 0.01 ? 0.9 : 0.4));
    const few = thinOut(readings, 100);
    expect(few.length).toBeLessThanOrEqual(400);
    expect(few.some(({ relativeHumidity }) => relativeHumidity === 0.9)).toBe(true);
    expect(few.map(({ atMs }) => atMs)).toEqual(few.map(({ atMs }) => atMs).toSorted((a, b) => a - b));
  });
});
