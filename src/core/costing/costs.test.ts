import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addCosts,
  type CostParts,
  NO_COSTS,
  settle,
  timesCosts,
  type UnsettledCosts,
  unsettledTotal,
} from './costs.js';

const minor = fc.double({ min: 0, max: 1e6, noNaN: true });

const unsettled: fc.Arbitrary<UnsettledCosts> = fc
  .record({
    wires: fc.uniqueArray(fc.record({ wireId: fc.constantFrom('a', 'b', 'c'), minor }), {
      selector: ({ wireId }) => wireId,
    }),
    endsMinor: minor,
    packMinor: minor,
    labourMinor: minor,
    overheadMinor: minor,
    scrapMinor: minor,
  })
  .map(({ wires, ...parts }) => ({
    ...parts,
    wireMinor: wires.reduce((sum, wire) => sum + wire.minor, 0),
    byWire: wires,
  }));

const partsOf = (costs: CostParts): readonly number[] => [
  costs.wireMinor,
  costs.endsMinor,
  costs.packMinor,
  costs.labourMinor,
  costs.overheadMinor,
  costs.scrapMinor,
];

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

describe('money made whole', () => {
  it('has parts that sum to the total, and wires that sum to the wire part', () => {
    fc.assert(
      fc.property(unsettled, (costs) => {
        const settled = settle(costs);
        expect(sum(partsOf(settled))).toBe(settled.totalMinor);
        if (settled.byWire.length > 0)
          expect(sum(settled.byWire.map((wire) => wire.minor))).toBe(settled.wireMinor);
      }),
    );
  });

  it('is nowhere further than a whole minor unit from what it was', () => {
    fc.assert(
      fc.property(unsettled, (costs) => {
        const settled = settle(costs);
        expect(Math.abs(settled.totalMinor - unsettledTotal(costs))).toBeLessThanOrEqual(0.5 + 1e-6);
        const exact = partsOf(costs);
        for (const [index, part] of partsOf(settled).entries()) {
          expect(Number.isInteger(part)).toBe(true);
          expect(Math.abs(part - exact[index]!)).toBeLessThan(1.5);
        }
      }),
    );
  });

  it('rounds a half to even', () => {
    expect(settle({ ...NO_COSTS, endsMinor: 2.5 }).totalMinor).toBe(2);
    expect(settle({ ...NO_COSTS, endsMinor: 3.5 }).totalMinor).toBe(4);
  });

  it('gives the unit left over to the part that lost most by rounding down', () => {
    const costs = { ...NO_COSTS, endsMinor: 1.4, labourMinor: 1.3, overheadMinor: 0.3 };
    expect(settle(costs)).toMatchObject({ totalMinor: 3, endsMinor: 2, labourMinor: 1, overheadMinor: 0 });
  });
});

describe('adding costs up', () => {
  it('loses nothing: the whole is the sum of the parts, wire by wire', () => {
    fc.assert(
      fc.property(fc.array(unsettled, { maxLength: 6 }), (all) => {
        const together = addCosts(all);
        expect(unsettledTotal(together)).toBeCloseTo(sum(all.map(unsettledTotal)), 5);
        expect(sum(together.byWire.map((wire) => wire.minor))).toBeCloseTo(together.wireMinor, 5);
        expect(new Set(together.byWire.map(({ wireId }) => wireId)).size).toBe(together.byWire.length);
      }),
    );
  });

  it('makes of many what adding one many times makes', () => {
    fc.assert(
      fc.property(unsettled, fc.integer({ min: 1, max: 30 }), (costs, count) => {
        const added = unsettledTotal(addCosts(Array.from({ length: count }, () => costs)));
        expect(unsettledTotal(timesCosts(costs, count))).toBeCloseTo(added, 5);
      }),
    );
  });
});
