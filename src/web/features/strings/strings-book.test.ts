import { describe, expect, it } from 'vitest';
import type { LyingStrings } from '../../../contract/index.js';
import { type BinRecord, isBelowLevel, kindsInBins, wishedKinds } from './strings-book.js';

const bin = (name: string, walkOrder: number, stringKey?: string, reorderLevel = 0): BinRecord => ({
  id: name,
  version: 1,
  state: '',
  createdAt: '',
  updatedAt: '',
  body: { name, walkOrder, reorderLevel, ...(stringKey === undefined ? {} : { stringKey }) },
});
const lying = (binId: string, stringKey: string, state: string, count: number): LyingStrings => ({
  binId,
  lotId: `lot of ${binId} ${state}`,
  lot: `lot of ${binId} ${state}`,
  state,
  stringKey,
  count,
});
const BINS = [bin('far', 9, 'ten', 20), bin('near', 1, 'nine', 10), bin('odd', 5)];
const LYING = [
  lying('far', 'ten', 'released', 12),
  lying('far', 'ten', 'in-check', 30),
  lying('odd', 'eleven', 'on-hold', 4),
];

describe('the strings of a shop', () => {
  it('stand by kind in the order of the walk, the empty bins too', () => {
    expect(kindsInBins(BINS, LYING).map(({ stringKey }) => stringKey)).toEqual(['nine', 'eleven', 'ten']);
  });

  it('are below their level by what may be packed alone', () => {
    const kinds = kindsInBins(BINS, LYING);
    const ten = kinds.find(({ stringKey }) => stringKey === 'ten')!;
    expect(ten).toMatchObject({ released: 12, inCheck: 30, onHold: 0, reorderLevel: 20 });
    expect(kinds.filter(isBelowLevel).map(({ stringKey }) => stringKey)).toEqual(['nine', 'ten']);
  });

  it('are found by what they are called, by bin and by lot', () => {
    const kinds = kindsInBins(BINS, LYING);
    const find = (text: string) =>
      wishedKinds(kinds, { text, onlyShort: false }, (key) => `a ${key}`).map(({ stringKey }) => stringKey);
    expect(find('A TEN')).toEqual(['ten']);
    expect(find('odd')).toEqual(['eleven']);
    expect(find('far in-check')).toEqual(['ten']);
  });
});
