import { type Estimate, estimate } from '../../numeric/index.js';
import { PRIOR_SEAT } from '../../string/index.js';
import { SEAT_UNKNOWNS, type SeatUnknown } from './seat-unknowns.js';

/** What is believed before any string was measured. */
export interface CalibrationPrior {
  /** Of a string of any family on any machine. */
  readonly unknowns: Readonly<Record<SeatUnknown, Estimate>>;
  /** Parts of that variance which a shop's strings have in common, which a family has and which a machine has; together 1. */
  readonly shares: { readonly shop: number; readonly family: number; readonly machine: number };
  /** The stated spread between families (and between machines) counts as much as so many families seen. */
  readonly spreadDegrees: number;
  readonly noise: NoiseSpreads;
  /** The stated noise counts as much as so many degrees of freedom seen. */
  readonly noiseDegrees: number;
}

/** Standard deviations of what no seat explains. */
export interface NoiseSpreads {
  /** Diameter from string to string at one setting, m; the micrometer's own part is in it. */
  readonly stringM: number;
  /** Diameter from one set-up by the sheet to the next, m. */
  readonly runM: number;
  /** Of finding the largest reading, m. */
  readonly largestReadingM: number;
  /** Unit weight that does not go with diameter, as a share: from string to string with the scale, and run to run. */
  readonly stringWeight: number;
  readonly runWeight: number;
  /** EA as a share, of one stretched string. */
  readonly axialStiffness: number;
}

/**
 * Figures without a source, ours: half-way between what a careful shop and a rough one would show. Seats and
 * flattening as `PRIOR_SEAT` has them. The extra gap is 0 +- 1 %: 2 % is the gap that the literature's sensitivity
 * table takes for a loosely wound string, and the density of an alloy (0.3 %) shows as gap too. Tension: flattening
 * changes by 0 +- 0.02 when it grows by a factor e.
 */
export const CALIBRATION_PRIOR: CalibrationPrior = {
  unknowns: {
    massSeat: PRIOR_SEAT.massSeat,
    caliperSeat: PRIOR_SEAT.caliperSeat,
    flattening: PRIOR_SEAT.flattening,
    extraGap: estimate(0, 0.01),
    axialShare: PRIOR_SEAT.axialShare,
    tensionEffect: estimate(0, 0.02),
  },
  shares: { shop: 0.64, family: 0.25, machine: 0.11 },
  spreadDegrees: 4,
  noise: {
    stringM: 2.5e-6,
    runM: 6e-6,
    largestReadingM: 2e-6,
    stringWeight: 0.002,
    runWeight: 0.002,
    axialStiffness: 0.02,
  },
  noiseDegrees: 6,
};

/** The middle of what is believed beforehand, in the order of `SEAT_UNKNOWNS`: what slopes are taken about. */
export const priorMiddle = ({ unknowns }: CalibrationPrior): readonly number[] =>
  SEAT_UNKNOWNS.map((name) => unknowns[name].value);
