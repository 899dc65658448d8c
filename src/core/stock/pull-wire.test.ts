import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { pullWire, type SpoolPull } from './pull-wire.js';
import type { Spool } from './stock.js';

const spool = (id: string, lot: string, netKg: number, wireId = 'core-16'): Spool => ({
  id,
  wireId,
  lot,
  netKg,
});

/** Pull of `kg` of one wire. */
const pull = (kg: number, spools: readonly Spool[]): SpoolPull => {
  const [only] = pullWire({ needs: [{ wireId: 'core-16', kg, m: kg * 100 }], spools });
  if (!only) throw new Error('one need gives one pull');
  return only;
};
const idsAndKg = (result: SpoolPull) => result.spools.map(({ spoolId, takeKg }) => [spoolId, takeKg]);

describe('choosing spools', () => {
  it('uses an older lot up before it opens a newer one', () => {
    const result = pull(3, [spool('new', '2026-02', 10), spool('old', '2026-01', 2)]);
    expect(idsAndKg(result)).toEqual([
      ['old', 2],
      ['new', 1],
    ]);
    expect(result.spools.map((take) => take.leavesKg)).toEqual([0, 9]);
  });

  it('finishes the lightest spool of a lot that is enough alone and leaves full ones full', () => {
    expect(
      idsAndKg(pull(2, [spool('full', 'x', 10), spool('opened', 'x', 3), spool('rest', 'x', 1)])),
    ).toEqual([['opened', 2]]);
  });

  it('carries few spools where none is enough alone', () => {
    expect(idsAndKg(pull(6, [spool('a', 'x', 1), spool('b', 'x', 5), spool('c', 'x', 4)]))).toEqual([
      ['b', 5],
      ['a', 1],
    ]);
  });

  it('says how much no spool can give', () => {
    const result = pull(5, [spool('a', 'x', 2), spool('empty', 'w', 0)]);
    expect(idsAndKg(result)).toEqual([['a', 2]]);
    expect(result.shortKg).toBe(3);
  });

  it('adds up the needs of one wire and keeps wires apart', () => {
    const result = pullWire({
      needs: [
        { wireId: 'wrap-8', kg: 1, m: 100 },
        { wireId: 'core-16', kg: 2, m: 300 },
        { wireId: 'wrap-8', kg: 0.5, m: 50 },
      ],
      spools: [spool('c', 'x', 9), spool('w', 'x', 9, 'wrap-8')],
    });
    expect(result.map(({ wireId, neededKg, neededM }) => [wireId, neededKg, neededM])).toEqual([
      ['wrap-8', 1.5, 150],
      ['core-16', 2, 300],
    ]);
    expect(result.map((one) => one.spools[0]?.spoolId)).toEqual(['w', 'c']);
  });

  it('refuses a weight below nothing', () => {
    expect(() => pull(-1, [])).toThrow(/weight/);
  });
});

// Weights in whole quarter kilograms add up without rounding: the laws can be checked exactly.
const quarters = fc.integer({ min: 0, max: 24 }).map((n) => n / 4);
const racks = fc
  .array(fc.tuple(fc.constantFrom('x', 'y', 'z'), quarters), { maxLength: 8 })
  .map((rows) => rows.map(([lot, kg], i) => spool(`spool-${i}`, lot, kg)));

describe('laws of the wire pull', () => {
  it('what is taken and what is short make the need, what is taken and what is left make the spool', () => {
    fc.assert(
      fc.property(quarters, racks, (kg, spools) => {
        const result = pull(kg, spools);
        const taken = result.spools.reduce((sum, take) => sum + take.takeKg, 0);
        expect(taken + result.shortKg).toBe(kg);
        for (const take of result.spools) {
          expect(take.takeKg + take.leavesKg).toBe(spools.find((one) => one.id === take.spoolId)?.netKg);
          expect(take.takeKg).toBeGreaterThan(0);
          expect(take.leavesKg).toBeGreaterThanOrEqual(0);
        }
        expect(new Set(result.spools.map((take) => take.spoolId)).size).toBe(result.spools.length);
        expect(result.shortKg).toBe(Math.max(0, kg - spools.reduce((sum, one) => sum + one.netKg, 0)));
      }),
    );
  });

  it('no newer lot is touched while an older one has wire left', () => {
    fc.assert(
      fc.property(quarters, racks, (kg, spools) => {
        const result = pull(kg, spools);
        const newest = result.spools
          .map((take) => take.lot)
          .sort()
          .at(-1);
        const taken = (id: string) => result.spools.find((take) => take.spoolId === id)?.takeKg ?? 0;
        for (const one of spools.filter((candidate) => newest !== undefined && candidate.lot < newest))
          expect(taken(one.id)).toBe(one.netKg);
      }),
    );
  });

  it('of one lot no smaller choice of spools would have been enough (all choices tried)', () => {
    const oneLot = racks.map((spools) => spools.map((one) => ({ ...one, lot: 'x' })));
    fc.assert(
      fc.property(quarters, oneLot, (kg, spools) => {
        const result = pull(kg, spools);
        fc.pre(result.shortKg === 0);
        let fewest = Number.POSITIVE_INFINITY;
        for (let choice = 0; choice < 2 ** spools.length; choice++) {
          const chosen = spools.filter((_, i) => choice & (1 << i));
          if (chosen.reduce((sum, one) => sum + one.netKg, 0) >= kg) fewest = Math.min(fewest, chosen.length);
        }
        expect(result.spools.length).toBe(fewest);
      }),
    );
  });
});
