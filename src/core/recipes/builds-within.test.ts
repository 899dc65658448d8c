import { describe, expect, it } from 'vitest';
import { estimate } from '../numeric/index.js';
import { type FamilySeat, PRIOR_SEAT, type SeatModel } from '../string/index.js';
import { recipesForGauge } from './recipes-for-gauge.js';

describe('recipes in a shop that has measured its families', () => {
  const { families: _, ...figures } = PRIOR_SEAT;
  const flat: FamilySeat = {
    ...figures,
    flattening: estimate(0.9, 0.002),
    family: { coreShape: 'hex', wrapAlloy: 'pure-nickel', wrapBand: 'middle' },
    strings: 40,
    state: 'calibrated',
  };
  const SHOP: SeatModel = { ...PRIOR_SEAT, families: [flat] };
  const coreM = 0.4064e-3;
  // Lands on a 36 if it is flattened to 0.90, and 37 micrometres beside it at the prior's 0.96.
  const wrapM = (36 * 25.4e-6 - PRIOR_SEAT.massSeat.value * coreM) / (2 * 0.9);
  const search = {
    gaugeThou: 36,
    material: 'pure-nickel',
    toleranceM: 3e-6,
    cores: [
      { wireId: 'hex 16', shape: 'hex', sizeM: coreM, alloy: 'music-wire', strengthTable: 'astm-a228' },
    ],
    wraps: [{ wireId: 'nickel', wireDiameterM: wrapM, alloy: 'pure-nickel' }],
    maxLayers: 1,
  } as const;

  it('finds the wrap that lands on the gauge as its family sits', () => {
    const found = recipesForGauge({ ...search, seat: SHOP });
    if (!found.ok) throw new Error(found.fault.code);
    expect(found.value.front.map(({ wrapWireIds }) => wrapWireIds)).toEqual([['nickel']]);
    expect(Math.abs(found.value.front[0]!.offGaugeM)).toBeLessThan(1e-9);
  });

  it('finds nothing there by the prior', () => {
    expect(recipesForGauge(search)).toMatchObject({
      ok: false,
      fault: { code: 'recipe.none-within-tolerance' },
    });
  });
});
