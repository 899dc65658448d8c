import { describe, expect, it } from 'vitest';
import { estimate } from '../numeric/index.js';
import { stringBody } from './body.js';
import type { Construction, FamilySeat, SeatModel } from './construction.js';
import { stringEstimates } from './estimates.js';
import { PRIOR_SEAT } from './seat.js';
import { seatFamilyOf, seatFor, seatOnMachine } from './seat-family.js';

const string = (wrapM: number, shape: 'hex' | 'round' = 'hex'): Construction => ({
  kind: 'wound',
  core: { shape, sizeM: 0.4e-3, alloy: 'music-wire', strengthTable: 'astm-a228' },
  layers: [{ wireDiameterM: wrapM, alloy: 'pure-nickel', gap: 0 }],
});

const { families: _, ...figures } = PRIOR_SEAT;
const family = seatFamilyOf(string(0.3e-3))!;
const learned: FamilySeat = {
  ...figures,
  flattening: estimate(0.9, 0.002),
  state: 'calibrated',
  family,
  strings: 30,
};
const onOne: FamilySeat = { ...learned, flattening: estimate(0.94, 0.002), machineId: 'one' };
const SHOP: SeatModel = { ...PRIOR_SEAT, families: [learned, onOne] };

const diameterM = (construction: Construction, seat: SeatModel): number => {
  const body = stringBody(construction, seat);
  if (!body.ok) throw new Error(body.fault.code);
  return body.value.meanDiameterM;
};

describe('a seat model by families', () => {
  it('stands for strings of its family, and leaves others to the rest', () => {
    expect(seatFor(string(0.3e-3), SHOP).flattening.value).toBe(0.9);
    expect(seatFor(string(0.1e-3), SHOP).flattening.value).toBe(0.96);
    expect(seatFor(string(0.3e-3, 'round'), SHOP).flattening.value).toBe(0.96);
  });

  it('gives the string that its figures make: 2 k_f w of wrap on the seat', () => {
    const seatM = PRIOR_SEAT.massSeat.value * 0.4e-3;
    expect(diameterM(string(0.3e-3), SHOP)).toBeCloseTo(seatM + 2 * 0.9 * 0.3e-3, 12);
    expect(diameterM(string(0.3e-3), seatOnMachine(SHOP, 'one'))).toBeCloseTo(seatM + 2 * 0.94 * 0.3e-3, 12);
  });

  it('goes by the family as any machine winds it where this one was not measured', () => {
    expect(diameterM(string(0.3e-3), seatOnMachine(SHOP, 'two'))).toBe(diameterM(string(0.3e-3), SHOP));
    expect(seatOnMachine(PRIOR_SEAT, 'one')).toBe(PRIOR_SEAT);
  });

  it('weighs less by the share of the wrap that its turns stand further apart', () => {
    const wide: SeatModel = { ...PRIOR_SEAT, extraGap: estimate(0.02) };
    const gapped = {
      ...string(0.3e-3),
      layers: [{ wireDiameterM: 0.3e-3, alloy: 'pure-nickel', gap: 0.02 }],
    };
    const [byShop, byRecipe] = [
      stringBody(string(0.3e-3), wide),
      stringBody(gapped as unknown as Construction, PRIOR_SEAT),
    ];
    if (!byShop.ok || !byRecipe.ok) throw new Error('both can be made');
    expect(byShop.value.linearDensityKgPerM).toBeCloseTo(byRecipe.value.linearDensityKgPerM, 15);
  });
});

describe('figures learned together', () => {
  const SOUNDING = { speakingLengthM: 0.65, frequencyHz: 110 };
  const uOf = (seat: SeatModel): number => {
    const estimates = stringEstimates(string(0.3e-3), SOUNDING, seat);
    if (!estimates.ok) throw new Error(estimates.fault.code);
    return estimates.value.meanDiameterM.u;
  };
  const withCorrelation = (correlation: number): SeatModel => ({
    ...PRIOR_SEAT,
    correlations: [0, correlation, 0, 0, 0, 0, 0, 0, 0, 0],
  });

  it('err together: u² = (s u_e)² + (2 w u_k)² + 2 r (s u_e) (2 w u_k), beside the wires', () => {
    const bySeat = 0.4e-3 * PRIOR_SEAT.massSeat.u;
    const byWrap = 2 * 0.3e-3 * PRIOR_SEAT.flattening.u;
    const expected = (r: number) => uOf(PRIOR_SEAT) ** 2 + 2 * r * bySeat * byWrap;
    for (const r of [-0.9, 0, 0.5]) expect(uOf(withCorrelation(r)) ** 2 / expected(r)).toBeCloseTo(1, 6);
  });
});
