import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Movement } from './ledger.js';
import { movementFault } from './ledger-laws.js';
import { replay } from './ledger-replay.js';
import { receiveWire, takeWire, weighDifference } from './wire-movements.js';
import { kgFromMg, mFromMm, mgFromKg, mmFromMg, type SpoolBook } from './wire-quantities.js';

// Steel 0.4 mm round at 7850 kg/m3 is pi/4 x 0.0004^2 x 7850 = 0.98646e-3 kg/m, worked by hand.
const UNIT_WEIGHT = 0.98646e-3;
const spool = { spoolId: 's', wireId: 'core', unitWeightKgPerM: UNIT_WEIGHT };
const received = (mg: number) => receiveWire({ ...spool, mg });

function bookAfter(movements: readonly (Movement | undefined)[]): SpoolBook {
  const books = replay(movements.filter((movement) => movement !== undefined));
  const onBook = (unit: string) =>
    books.find((row) => row.account === 'spool/s' && row.unit === unit)?.quantity ?? 0;
  return { ...spool, mg: onBook('mg'), mm: onBook('mm') };
}

const quantities = (movement: Movement | undefined) =>
  movement?.entries.map(({ account, unit, quantity }) => `${account} ${quantity} ${unit}`);

describe('weights and lengths', () => {
  it('are whole milligrams and millimetres, to the nearest, a half up', () => {
    expect(mgFromKg(1.0000005)).toBe(1_000_001);
    expect(mgFromKg(5.2)).toBe(5_200_000);
    expect(mmFromMg(986_460, UNIT_WEIGHT)).toBe(1_000_000);
    expect(mmFromMg(3, 0.002)).toBe(2);
    expect([kgFromMg(5_200_000), mFromMm(1234)]).toEqual([5.2, 1.234]);
  });

  it('refuse what is no number, and a wire that weighs nothing', () => {
    expect(() => mgFromKg(Number.NaN)).toThrow(/number/);
    expect(() => mmFromMg(1, 0)).toThrow(/weighs/);
  });
});

describe('a spool', () => {
  it('comes from the supplier by weight and by length', () => {
    expect(quantities(received(986_460))).toEqual([
      'supplier -986460 mg',
      'spool/s 986460 mg',
      'supplier -1000000 mm',
      'spool/s 1000000 mm',
    ]);
  });

  it('gives wire to strings and to scrap, and says nothing where it gave none', () => {
    const book = bookAfter([received(986_460)]);
    const scrap = [{ reason: 'off-cuts', mg: 98_646 }];
    expect(quantities(takeWire({ spool: book, runId: 'r', woundMg: 493_230, scrap }))).toEqual([
      'spool/s -493230 mg',
      'wound-in 493230 mg',
      'spool/s -500000 mm',
      'wound-in 500000 mm',
      'spool/s -98646 mg',
      'scrap/off-cuts 98646 mg',
      'spool/s -100000 mm',
      'scrap/off-cuts 100000 mm',
    ]);
    expect(takeWire({ spool: book, runId: 'r', woundMg: 0, scrap: [] })).toBeUndefined();
  });

  it('asked for more than it has gives a movement that the ledger can refuse', () => {
    const book = bookAfter([]);
    const movement = takeWire({ spool: book, runId: 'r', woundMg: 986_460, scrap: [] });
    expect(movement && movementFault(movement)).toBeUndefined();
    expect(quantities(movement)).toContain('spool/s -1000000 mm');
  });

  it('weighed lighter or heavier is set to what the scale says, with a reason', () => {
    const book = bookAfter([received(986_460)]);
    const lighter = weighDifference({ spool: book, foundMg: 493_230, reason: 'weighed' });
    expect(bookAfter([received(986_460), lighter])).toMatchObject({ mg: 493_230, mm: 500_000 });
    const heavier = weighDifference({ spool: book, foundMg: 1_972_920, reason: 'weighed' });
    expect(bookAfter([received(986_460), heavier])).toMatchObject({ mg: 1_972_920, mm: 2_000_000 });
    expect(heavier?.reason).toBe('weighed');
    expect(weighDifference({ spool: book, foundMg: 986_460, reason: 'weighed' })).toBeUndefined();
  });

  it('used up in any portions is empty by weight and by length in the same moment', () => {
    const portions = fc.array(fc.integer({ min: 1, max: 400_000 }), { minLength: 1, maxLength: 40 });
    // From plain steel of 0.15 mm to bronze of 1.6 mm.
    const unitWeights = fc.double({ min: 1.3e-4, max: 0.018, noNaN: true });
    fc.assert(
      fc.property(portions, unitWeights, (uses, unitWeightKgPerM) => {
        const wholeMg = uses.reduce((sum, mg) => sum + mg, 0);
        const movements: Movement[] = [receiveWire({ ...spool, unitWeightKgPerM, mg: wholeMg })];
        for (const mg of uses) {
          const book = { ...bookAfter(movements), unitWeightKgPerM };
          expect(book.mm).toBeGreaterThanOrEqual(0);
          movements.push(takeWire({ spool: book, runId: 'r', woundMg: mg, scrap: [] })!);
        }
        expect(movements.map(movementFault).filter(Boolean)).toEqual([]);
        expect(bookAfter(movements)).toMatchObject({ mg: 0, mm: 0 });
      }),
    );
  });
});
