import { describe, expect, it } from 'vitest';
import { askedOf } from './asked-of.js';

describe('the address of the quality room', () => {
  it('asks for first strings by machine where it says nothing', () => {
    expect(askedOf({})).toEqual({ measure: 'first', by: 'machine' });
  });

  it('hands on what it names, and drops what nobody could have meant', () => {
    expect(
      askedOf({
        machine: 'm',
        lot: 'w/L',
        measure: 'along',
        by: 'lot',
        from: '2026-03-01',
        mine: 'yes',
        run: 'r',
      }),
    ).toEqual({ machineId: 'm', lot: 'w/L', measure: 'along', by: 'lot', from: '2026-03-01', mine: 'yes' });
    expect(
      askedOf({ measure: 'winder', by: 'winder', from: '2026-13-45', until: 'now', mine: 'no' }),
    ).toEqual({
      measure: 'first',
      by: 'machine',
    });
  });
});
