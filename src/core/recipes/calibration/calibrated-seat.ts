import { type Estimate, estimate } from '../../numeric/index.js';
import { CORRELATED_FIGURES, type FamilySeat, PRIOR_SEAT, type SeatModel } from '../../string/index.js';
import type { Calibration } from './calibrate.js';
import { priorMiddle } from './calibration-prior.js';
import { familyStandings } from './family-standing.js';
import {
  type SeatQuestion,
  seatCovariance,
  seatQuestion,
  seatVariance,
  unitSlopes,
} from './seat-question.js';

/**
 * The seat model that a shop's strings have taught: for each family, on whichever machine and on each machine that
 * winds; and for families not yet measured what all have in common. What measurements say nothing of stays as the
 * prior has it. A family is `calibrated` by the rule of `familyStandings`.
 */
export function calibratedSeat(calibration: Calibration, toleranceM: number): SeatModel {
  const { machines } = calibration.posterior.layout;
  const standings = familyStandings(calibration, toleranceM);
  const families = standings.flatMap(({ family, key, strings, byMachine, isCalibrated }): FamilySeat[] => {
    const state: SeatModel['state'] = isCalibrated ? 'calibrated' : 'predicted';
    const at = (machineId: string | undefined) =>
      figuresAt(calibration, seatQuestion(calibration, key, machineId));
    return [
      { family, strings, ...at(undefined), state },
      ...machines.map((machineId) => ({
        family,
        machineId,
        strings: byMachine.get(machineId) ?? 0,
        ...at(machineId),
        state,
      })),
    ];
  });
  const ofAll = figuresAt(calibration, seatQuestion(calibration, '', undefined));
  return { ...ofAll, state: 'predicted', ...(families.length > 0 ? { families } : {}) };
}

type Figures = Omit<SeatModel, 'families' | 'state'>;

/** Ten figures behind the point: correlations are written into files that people read. */
const WRITTEN = 1e10;

function figuresAt({ prior, posterior }: Calibration, question: SeatQuestion): Figures {
  const middle = priorMiddle(prior);
  const [massSeat, caliperSeat, flattening, extraGap, axialShare] = CORRELATED_FIGURES.map(
    (_, k): Estimate => {
      const { off, variance } = seatVariance(posterior, question, unitSlopes(k));
      return estimate(middle[k]! + off, Math.sqrt(variance));
    },
  ) as [Estimate, Estimate, Estimate, Estimate, Estimate];
  const us = [massSeat, caliperSeat, flattening, extraGap, axialShare].map(({ u }) => u);
  const correlations = us.flatMap((u, row) =>
    us.slice(0, row).map((other, column) => {
      const covariance = seatCovariance(posterior, question, unitSlopes(row), unitSlopes(column));
      return u * other === 0 ? 0 : Math.round((covariance / (u * other)) * WRITTEN) / WRITTEN;
    }),
  );
  const { bendingShare } = PRIOR_SEAT;
  return { massSeat, caliperSeat, flattening, axialShare, bendingShare, extraGap, correlations };
}
