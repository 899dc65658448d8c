import { describe, expect, it } from 'vitest';
import { type RecipeRecord, wishedRecipes } from './recipe-list.js';

const recipe = (name: string, gaugeThou: number, more: Partial<RecipeRecord['body']> = {}): RecipeRecord => ({
  id: name,
  version: 1,
  state: 'predicted',
  createdAt: '',
  updatedAt: '',
  body: {
    name,
    gaugeThou,
    material: 'pure-nickel',
    construction: {
      kind: 'plain',
      wire: { shape: 'round', sizeM: 0.0002, alloy: 'music-wire', strengthTable: 'astm-a228' },
    },
    coreWireId: '',
    wrapWireIds: [],
    note: '',
    ...more,
  },
});

const ALL = { gauge: '', material: '', state: '', text: '' };
const BOOK = [
  recipe('nickel 46', 46),
  recipe('nickel 26', 26, { note: 'soft core, on trial for Tavik' }),
  recipe('plain 10', 10, { material: 'plain-steel' }),
];
const names = (wish: Partial<typeof ALL>) =>
  wishedRecipes(BOOK, { ...ALL, ...wish }).map(({ body }) => body.name);

describe('the recipes of a shop', () => {
  it('stand by material and gauge', () => {
    expect(names({})).toEqual(['plain 10', 'nickel 26', 'nickel 46']);
  });

  it('are narrowed by gauge however it is written, by material, state and words', () => {
    expect(names({ gauge: '.026' })).toEqual(['nickel 26']);
    expect(names({ material: 'plain-steel' })).toEqual(['plain 10']);
    expect(names({ state: 'retired' })).toEqual([]);
    expect(names({ text: 'TAVIK' })).toEqual(['nickel 26']);
  });

  it('stay as they are while a gauge is only half typed', () => {
    expect(names({ gauge: '.' })).toHaveLength(3);
  });
});
