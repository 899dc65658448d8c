import { describe, expect, it } from 'vitest';
import { type Movement, movementLine } from './movement-line.js';

const entry = (account: string, quantity: number, unit: 'mg' | 'mm' = 'mg') => ({
  account,
  item: 'wire/steel',
  lot: 'spool 1',
  unit,
  quantity,
});
const USE: Movement = {
  id: 'one',
  at: '2027-02-15T08:00:00.000Z',
  by: 'console',
  what: 'use',
  reason: '',
  ofKind: 'run',
  ofId: 'run 1',
  entries: [
    entry('spool/1', -120),
    entry('wound-in', 100),
    entry('scrap/kinked', 20),
    entry('spool/1', -600, 'mm'),
    entry('wound-in', 600, 'mm'),
  ],
};

describe('a movement of the ledger', () => {
  it('seen from an account is what came to it, negative where it left', () => {
    const { moved, from, to } = movementLine(USE, { account: 'spool/1' });
    expect(moved).toEqual({ mg: -120, mm: -600 });
    expect(from).toEqual(['spool/1']);
    expect(to).toEqual(['wound-in', 'scrap/kinked']);
  });

  it('seen from its item is how much went', () => {
    expect(movementLine(USE, { item: 'wire/steel' }).moved).toEqual({ mg: 120, mm: 600 });
  });

  it('leaves out what is of another item or lot', () => {
    expect(movementLine(USE, { item: 'wire/other' })).toMatchObject({ from: [], to: [], moved: {} });
    expect(movementLine(USE, { lot: 'spool 2' }).moved).toEqual({});
  });
});
