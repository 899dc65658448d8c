import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BENCH, bronze36, GEAR, PLAIN_12, TWO_LAYERS } from '../../../test/fixtures/winders.js';
import { changeOver } from './change-over.js';
import { traitsOf } from './set-up-traits.js';

const BRONZE = traitsOf(bronze36('hex'), 1);

describe('changing a machine over', () => {
  it('costs nothing where the next run is like the last', () => {
    expect(changeOver(GEAR, BRONZE, { ...BRONZE })).toEqual({ minutes: 0, scrapStrings: 0, changes: [] });
  });

  it('adds up what differs on top of the base', () => {
    // Base 10 + core 8 minutes; base 1 + core 2 strings.
    expect(changeOver(GEAR, BRONZE, { ...BRONZE, coreWireId: 'core-hex-18' })).toEqual({
      minutes: 18,
      scrapStrings: 3,
      changes: ['core'],
    });
    // Base 10 + core 8 + wrap 6 + alloy 4 minutes; base 1 + 2 + 3 + 1 strings.
    expect(changeOver(GEAR, BRONZE, traitsOf(TWO_LAYERS, 1))).toEqual({
      minutes: 28,
      scrapStrings: 7,
      changes: ['core', 'wrap', 'alloy'],
    });
    expect(changeOver(GEAR, BRONZE, { ...BRONZE, lengthM: 1.1 })).toEqual({
      minutes: 12,
      scrapStrings: 1,
      changes: ['length'],
    });
  });

  it('sets everything up on a machine on which nothing stands', () => {
    expect(changeOver(GEAR, undefined, BRONZE)).toEqual({
      minutes: 30,
      scrapStrings: 7,
      changes: ['core', 'wrap', 'alloy', 'length'],
    });
  });

  it('knows no wrap on a bench', () => {
    const twelve = traitsOf(PLAIN_12, 1);
    expect(changeOver(BENCH, undefined, twelve).changes).toEqual(['core', 'length']);
    expect(changeOver(BENCH, { ...twelve, wrapAlloy: 'other' }, twelve).changes).toEqual([]);
  });

  it('takes two layers of the same wires in another order for a change of wrap', () => {
    const two = traitsOf(TWO_LAYERS, 1);
    const swapped = { ...two, wrapWireIds: [...two.wrapWireIds].reverse() };
    expect(changeOver(GEAR, swapped, two).changes).toEqual(['wrap']);
  });

  it('never takes longer than setting up from nothing', () => {
    const traits = fc.record({
      coreWireId: fc.constantFrom('a', 'b'),
      wrapWireIds: fc.constantFrom(['x'], ['y'], ['x', 'y']),
      wrapAlloy: fc.constantFrom('p', 'q'),
      lengthM: fc.constantFrom(1, 1.1),
    });
    fc.assert(
      fc.property(traits, traits, (from, to) => {
        const cold = changeOver(GEAR, undefined, to);
        const warm = changeOver(GEAR, from, to);
        expect(warm.minutes).toBeLessThanOrEqual(cold.minutes);
        expect(warm.scrapStrings).toBeLessThanOrEqual(cold.scrapStrings);
      }),
    );
  });
});
