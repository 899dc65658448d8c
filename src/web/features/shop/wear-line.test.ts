import { describe, expect, it } from 'vitest';
import { wearLine } from './wear-line.js';

const point = (date: string, offM: number) => ({ date, offM, u: 1e-6, runs: 9 });
const drift = {
  z: 3,
  perDayM: { value: 1e-7, from: 0.5e-7, to: 1.5e-7 },
  soFarM: 1e-6,
  days: 10,
  daysLeft: { value: 117, earliest: 75 },
};
const machine = {
  machineId: 'm',
  verdict: 'drifts' as const,
  points: [point('2026-03-01', 2e-6), point('2026-03-06', 2.5e-6), point('2026-03-11', 9e-6)],
};

describe('the picture of wear', () => {
  it('has its line through the middle of the months, which one odd month does not move', () => {
    const { line, limitM } = wearLine({ ...machine, drift }, 12e-6);
    expect(line!.fromM).toBeCloseTo(2e-6, 12);
    expect(line!.toM).toBeCloseTo(3e-6, 12);
    expect(limitM).toBeCloseTo(14e-6, 12);
  });

  it('has no limit while no drift is proven, and no line where too little is known', () => {
    const { daysLeft: _, ...unproven } = drift;
    expect(wearLine({ ...machine, drift: unproven }, 12e-6)).not.toHaveProperty('limitM');
    const bare = wearLine(machine, 12e-6);
    expect(bare).not.toHaveProperty('line');
    expect(bare.points[1]).toEqual({ day: 5, offM: 2.5e-6, halfM: expect.closeTo(1.6449e-6, 12) });
    expect(wearLine({ ...machine, points: [] }, 12e-6)).toEqual({ points: [] });
  });
});
