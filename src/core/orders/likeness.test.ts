import { describe, expect, it } from 'vitest';
import { foldName, mostLike } from './likeness.js';

describe('the names most like a mistyped one', () => {
  const names = ['Bright morning six', 'Bright morning seven', 'Low tide baritone'];

  it('finds the name behind a slip of the fingers', () => {
    expect(mostLike('Brihgt mornig six', names)[0]).toBe('Bright morning six');
    expect(mostLike('low tyde bariton', names)).toEqual(['Low tide baritone']);
  });

  it('offers nothing where nothing is like it', () => {
    expect(mostLike('zzz', names)).toEqual([]);
  });

  it('weighs shared letter pairs, edges of words included (Dice 1945, Ecology 26:297)', () => {
    // night: { _n ni ig gh ht t_ }, nacht: { _n na ac ch ht t_ } share 3 of 12, so 0.5; nadir shares 1 of 12.
    expect(mostLike('night', ['nadir', 'nacht'])).toEqual(['nacht']);
  });

  it('folds case, width and spaces but not letters', () => {
    expect(foldName('  Bright   Morning Six')).toBe(foldName('bright morning six'));
    expect(foldName('a')).not.toBe(foldName('b'));
  });
});
