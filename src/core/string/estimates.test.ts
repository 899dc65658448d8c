import { describe, expect, it } from 'vitest';
import { ALLOYS } from '../materials/index.js';
import { estimate } from '../numeric/index.js';
import { metresFromInches, metresFromThou } from '../units/index.js';
import { stringBody } from './body.js';
import type { Construction, SeatModel, WoundConstruction, WrapLayer } from './construction.js';
import { stringEstimates } from './estimates.js';
import { feel } from './feel.js';
import { PRIOR_SEAT } from './seat.js';
import { stretch } from './stretched.js';
import { densityOf } from './wire-uncertainty.js';

const SOUNDING = { speakingLengthM: 0.648, frequencyHz: 82.407 };
const WRAP: WrapLayer = { wireDiameterM: metresFromThou(14), alloy: 'nickel-plated-steel', gap: 0 };
const WOUND: WoundConstruction = {
  kind: 'wound',
  core: { shape: 'hex', sizeM: metresFromThou(18), alloy: 'music-wire', strengthTable: 'astm-a228' },
  layers: [WRAP],
};
const PLAIN: Construction = {
  kind: 'plain',
  wire: { shape: 'round', sizeM: metresFromThou(10), alloy: 'music-wire', strengthTable: 'astm-a228' },
};
const estimates = (construction: Construction, seat: SeatModel = PRIOR_SEAT) => {
  const found = stringEstimates(construction, SOUNDING, seat);
  if (!found.ok) throw new Error(found.fault.code);
  return found.value;
};

describe('the figures of a string with their uncertainties', () => {
  it('are those of the best values', () => {
    const body = stringBody(WOUND);
    if (!body.ok) throw new Error(body.fault.code);
    const string = stretch(body.value, SOUNDING);
    const found = estimates(WOUND);
    expect(found.linearDensityKgPerM.value).toBe(body.value.linearDensityKgPerM);
    expect(found.tensionN.value).toBe(string.tensionN);
    expect(found.stressShare!.value).toBeCloseTo(string.stressShare!, 12);
    expect(found.inharmonicityB.value).toBe(string.inharmonicityB);
    expect(found.sideForceN.value).toBe(feel(string).sideForceN);
    expect(found.bend!.forceN.value).toBeCloseTo(feel(string).bend!.forceN, 12);
  });

  it('of plain wire come from its tolerance and density by hand: u²(mu)/mu² = (2 u(d)/d)² + (u(rho)/rho)²', () => {
    const { linearDensityKgPerM, tensionN } = estimates(PLAIN);
    // ASTM A228: 0.010 in may be off by 0.0002 in.
    const size = (2 * metresFromInches(0.0002)) / Math.sqrt(3) / metresFromThou(10);
    const density = densityOf('music-wire').u / ALLOYS['music-wire'].densityKgPerM3.value;
    const byHand = Math.hypot(size, density);
    expect(linearDensityKgPerM.u / linearDensityKgPerM.value / byHand).toBeCloseTo(1, 3);
    expect(tensionN.u / tensionN.value / byHand).toBeCloseTo(1, 3);
  });

  it('know that size cancels where it cancels: the stress of plain wire is as sure as its density', () => {
    const { stressPa } = estimates(PLAIN);
    const density = densityOf('music-wire').u / ALLOYS['music-wire'].densityKgPerM3.value;
    expect(stressPa.u / stressPa.value / density).toBeCloseTo(1, 6);
  });

  it('of a hex-core string owe most of their doubt to the seat', () => {
    const sure = { ...PRIOR_SEAT, massSeat: estimate(PRIOR_SEAT.massSeat.value, 0) };
    const doubtful = { ...PRIOR_SEAT, massSeat: estimate(PRIOR_SEAT.massSeat.value, 0.05) };
    const u = (seat: SeatModel) => estimates(WOUND, seat).linearDensityKgPerM.u;
    const ofSeat = (seat: SeatModel) => Math.sqrt(u(seat) ** 2 - u(sure) ** 2);
    expect(ofSeat(doubtful) / ofSeat(PRIOR_SEAT)).toBeCloseTo(2, 2);
    expect(ofSeat(PRIOR_SEAT)).toBeGreaterThan(u(sure) / 2);
  });

  it('let one wire err once where it is wound twice', () => {
    const twice = (second: WrapLayer) => estimates({ ...WOUND, layers: [WRAP, second] }).meanDiameterM.u;
    const otherWire = twice({ ...WRAP, wireDiameterM: WRAP.wireDiameterM * (1 + 1e-9) });
    expect(twice(WRAP)).toBeGreaterThan(otherWire);
  });

  it('fail as the string itself fails', () => {
    const found = stringEstimates({ ...WOUND, layers: [{ ...WRAP, gap: -1 }] }, SOUNDING);
    expect(found).toMatchObject({ ok: false, fault: { code: 'construction.gap-negative' } });
  });
});
