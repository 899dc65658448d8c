import { describe, expect, it } from 'vitest';
import { materialOfWrapAlloy, wrapAlloyOf } from './material.js';
import type { StringMaterial } from './recipe.js';

describe('the material of a string', () => {
  it('is read back from the alloy it is wrapped with', () => {
    const wound: StringMaterial[] = [
      'nickel-plated-steel',
      'pure-nickel',
      'stainless-steel',
      'phosphor-bronze',
      'bronze-80-20',
    ];
    for (const material of wound) expect(materialOfWrapAlloy(wrapAlloyOf(material)!)).toBe(material);
  });

  it('has no wrap where the string is plain', () => {
    expect(wrapAlloyOf('plain-steel')).toBeUndefined();
  });

  it('is stainless steel for either stainless grade, and phosphor bronze at 5 or 8 % of tin', () => {
    expect(materialOfWrapAlloy('stainless-304')).toBe('stainless-steel');
    expect(materialOfWrapAlloy('phosphor-bronze-8')).toBe('phosphor-bronze');
  });

  it('has no name among ours for a wrap that we do not sell strings by', () => {
    expect(materialOfWrapAlloy('copper')).toBeUndefined();
  });
});
