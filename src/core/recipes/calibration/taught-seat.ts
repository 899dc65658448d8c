import { type Estimate, estimate } from '../../numeric/index.js';
import type { Calibration } from './calibrate.js';
import { type SeatQuestion, seatQuestion, seatVariance, unitSlopes } from './seat-question.js';
import { SEAT_UNKNOWNS, type SeatUnknown } from './seat-unknowns.js';

/** One unknown before any string was measured, and now. */
export interface TaughtUnknown {
  readonly name: SeatUnknown;
  readonly before: Estimate;
  readonly now: Estimate;
}

/** Each unknown of a family (of any, where its key is empty) on a machine (on whichever, where none is told). */
export function taughtSeat(
  calibration: Calibration,
  familyKey: string,
  machineId?: string,
): readonly TaughtUnknown[] {
  const question: SeatQuestion = seatQuestion(calibration, familyKey, machineId);
  return SEAT_UNKNOWNS.map((name, k) => {
    const before = calibration.prior.unknowns[name];
    const { off, variance } = seatVariance(calibration.posterior, question, unitSlopes(k));
    return { name, before, now: estimate(before.value + off, Math.sqrt(variance)) };
  });
}
