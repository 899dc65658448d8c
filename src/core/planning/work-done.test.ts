import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { busyMinutesWithin, stringsMadeWithin } from './work-done.js';

const shifts = [0, 1, 2].map((day) => ({ fromMinute: day * 480, toMinute: day * 480 + 400 }));
/** Set up from 300, runs from 320: 80 minutes on the first day, 40 on the second. */
const run = {
  jobId: 'lot-1',
  machineId: 'm',
  setUpFromMinute: 300,
  runFromMinute: 320,
  toMinute: 520,
  setUpMinutes: 20,
  scrapStrings: 0,
  lateMinutes: 0,
  reason: { kind: 'fills-bin' } as const,
  quantity: 72,
};
const day = (n: number) => ({ fromMinute: n * 480, toMinute: (n + 1) * 480 });

describe('what a run gets done in a day', () => {
  it('makes two thirds of its strings in two thirds of its time', () => {
    expect([0, 1, 2].map((n) => stringsMadeWithin(day(n), run, shifts))).toEqual([48, 24, 0]);
  });

  it('keeps the machine busy while it is set up too, not while it stands', () => {
    expect([0, 1, 2].map((n) => busyMinutesWithin(day(n), run, shifts))).toEqual([100, 40, 0]);
  });

  it('windows that meet add up to the run, however they are cut', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 1000 }), { maxLength: 6 }),
        fc.nat(200),
        (cuts, quantity) => {
          const edges = [0, ...cuts, 1000].sort((a, b) => a - b);
          const windows = edges.slice(1).map((toMinute, i) => ({ fromMinute: edges[i]!, toMinute }));
          const made = windows.map((window) => stringsMadeWithin(window, { ...run, quantity }, shifts));
          const busy = windows.map((window) => busyMinutesWithin(window, run, shifts));
          expect(made.reduce((a, b) => a + b, 0)).toBe(quantity);
          expect(made.every((count) => count >= 0)).toBe(true);
          expect(busy.reduce((a, b) => a + b, 0)).toBe(140);
        },
      ),
    );
  });
});
