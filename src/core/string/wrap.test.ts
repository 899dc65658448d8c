import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { hexagonPerimeterM } from './hexagon.js';
import { TAUT_DRAPE_SEAT } from './seat.js';
import {
  layOnSeat,
  touchingPitchM,
  type WrapPiece,
  wireLengthPerLength,
  wrapMassFromDiameterKgPerM,
} from './wrap.js';

const STEEL = 7850;
const wrap = (wireDiameterM: number, changes: Partial<WrapPiece> = {}): WrapPiece => ({
  wireDiameterM,
  rolledThicknessM: undefined,
  gap: 0,
  densityKgPerM3: STEEL,
  youngsModulusPa: 206e9,
  ...changes,
});

const seats = fc.double({ min: 1e-4, max: 3e-3, noNaN: true });
const wires = fc.double({ min: 3e-5, max: 1.5e-3, noNaN: true });
const gaps = fc.double({ min: 0, max: 0.2, noNaN: true });

describe('a layer of wrap', () => {
  it('in touching turns takes exactly pi D_m / w metres of wire a metre, and pi/4 of a solid ring in mass', () => {
    fc.assert(
      fc.property(seats, wires, (seat, w) => {
        const layer = layOnSeat(wrap(w), seat, 1);
        const lambda = (Math.PI * layer.windingDiameterM) / w;
        expect(Math.abs(layer.wireLengthPerLength / lambda - 1)).toBeLessThan(1e-12);
        const ring = (STEEL * Math.PI * ((seat + 2 * w) ** 2 - seat ** 2)) / 4;
        expect(layer.massKgPerM / ((Math.PI / 4) * ring)).toBeCloseTo(1, 12);
      }),
    );
  });

  it('touches where the pitch foreshortened by the lead angle is the wire: p cos(alpha) = w', () => {
    fc.assert(
      fc.property(seats, wires, (seat, w) => {
        const { wrapPitchM, leadAngleRad, touchingPitchM: least } = layOnSeat(wrap(w), seat, 1);
        expect((wrapPitchM * Math.cos(leadAngleRad)) / w).toBeCloseTo(1, 12);
        expect(least).toBeGreaterThan(w);
      }),
    );
  });

  it('opens by the gap asked for, and weighs less the wider it opens', () => {
    fc.assert(
      fc.property(seats, wires, gaps, (seat, w, gap) => {
        const touching = layOnSeat(wrap(w), seat, 0.96);
        const open = layOnSeat(wrap(w, { gap }), seat, 0.96);
        expect(open.wrapPitchM / touching.touchingPitchM).toBeCloseTo(1 + gap, 12);
        expect(open.massKgPerM).toBeLessThanOrEqual(touching.massKgPerM);
      }),
    );
  });

  it('weighs more on a wider seat and of thicker wire', () => {
    fc.assert(
      fc.property(seats, wires, gaps, (seat, w, gap) => {
        const mass = layOnSeat(wrap(w, { gap }), seat, 0.96).massKgPerM;
        expect(layOnSeat(wrap(w, { gap }), seat * 1.01, 0.96).massKgPerM).toBeGreaterThan(mass);
        expect(layOnSeat(wrap(w * 1.01, { gap }), seat, 0.96).massKgPerM).toBeGreaterThan(mass);
      }),
    );
  });

  it('weighed by its mean diameter needs no seat: draped on a hexagon or round a rod (Cauchy)', () => {
    const s = 0.0004;
    const w = 0.00025;
    const draped = layOnSeat(wrap(w), TAUT_DRAPE_SEAT * s, 1).massKgPerM;
    // Mean width of a convex shape is its perimeter over pi; a wire's width all round adds 2 w.
    const meanDiameterM = hexagonPerimeterM(s) / Math.PI + 2 * w;
    const byDiameter = wrapMassFromDiameterKgPerM({ wireDiameterM: w, densityKgPerM3: STEEL, meanDiameterM });
    expect(byDiameter / draped).toBeCloseTo(1, 13);
  });

  it('rolled flat keeps the area of its wire: turns are wider, so fewer, and the metal is more nearly solid', () => {
    const w = 0.0003;
    const t = 0.00025;
    const layer = layOnSeat(wrap(w, { rolledThicknessM: t }), 0.0005, 0.96);
    const width = (Math.PI * w * w) / 4 / t;
    expect(layer.heightM).toBe(t);
    expect(layer.wireLengthPerLength).toBeCloseTo((Math.PI * (0.0005 + t)) / width, 12);
    // A strip of width x thickness laid without a gap fills its ring: mass = rho pi D_m t.
    expect(layer.massKgPerM).toBeCloseTo(STEEL * Math.PI * (0.0005 + t) * t, 12);
  });

  it('has no touching pitch where the wire is as wide as the way round', () => {
    expect(touchingPitchM(Math.PI * 1e-3, 1e-3)).toBe(Number.POSITIVE_INFINITY);
    expect(touchingPitchM(1.01 * Math.PI * 1e-3, 1e-3)).toBeNaN();
  });

  it('wound ever more steeply comes down to a wire laid straight', () => {
    expect(wireLengthPerLength(1e-3, 10)).toBeCloseTo(1, 7);
  });
});
