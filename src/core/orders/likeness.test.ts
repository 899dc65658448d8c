import { describe, expect, it } from 'vitest';
import { calledBy, foldName, mostLike } from './likeness.js';

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

describe('a name that a text calls', () => {
  const known = [
    'open D',
    'open B baritone',
    'baritone 27',
    'baritone 28.5',
    'Orchard twelve',
    'Orchard twelve, plated',
  ].map((name) => ({ name }));
  const called = (text: string) => calledBy(text, known).map(({ name }) => name);

  it('may be said by its beginning, up to the end of a word', () => {
    expect(called('open b')).toEqual(['open B baritone']);
    expect(called('Baritone')).toEqual(['baritone 27', 'baritone 28.5']);
    expect(called('bari')).toEqual([]);
    expect(called('')).toEqual([]);
  });

  it('is the one that is said in full before any that begin so', () => {
    expect(called('orchard twelve')).toEqual(['Orchard twelve']);
  });
});
