import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ALLOYS, tensileStrength } from '../materials/index.js';
import { estimate } from '../numeric/index.js';
import { metresFromThou, thouFromMetres } from '../units/index.js';
import { type StringBody, stringBody } from './body.js';
import type { Construction, CoreWire, SeatModel, WrapLayer } from './construction.js';
import { acrossCornersM } from './hexagon.js';
import { PRIOR_SEAT } from './seat.js';

const core = (shape: CoreWire['shape'], thou: number, changes: Partial<CoreWire> = {}): CoreWire => ({
  shape,
  sizeM: metresFromThou(thou),
  alloy: 'music-wire',
  strengthTable: 'astm-a228',
  ...changes,
});
const wrap = (thou: number): WrapLayer => ({
  wireDiameterM: metresFromThou(thou),
  alloy: 'nickel-plated-steel',
  gap: 0,
});
const wound = (shape: CoreWire['shape'], coreThou: number, wrapThou: number): Construction => ({
  kind: 'wound',
  core: core(shape, coreThou),
  layers: [wrap(wrapThou)],
});
const plain = (thou: number): Construction => ({
  kind: 'plain',
  wire: { ...core('round', thou), shape: 'round' },
});
const bodyOf = (construction: Construction, seat?: SeatModel): StringBody => {
  const body = stringBody(construction, seat);
  if (!body.ok) throw new Error(body.fault.code);
  return body.value;
};

const shapes = fc.constantFrom('round' as const, 'hex' as const);
const cores = fc.double({ min: 8, max: 24, noNaN: true });
const wraps = fc.double({ min: 3, max: 20, noNaN: true });

describe('the body of a string', () => {
  it.each([
    ['hex', 10, 8],
    ['hex', 20, 3],
    ['round', 10, 8],
    ['round', 20, 3],
  ] as const)('%s: a 26 is a %d core with two of a %d wrap (common practice, no source)', (shape, c, w) => {
    const { meanDiameterM, caliperDiameterM } = bodyOf(wound(shape, c, w));
    const flattest = c + 2 * PRIOR_SEAT.flattening.value * w;
    const widest = (shape === 'hex' ? acrossCornersM(c) : c) + 2 * w;
    for (const gauge of [26, thouFromMetres(meanDiameterM), thouFromMetres(caliperDiameterM)]) {
      expect(gauge).toBeGreaterThanOrEqual(flattest - 1e-9);
      expect(gauge).toBeLessThanOrEqual(widest + 1e-9);
    }
  });

  it('is of the mass of its wire when plain, its diameter the gauge', () => {
    const body = bodyOf(plain(17));
    const expected = ALLOYS['music-wire'].densityKgPerM3.value * (Math.PI / 4) * metresFromThou(17) ** 2;
    expect(body.linearDensityKgPerM).toBeCloseTo(expected, 15);
    expect(body).toMatchObject({ kind: 'plain', layers: [], wrapMassKgPerM: 0, coreRatio: 1 });
    expect(thouFromMetres(body.caliperDiameterM)).toBeCloseTo(17, 12);
  });

  it('at equal outside diameter is stiffer and stronger with the thicker core, more flexible with the thinner', () => {
    fc.assert(
      fc.property(shapes, fc.double({ min: 8, max: 20, noNaN: true }), (shape, c) => {
        const factor = shape === 'hex' ? PRIOR_SEAT.massSeat.value : 1;
        const wrapFor = (size: number) => (46 - factor * size) / (2 * PRIOR_SEAT.flattening.value);
        const thin = bodyOf(wound(shape, c, wrapFor(c)));
        const thick = bodyOf(wound(shape, c + 1, wrapFor(c + 1)));
        expect(thick.meanDiameterM).toBeCloseTo(thin.meanDiameterM, 12);
        expect(thick.axialStiffnessN).toBeGreaterThan(thin.axialStiffnessN);
        expect(thick.bendingStiffnessNM2).toBeGreaterThan(thin.bendingStiffnessNM2);
        expect(thick.breakingLoadN!).toBeGreaterThan(thin.breakingLoadN!);
      }),
    );
  });

  it('grows heavier with core, wrap and seat', () => {
    fc.assert(
      fc.property(shapes, cores, wraps, (shape, c, w) => {
        const mass = bodyOf(wound(shape, c, w)).linearDensityKgPerM;
        expect(bodyOf(wound(shape, c * 1.01, w)).linearDensityKgPerM).toBeGreaterThan(mass);
        expect(bodyOf(wound(shape, c, w * 1.01)).linearDensityKgPerM).toBeGreaterThan(mass);
        const wider = { ...PRIOR_SEAT, massSeat: estimate(1.15) };
        const widerMass = bodyOf(wound(shape, c, w), wider).linearDensityKgPerM;
        if (shape === 'hex') expect(widerMass).toBeGreaterThan(mass);
        else expect(widerMass).toBe(mass);
      }),
    );
  });

  it('is the sum of its core and its layers', () => {
    const double: Construction = { kind: 'wound', core: core('hex', 24), layers: [wrap(10), wrap(18)] };
    const { coreMassKgPerM, wrapMassKgPerM, layers, linearDensityKgPerM } = bodyOf(double);
    expect(layers.map((layer) => layer.massKgPerM).reduce((sum, mass) => sum + mass)).toBeCloseTo(
      wrapMassKgPerM,
      14,
    );
    expect(coreMassKgPerM + wrapMassKgPerM).toBe(linearDensityKgPerM);
  });

  it('with two layers weighs more than with the first alone, and the same whichever wrap lies inside', () => {
    const layered = (...layers: [WrapLayer] | [WrapLayer, WrapLayer]) =>
      bodyOf({ kind: 'wound', core: core('hex', 24), layers });
    const thickOutside = layered(wrap(10), wrap(18));
    const thinOutside = layered(wrap(18), wrap(10));
    expect(thickOutside.linearDensityKgPerM).toBeGreaterThan(layered(wrap(10)).linearDensityKgPerM);
    // Touching turns fill pi/4 of their ring, and both orders fill the same ring.
    expect(thickOutside.meanDiameterM).toBeCloseTo(thinOutside.meanDiameterM, 15);
    expect(thickOutside.linearDensityKgPerM).toBeCloseTo(thinOutside.linearDensityKgPerM, 14);
  });

  it('is judged by its strength table at its size, cautiously, and by the certificate before the table', () => {
    const between = metresFromThou(17);
    const cautious = tensileStrength({ table: 'astm-a228', diameterM: between, reading: 'conservative' });
    if (!cautious.ok) throw new Error(cautious.fault.code);
    expect(bodyOf(plain(17)).minimumStrengthPa).toBe(cautious.value.minimumPa);
    const certified = bodyOf({
      kind: 'plain',
      wire: { ...core('round', 17), shape: 'round', certifiedStrengthPa: 2.6e9 },
    });
    expect(certified.minimumStrengthPa).toBe(2.6e9);
    expect(certified.breakingLoadN).toBeCloseTo(2.6e9 * certified.coreAreaM2, 9);
  });

  it('has no strength, and says why, where no standard speaks for its size', () => {
    const body = bodyOf(plain(1));
    expect(body.minimumStrengthPa).toBeUndefined();
    expect(body.breakingLoadN).toBeUndefined();
    expect(body.strengthFault).toMatchObject({ code: 'strength.outside-table', table: 'astm-a228' });
  });

  it('takes stiffness from the wrap by the shares of the seat model', () => {
    const shared = { ...PRIOR_SEAT, axialShare: estimate(1), bendingShare: estimate(1) };
    const alone = bodyOf(wound('round', 10, 10));
    const helped = bodyOf(wound('round', 10, 10), shared);
    const modulus = ALLOYS['nickel-plated-steel'].youngsModulusPa.value;
    const metalM2 = alone.wrapMassKgPerM / ALLOYS['nickel-plated-steel'].densityKgPerM3.value;
    expect(helped.axialStiffnessN - alone.axialStiffnessN).toBeCloseTo(modulus * metalM2, 6);
    const ring = (Math.PI / 64) * (helped.meanDiameterM ** 4 - metresFromThou(10) ** 4);
    expect((helped.bendingStiffnessNM2 - alone.bendingStiffnessNM2) / (modulus * ring)).toBeCloseTo(1, 12);
  });

  it('reads larger in the micrometer at its largest than on average, by a hexagon only', () => {
    const hex = bodyOf(wound('hex', 18, 14));
    expect(hex.caliperDiameterM).toBeGreaterThan(hex.meanDiameterM);
    const round = bodyOf(wound('round', 18, 14));
    expect(round.caliperDiameterM).toBeCloseTo(round.meanDiameterM, 15);
  });
});
