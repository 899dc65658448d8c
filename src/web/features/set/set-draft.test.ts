import { beforeAll, describe, expect, it } from 'vitest';
import { demoShop } from '../../../../test/fixtures/invented-shop.js';
import type { Shop } from '../../../core/day/index.js';
import { draftOfSet, draftSaysAll, readSetDraft, type SetRecord, withoutRecipe } from './set-draft.js';

let shop: Shop;
beforeAll(async () => {
  shop = await demoShop();
});

const record = (name: string): SetRecord => {
  const set = shop.sets.find((each) => each.name === name);
  if (!set) throw new Error(name);
  return {
    id: 'id',
    version: 1,
    state: '',
    createdAt: '',
    updatedAt: '',
    body: { name, strings: [...set.strings] },
  };
};

describe('the draft of a set', () => {
  it('says every set of the shop, and reads back as the same strings', () => {
    for (const { name } of shop.sets) {
      const set = record(name);
      expect(draftSaysAll(set, shop), name).toBe(true);
      const read = readSetDraft(draftOfSet(set, shop), shop);
      expect(read.ok && read.value.name).toBe(name);
    }
  });

  it('tells of a set whose strings differ in more than gauge and kind', () => {
    const set = record('Meadow six, 10');
    const [first, ...rest] = set.body.strings;
    const odd = { ...set, body: { ...set.body, strings: [{ ...first!, end: 'loop' as const }, ...rest] } };
    expect(draftSaysAll(odd, shop)).toBe(false);
  });

  it('names each field that cannot be read', () => {
    const draft = {
      name: ' ',
      gauges: '10-thirteen',
      material: 'pure nickel',
      end: 'ball',
      length: '3 m',
    } as const;
    expect(readSetDraft(draft, shop)).toMatchObject({
      ok: false,
      fault: [
        { field: 'name' },
        { field: 'gauges', part: 'thirteen' },
        { field: 'length', isOutOfRange: true },
      ],
    });
  });

  it('takes gauges from either side, and says which the shop has no recipe for', () => {
    const draft = { ...draftOfSet(undefined, shop), name: 'Fen six', gauges: '46 36 26 17 13 7.25' };
    const read = readSetDraft(draft, shop);
    const strings = read.ok ? read.value.strings : [];
    expect(strings.map(({ gaugeThou }) => gaugeThou)).toEqual([7.25, 13, 17, 26, 36, 46]);
    expect(withoutRecipe(strings, shop).map(({ gaugeThou }) => gaugeThou)).toEqual([7.25]);
  });
});
