import { describe, expect, it } from 'vitest';
import { CRITICAL_HUMIDITY, corrosionRisk, isWet, spokenFor, wetnessOf } from '../../src/core/stock/index.js';

const HOUR = 3_600_000;

describe('P. Norberg, ACS Symposium Series 805 (2002) 23, on ISO 9223: time of wetness is the time of RH > 80 % and T > 0 °C', () => {
  it.each([
    [0.81, 0.1, true],
    [0.8, 20, false],
    [0.95, 0, false],
    [0.95, -5, false],
    [0.79, 30, false],
  ])('at %d and %d °C: %s', (relativeHumidity, temperatureC, wet) => {
    expect(isWet({ relativeHumidity, temperatureC })).toBe(wet);
  });

  it('so that 5 damp hours of a day, 2 of them frosty, are 3 hours of wetness', () => {
    const readings = Array.from({ length: 25 }, (_, hour) => ({
      atMs: hour * HOUR,
      temperatureC: hour >= 3 && hour < 5 ? -1 : 4,
      relativeHumidity: hour >= 3 && hour < 8 ? 0.9 : 0.55,
    }));
    const risk = corrosionRisk(spokenFor(readings, { fromMs: 0, toMs: 24 * HOUR }).stretches);
    expect(risk).toMatchObject({ knownHours: 24, criticalHours: 5, wetHours: 3, verdict: 'wet' });
  });
});

describe('P. R. Roberge, Corrosion Engineering (2008) 363, table of ISO 9223: hours of wetness in a year', () => {
  // The table gives the same limits as shares of the year: 0.1, 3 and 30 %.
  it.each([
    ['indoors with climatic control', 0, 9, 1],
    ['indoors without', 11, 250, 2],
    ['outdoors in dry, cold climates', 251, 2500, 3],
  ])('%s: %d to %d h are category %d', (_, from, to, category) => {
    expect([wetnessOf(from), wetnessOf(to)]).toEqual([category, category]);
  });
});

describe('W. H. J. Vernon, Trans. Faraday Soc. 31 (1935) 1668, as told by others: iron rusts above 60 to 65 %', () => {
  it('the lower one is the limit here', () => {
    expect(CRITICAL_HUMIDITY).toBe(0.6);
    const at = (relativeHumidity: number) =>
      corrosionRisk([{ atMs: 0, fromMs: 0, toMs: HOUR, temperatureC: 20, relativeHumidity }]).verdict;
    expect([at(0.59), at(0.6), at(0.65), at(0.81)]).toEqual(['dry', 'damp', 'damp', 'wet']);
  });
});
