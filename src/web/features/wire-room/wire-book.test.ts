import { describe, expect, it } from 'vitest';
import { isShort, type SpoolRecord, type WireRecord, wireBook } from './wire-book.js';

const stored = { version: 1, createdAt: '', updatedAt: '' };
const wire = (id: string, use: 'core' | 'wrap', sizeM: number): WireRecord => ({
  ...stored,
  id,
  state: '',
  body: { name: id, use, shape: 'round', sizeM, alloy: 'music-wire', priceMinorPerKg: 0 },
});
const spool = (id: string, wireId: string, state: string, receivedAt: string): SpoolRecord => ({
  ...stored,
  id,
  state,
  body: { name: id, wireId, lot: '', tareKg: 0, receivedAt },
});
const balance = (spoolId: string, unit: 'mg' | 'mm', quantity: number) => ({
  account: `spool/${spoolId}`,
  item: 'wire/a',
  lot: spoolId,
  unit,
  quantity,
});

describe('the wire of a shop', () => {
  it('is what lies on its spools by weight and by length, the oldest spool first', () => {
    const [line] = wireBook({
      wires: [wire('a', 'core', 0.0002)],
      spools: [spool('late', 'a', 'on-shelf', '2027-02'), spool('early', 'a', 'quarantined', '2027-01')],
      balances: [balance('late', 'mg', 2e6), balance('late', 'mm', 5e6), balance('early', 'mg', 1e6)],
      covers: [],
    });
    expect(line?.spools.map(({ spool: { id } }) => id)).toEqual(['early', 'late']);
    expect(line).toMatchObject({ kg: 3, metres: 5000 });
  });

  it('keeps empty spools apart', () => {
    const [line] = wireBook({
      wires: [wire('a', 'core', 0.0002)],
      spools: [spool('done', 'a', 'empty', '')],
      balances: [],
      covers: [],
    });
    expect(line?.spools).toEqual([]);
    expect(line?.emptied).toHaveLength(1);
  });

  it('stands core before wrap and thin before thick', () => {
    const wires = [wire('w', 'wrap', 0.0001), wire('c2', 'core', 0.0003), wire('c1', 'core', 0.0002)];
    const lines = wireBook({ wires, spools: [], balances: [], covers: [] });
    expect(lines.map((line) => line.wire.id)).toEqual(['c1', 'c2', 'w']);
  });

  it('is short where it lasts fewer days than wanted; what is not used lasts', () => {
    const cover = {
      wireId: 'a',
      name: 'a',
      onHandKg: 1,
      usedKg: 1,
      overDays: 9,
      wantedDays: 21,
      basis: 'shop' as const,
    };
    expect(isShort({ cover: { ...cover, coverDays: 9 } })).toBe(true);
    expect(isShort({ cover: { ...cover, coverDays: 30 } })).toBe(false);
    expect(isShort({ cover })).toBe(false);
  });
});
