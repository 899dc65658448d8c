/** A layer of wrap as it lies on the string, lengths in m. */
export interface WoundLayer {
  /** Advance of the wrap along the string in one turn. */
  readonly wrapPitchM: number;
  /** The smallest pitch there is: turns touch. */
  readonly touchingPitchM: number;
  /** Angle of the wrap against a plane square to the string. */
  readonly leadAngleRad: number;
  /** Metres of wrap wire in one metre of string. */
  readonly wireLengthPerLength: number;
  /** D_m: diameter of the circle that the wrap's centre line follows, seen along the string. */
  readonly windingDiameterM: number;
  /** How far one turn stands off its seat. */
  readonly heightM: number;
  readonly massKgPerM: number;
}

/** What a layer is wound from: a layer of wrap with its figures looked up. */
export interface WrapPiece {
  readonly wireDiameterM: number;
  readonly rolledThicknessM: number | undefined;
  readonly gap: number;
  readonly densityKgPerM3: number;
  readonly youngsModulusPa: number;
}

/**
 * Advance per turn at which neighbouring turns just touch: p_min = w / sqrt(1 - (w / (pi D_m))²), m. NOT w:
 * the wrap runs at a lead angle, turns touch when p cos(alpha) = w. NaN where w >= pi D_m: no such winding.
 */
export function touchingPitchM(wrapWidthM: number, windingDiameterM: number): number {
  const sineOfLead = wrapWidthM / (Math.PI * windingDiameterM);
  return wrapWidthM / Math.sqrt(1 - sineOfLead * sineOfLead);
}

/** Metres of wire in a metre of string: lambda = sqrt((pi D_m)² + p²) / p. At the touching pitch it is pi D_m / w. */
export const wireLengthPerLength = (windingDiameterM: number, wrapPitchM: number): number => {
  const circumference = Math.PI * windingDiameterM;
  return Math.sqrt(circumference * circumference + wrapPitchM * wrapPitchM) / wrapPitchM;
};

/**
 * A layer wound on its seat, p = p_min (1 + gap). Mass is wire area times lambda (Pappus: exact for a
 * section square to the helix). A round wire flattened on the core keeps its area and its width w, since
 * neighbours bar the way: it fills the grooves. Rolled wire has the area of the wire it came from, width
 * area / thickness (small reductions), and is not flattened a second time.
 */
export function layOnSeat(wrap: WrapPiece, seatDiameterM: number, flattening: number): WoundLayer {
  const { wireDiameterM, rolledThicknessM } = wrap;
  const wireAreaM2 = (Math.PI / 4) * wireDiameterM * wireDiameterM;
  const heightM = rolledThicknessM ?? flattening * wireDiameterM;
  const windingDiameterM = seatDiameterM + heightM;
  const touching = touchingPitchM(wrapWidthM(wireDiameterM, rolledThicknessM), windingDiameterM);
  const wrapPitchM = touching * (1 + wrap.gap);
  const lambda = wireLengthPerLength(windingDiameterM, wrapPitchM);
  return {
    wrapPitchM,
    touchingPitchM: touching,
    leadAngleRad: Math.atan2(wrapPitchM, Math.PI * windingDiameterM),
    wireLengthPerLength: lambda,
    windingDiameterM,
    heightM,
    massKgPerM: wrap.densityKgPerM3 * wireAreaM2 * lambda,
  };
}

/** How much of the string's length one turn covers, square to the wire: w, or area / thickness when rolled flat. */
export const wrapWidthM = (wireDiameterM: number, rolledThicknessM?: number): number =>
  rolledThicknessM === undefined
    ? wireDiameterM
    : ((Math.PI / 4) * wireDiameterM * wireDiameterM) / rolledThicknessM;

/**
 * Mass per length of one touching layer of round wire from the outside diameter itself, kg/m:
 * mu = rho pi² w (OD - w) / 4, OD the micrometer's reading averaged over one rotation. Exact whatever shape
 * the wire is seated on (Cauchy: perimeter = pi times mean width), so a measured OD needs no seat model.
 */
export const wrapMassFromDiameterKgPerM = (wrap: {
  readonly wireDiameterM: number;
  readonly densityKgPerM3: number;
  readonly meanDiameterM: number;
}): number =>
  (wrap.densityKgPerM3 * Math.PI ** 2 * wrap.wireDiameterM * (wrap.meanDiameterM - wrap.wireDiameterM)) / 4;
