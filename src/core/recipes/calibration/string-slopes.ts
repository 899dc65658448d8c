import { invariant } from '../../foundation/index.js';
import {
  bodyOf,
  type Construction,
  type CorePiece,
  corePiece,
  type SeatFigures,
  type StringBody,
  type WrapPiece,
  wrapPiece,
} from '../../string/index.js';
import { QUANTITIES, SEAT_UNKNOWNS, UNKNOWNS } from './seat-unknowns.js';

/** What is expected of a string at given unknowns, and how it goes with each of them, to first order. */
export interface StringSlopes {
  /** In the order of `QUANTITIES`: m, m, kg/m, N. */
  readonly expected: readonly number[];
  /** For each quantity its slopes by `SEAT_UNKNOWNS`; unit weight and stiffness as shares of what is expected. */
  readonly byUnknown: readonly (readonly number[])[];
  /** For each quantity its slopes by the sizes of the wires, core first; likewise as shares. Per m. */
  readonly byWire: readonly (readonly number[])[];
  /** How each quantity goes with one metre more of diameter under the wrap; likewise as shares. */
  readonly byDiameter: readonly number[];
}

/** Steps over which slopes are taken: small against any real deviation, large against rounding. */
const UNKNOWN_STEP = 1e-3;
const SIZE_STEP = 1e-3;

/** Slopes of a construction about unknowns given in the order of `SEAT_UNKNOWNS`. Throws where no string can be made so. */
export function stringSlopes(construction: Construction, about: readonly number[]): StringSlopes {
  const pieces = piecesOf(construction);
  const expected = quantitiesOf(bodyOf(pieces.core, pieces.wraps, figuresAt(about)));
  invariant(expected.every(Number.isFinite), 'a measured string could not be made');
  const scale = [1, 1, expected[2]!, expected[3]!];
  const slope = (above: readonly number[], below: readonly number[], step: number): number[] =>
    above.map((value, quantity) => (value - below[quantity]!) / (2 * step * scale[quantity]!));
  const unknownColumns = SEAT_UNKNOWNS.map((name, index) => {
    if (name === 'tensionEffect' || pieces.wraps.length === 0) return QUANTITIES.map(() => 0);
    const at = (step: number) =>
      quantitiesOf(bodyOf(pieces.core, pieces.wraps, figuresAt(about.with(index, about[index]! + step))));
    return slope(at(UNKNOWN_STEP), at(-UNKNOWN_STEP), UNKNOWN_STEP);
  });
  const wireColumns = [pieces.core.sizeM, ...pieces.wraps.map((wrap) => wrap.wireDiameterM)].map(
    (sizeM, wire) => {
      const step = SIZE_STEP * sizeM;
      const at = (sign: number) => {
        const grown = withSize(pieces, wire, sizeM + sign * step);
        return quantitiesOf(bodyOf(grown.core, grown.wraps, figuresAt(about)));
      };
      return slope(at(1), at(-1), step);
    },
  );
  return {
    expected,
    byUnknown: transposed(unknownColumns),
    byWire: transposed(wireColumns),
    byDiameter: byDiameterOf(bodyOf(pieces.core, pieces.wraps, figuresAt(about)), scale[2]!),
  };
}

/** The slopes of one quantity where wrap tension was so many times the sheet's: flattening moves with its logarithm. */
export function slopesUnderTension(byUnknown: readonly number[], tensionRatio = 1): readonly number[] {
  if (tensionRatio === 1) return byUnknown;
  return byUnknown.with(
    UNKNOWNS - 1,
    byUnknown[SEAT_UNKNOWNS.indexOf('flattening')]! * Math.log(tensionRatio),
  );
}

interface Pieces {
  readonly core: CorePiece;
  readonly wraps: readonly WrapPiece[];
}

const piecesOf = (construction: Construction): Pieces =>
  construction.kind === 'plain'
    ? { core: corePiece(construction.wire), wraps: [] }
    : { core: corePiece(construction.core), wraps: construction.layers.map(wrapPiece) };

function withSize({ core, wraps }: Pieces, wire: number, sizeM: number): Pieces {
  if (wire === 0) return { core: { ...core, sizeM }, wraps };
  const wrap = wraps[wire - 1]!;
  const { rolledThicknessM } = wrap;
  // Rolled wire that came thicker is thicker still when rolled.
  const rolled = rolledThicknessM === undefined ? undefined : (rolledThicknessM * sizeM) / wrap.wireDiameterM;
  return { core, wraps: wraps.with(wire - 1, { ...wrap, wireDiameterM: sizeM, rolledThicknessM: rolled }) };
}

const figuresAt = (about: readonly number[]): SeatFigures => ({
  massSeat: about[0]!,
  caliperSeat: about[1]!,
  flattening: about[2]!,
  extraGap: about[3]!,
  axialShare: about[4]!,
  bendingShare: 0,
});

const quantitiesOf = (body: StringBody): readonly number[] => [
  body.meanDiameterM,
  body.caliperDiameterM,
  body.linearDensityKgPerM,
  body.axialStiffnessN,
];

/**
 * More diameter under the wrap is more wire in every turn: dmu/dD = sum mu_layer / D_m, the measured-diameter rule
 * mu = rho pi² w (OD - w) / 4 in other words (Cauchy; exact for touching turns).
 */
function byDiameterOf(body: StringBody, expectedKgPerM: number): readonly number[] {
  if (body.layers.length === 0) return [0, 0, 0, 0];
  const perM = body.layers.reduce((sum, layer) => sum + layer.massKgPerM / layer.windingDiameterM, 0);
  return [1, 1, perM / expectedKgPerM, 0];
}

const transposed = (columns: readonly (readonly number[])[]): readonly (readonly number[])[] =>
  QUANTITIES.map((_, quantity) => columns.map((column) => column[quantity]!));
