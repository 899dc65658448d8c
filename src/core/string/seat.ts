import { estimate } from '../numeric/index.js';
import type { SeatModel } from './construction.js';

/** Seat for mass of a taut wire draped over the flats without biting in: perimeter over pi, 2 sqrt 3 / pi (exact). */
export const TAUT_DRAPE_SEAT = (2 * Math.sqrt(3)) / Math.PI;

/**
 * What we believe about wrap on core before any string of the shop has been measured. No table of weighed
 * steel hex-core strings was found in print, so the bounds are geometry and the widths are our own:
 * - massSeat: the taut drape, 1.1027 +- 0.025: two widths up is just under the rigid coil on the corners
 *   (1.1547), two down is a wrap bitten half way into them (1.05).
 * - caliperSeat: the largest micrometer reading lies between the taut drape and the sharp corners;
 *   1.1285 is midway, and the two ends lie at 1.7 widths of 0.015.
 * - flattening: a prior of our own, 0.96 +- 0.02, between 1 (none) and the 8-10 % shrinkage that one piano
 *   bass-string maker reports.
 * - axialShare: close wrap carries almost none of the pull (Zollner, Physics of the Electric Guitar, 1.2). As
 *   a free coil spring it takes under 0.001 of what its section would; 0 +- 0.002.
 * - bendingShare: the covering stiffens a string a little, far less than turns in solid contact would; as a
 *   free coil some 0.001. Of a thick wrap 0.004 is already 15 % of the core's stiffness, which is as near as
 *   measured inharmonicities agree with the core alone; 0 +- 0.004.
 */
export const PRIOR_SEAT: SeatModel = {
  massSeat: estimate(TAUT_DRAPE_SEAT, 0.025),
  caliperSeat: estimate(1.1285, 0.015),
  flattening: estimate(0.96, 0.02),
  axialShare: estimate(0, 0.002),
  bendingShare: estimate(0, 0.004),
  state: 'predicted',
};

/** The seat as bare numbers, the form in which the geometry uses it. */
export interface SeatFigures {
  readonly massSeat: number;
  readonly caliperSeat: number;
  readonly flattening: number;
  readonly axialShare: number;
  readonly bendingShare: number;
  readonly extraGap: number;
}

/** The best values of a seat model, its uncertainties left behind. */
export const seatFigures = (seat: Omit<SeatModel, 'families'>): SeatFigures => ({
  massSeat: seat.massSeat.value,
  caliperSeat: seat.caliperSeat.value,
  flattening: seat.flattening.value,
  axialShare: seat.axialShare.value,
  bendingShare: seat.bendingShare.value,
  extraGap: seat.extraGap?.value ?? 0,
});
