import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveLinear } from '../../numeric/index.js';
import { eliminateLots } from './eliminate-lots.js';
import type { LotEquation } from './normal-equations.js';

/** Measurements of two seat unknowns and four lots: rows of coefficients and what was measured. */
const measurements = fc.array(
  fc.record({
    seat: fc.tuple(fc.integer({ min: -3, max: 3 }), fc.integer({ min: -3, max: 3 })),
    lots: fc.tuple(fc.integer({ min: 0, max: 3 }), fc.integer({ min: 0, max: 3 })),
    seen: fc.integer({ min: -9, max: 9 }),
  }),
  { minLength: 1, maxLength: 12 },
);

describe('lots of wire integrated out', () => {
  it('leave the same seat and the same lots as all equations solved at once', () => {
    fc.assert(
      fc.property(measurements, (rows) => {
        const size = 6;
        const whole = Array.from({ length: size }, (_, at) =>
          Array.from({ length: size }, (_, other) => (at === other ? 1 : 0)),
        );
        const right = new Array<number>(size).fill(0);
        for (const { seat, lots, seen } of rows) {
          const row = new Array<number>(size).fill(0);
          row[0] = seat[0];
          row[1] = seat[1];
          row[2 + lots[0]]! += 1;
          row[2 + lots[1]]! += 0.5;
          row.forEach((entry, at) => {
            right[at]! += entry * seen;
            row.forEach((other, column) => {
              whole[at]![column]! += entry * other;
            });
          });
        }
        const atOnce = solveLinear(whole, right)!;
        const parted = eliminateLots({
          seat: { size: 2, entries: Float64Array.from([0, 1].flatMap((at) => whole[at]!.slice(0, 2))) },
          seatRight: Float64Array.from(right.slice(0, 2)),
          lots: [2, 3, 4, 5].map(
            (at): LotEquation => ({
              diagonal: whole[at]![at]!,
              right: right[at]!,
              seat: Float64Array.from(whole[at]!.slice(0, 2)),
              others: new Map(
                [2, 3, 4, 5].flatMap((other) =>
                  other !== at && whole[at]![other] !== 0 ? [[other - 2, whole[at]![other]!]] : [],
                ),
              ),
            }),
          ),
        });
        const { entries } = parted.seat;
        const seat = solveLinear(
          [
            [entries[0]!, entries[1]!],
            [entries[2]!, entries[3]!],
          ],
          [...parted.seatRight],
        )!;
        const found = [...seat, ...parted.lotsAt(seat)];
        found.forEach((value, at) => {
          expect(Math.abs(value - atOnce[at]!)).toBeLessThan(1e-8);
        });
      }),
    );
  });
});
