import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { reserveWire } from './reserve-wire.js';
import type { Spool } from './stock.js';

const spool = (id: string, netKg: number, { lot = 'x', wireId = 'core 16' } = {}): Spool => ({
  id,
  wireId,
  lot,
  netKg,
});
const kgOf = (spools: readonly Spool[]) => Object.fromEntries(spools.map(({ id, netKg }) => [id, netKg]));

describe('wire that runs under way still need', () => {
  it('comes off the spool on their machine, though another would be pulled first', () => {
    const rack = [spool('old', 2, { lot: 'a' }), spool('mounted', 3, { lot: 'b' })];
    const left = reserveWire(rack, [{ wireId: 'core 16', kg: 1, spoolIds: ['mounted'] }]);
    expect(kgOf(left)).toEqual({ old: 2, mounted: 2 });
  });

  it('comes off the oldest lot where nothing is mounted yet, or too little', () => {
    const rack = [
      spool('new', 5, { lot: 'b' }),
      spool('old', 2, { lot: 'a' }),
      spool('mounted', 1, { lot: 'c' }),
    ];
    const left = reserveWire(rack, [
      { wireId: 'core 16', kg: 1.5, spoolIds: ['mounted'] },
      { wireId: 'core 16', kg: 2, spoolIds: [] },
    ]);
    expect(kgOf(left)).toEqual({ new: 4.5, old: 0, mounted: 0 });
  });

  it('leaves a mounted spool to its own run, whoever asks first', () => {
    const rack = [spool('mounted', 1), spool('other', 1, { lot: 'y' })];
    const left = reserveWire(rack, [
      { wireId: 'core 16', kg: 1, spoolIds: [] },
      { wireId: 'core 16', kg: 1, spoolIds: ['mounted'] },
    ]);
    expect(kgOf(left)).toEqual({ mounted: 0, other: 0 });
  });

  it('touches no other wire, not even on a spool that is named', () => {
    const rack = [spool('wrap', 4, { wireId: 'bronze 10' }), spool('core', 4)];
    expect(kgOf(reserveWire(rack, [{ wireId: 'core 16', kg: 9, spoolIds: ['wrap'] }]))).toEqual({
      wrap: 4,
      core: 0,
    });
  });

  it('is what is gone afterwards, or all there was, and no spool is below nothing', () => {
    // Quarter kilograms add up without rounding.
    const quarters = fc.integer({ min: 0, max: 20 }).map((n) => n / 4);
    const racks = fc
      .array(fc.tuple(fc.constantFrom('x', 'y'), quarters), { maxLength: 6 })
      .map((rows) => rows.map(([lot, kg], at) => spool(`spool-${at}`, kg, { lot })));
    const wishes = fc.array(fc.tuple(quarters, fc.integer({ min: 0, max: 7 })), { maxLength: 5 });
    fc.assert(
      fc.property(racks, wishes, (rack, wanted) => {
        const reserved = wanted.map(([kg, at]) => ({ wireId: 'core 16', kg, spoolIds: [`spool-${at}`] }));
        const left = reserveWire(rack, reserved);
        const total = (spools: readonly Spool[]) => spools.reduce((sum, { netKg }) => sum + netKg, 0);
        const wantedKg = wanted.reduce((sum, [kg]) => sum + kg, 0);
        expect(total(rack) - total(left)).toBe(Math.min(wantedKg, total(rack)));
        for (const { netKg } of left) expect(netKg).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
