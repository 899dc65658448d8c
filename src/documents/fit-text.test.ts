import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ELLIPSIS, onOneLine, shortenText, wrapText } from './fit-text.js';

/** A face whose every sign is one wide: widths are counts. */
const count = (text: string): number => [...text].length;

describe('text is fitted to its place', () => {
  it('text that fits is left alone', () => {
    expect(shortenText('46 wound', 8, count)).toBe('46 wound');
  });

  it('text that does not fit keeps its beginning and says by an ellipsis that more was there', () => {
    expect(shortenText('nickel-plated steel', 10, count)).toBe('nickel-pl…');
  });

  it('no white space stands before an ellipsis', () => {
    expect(shortenText('pure nickel', 6, count)).toBe('pure…');
  });

  it('lines break between words', () => {
    expect(wrapText('Hold the tail while you cut', 13, count)).toEqual(['Hold the tail', 'while you cut']);
  });

  it('a word that alone is too wide breaks after a hyphen', () => {
    expect(wrapText('Brackwater-Penhallow', 12, count)).toEqual(['Brackwater-', 'Penhallow']);
  });

  it('the last line allowed says that more was there', () => {
    expect(wrapText('one two three four', 7, count, 2)).toEqual(['one two', 'three…']);
  });

  it('line breaks out of a file become blanks', () => {
    expect(onOneLine('Perrin\r\nOddlestone\t2')).toBe('Perrin Oddlestone 2');
  });

  it('no line is ever wider than its place', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), fc.integer({ min: 1, max: 30 }), (text, width) => {
        for (const line of wrapText(text, width, count)) expect(count(line)).toBeLessThanOrEqual(width);
        expect(count(shortenText(text, width, count))).toBeLessThanOrEqual(width);
      }),
    );
  });

  it('wrapping loses no sign but white space', () => {
    const bare = (text: string): string => text.replace(/\s/g, '');
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 30 }), (text, width) => {
        expect(bare(wrapText(text, width, count).join(''))).toBe(bare(text));
      }),
    );
  });

  it('what is shortened begins as the whole does', () => {
    fc.assert(
      fc.property(fc.string(), fc.integer({ min: 1, max: 30 }), (text, width) => {
        const shown = shortenText(text, width, count);
        expect(text.startsWith(shown.endsWith(ELLIPSIS) ? shown.slice(0, -1) : shown)).toBe(true);
      }),
    );
  });
});
