import { describe, expect, it } from 'vitest';
import { fastestClearRpm, whirlCheck } from './whirl-check.js';

const SPAN = {
  freeSpanM: 0.4,
  dampersAtM: [],
  woundLengthM: 0.95,
  bareKgPerM: 1e-3,
  woundKgPerM: 5e-3,
  keepOutShare: 0.2,
};

describe('keeping the spindle clear of whirl', () => {
  it('leaves a fifth of the whirl speed free at the heaviest', () => {
    // f = (1/0.8) sqrt(180/0.005) = 237.17 Hz = 14230.2 turns a minute; four fifths of it.
    expect(fastestClearRpm(SPAN, 180)).toBeCloseTo(0.8 * 60 * 1.25 * Math.sqrt(180 / 0.005), 6);
  });

  it('asks for the tension at which the chosen speed is just clear', () => {
    const { leastCoreTensionN } = whirlCheck(SPAN, { layer: 0, spindleRpm: 3000 });
    // 50 turns a second over 0.8 is 62.5 Hz: T = mu (2 l f)^2 = 0.005 x (0.8 x 62.5)^2 = 12.5 N.
    expect(leastCoreTensionN).toBeCloseTo(12.5, 9);
    expect(fastestClearRpm(SPAN, leastCoreTensionN)).toBeCloseTo(3000, 6);
  });

  it('needs a quarter of the tension with a damper in the middle of a span that is wound through', () => {
    const check = whirlCheck(SPAN, { layer: 0, spindleRpm: 3000 });
    expect(check.leastCoreTensionDampedN).toBeCloseTo(check.leastCoreTensionN / 4, 9);
  });

  it('reckons with the least tension needed where none is known, and says so', () => {
    const check = whirlCheck(SPAN, { layer: 1, spindleRpm: 3000 });
    expect(check).toMatchObject({ layer: 1, assumed: 'least-needed', nearestAtM: 0.4 });
    expect(check.marginShare).toBeCloseTo(0.2, 9);
  });

  it('tells whirl at the tension assumed, bare and at its lowest', () => {
    const tension = { valueN: 50, assumed: 'record' } as const;
    const check = whirlCheck(SPAN, { layer: 0, spindleRpm: 3000, tension });
    expect(check.bareRpm).toBeCloseTo(60 * 1.25 * Math.sqrt(50 / 1e-3), 6);
    expect(check.lowestRpm).toBeCloseTo(60 * 1.25 * Math.sqrt(50 / 5e-3), 6);
    expect(check.marginShare).toBeCloseTo(1 - 3000 / 7500, 9);
    expect(check.assumed).toBe('record');
  });

  it('comes nearest at the end of a winding that is shorter than the span', () => {
    expect(whirlCheck({ ...SPAN, woundLengthM: 0.3 }, { layer: 0, spindleRpm: 3000 }).nearestAtM).toBe(0.3);
  });

  it('is held by the dampers that the machine has, part by part', () => {
    const check = whirlCheck({ ...SPAN, dampersAtM: [0.1] }, { layer: 0, spindleRpm: 3000 });
    // The longer part, 0.3 m, counts: (3/4)^2 of the tension; it is wound through at the end of the span.
    expect(check.leastCoreTensionN).toBeCloseTo(12.5 * 0.75 ** 2, 9);
    expect(check.nearestAtM).toBeCloseTo(0.4, 12);
    // One more halves that part.
    expect(check.damperBestAtM).toBeCloseTo(0.25, 9);
    expect(check.leastCoreTensionDampedN).toBeCloseTo(12.5 * (0.15 / 0.4) ** 2, 9);
  });

  it('comes nearest where the part that whirls lowest is wound through, long before the end', () => {
    const check = whirlCheck({ ...SPAN, dampersAtM: [0.25] }, { layer: 0, spindleRpm: 3000 });
    expect(check.nearestAtM).toBeCloseTo(0.25, 12);
  });
});
