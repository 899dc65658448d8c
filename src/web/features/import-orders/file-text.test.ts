import { describe, expect, it } from 'vitest';
import { fileText, lineSpan, MOST_CHARACTERS } from './file-text.js';

const utf16le = (text: string) =>
  new Uint8Array([0xff, 0xfe, ...[...text].flatMap((letter) => [letter.charCodeAt(0), 0])]);

describe('the text of a file', () => {
  it('is read as UTF-8, or as UTF-16 where it says so, without its mark', async () => {
    expect(await fileText(new Blob(['\uFEFForder;player\nT-1;Jörla']))).toEqual({
      ok: true,
      value: 'order;player\nT-1;Jörla',
    });
    expect(await fileText(new Blob([utf16le('order,player')]))).toEqual({ ok: true, value: 'order,player' });
  });

  it('that is no text, or more than the shop takes, is refused', async () => {
    expect(await fileText(new Blob([new Uint8Array([0x50, 0xff, 0x00])]))).toEqual({
      ok: false,
      fault: 'unreadable',
    });
    const long = new Blob(['x'.repeat(MOST_CHARACTERS + 1)]);
    expect(await fileText(long)).toEqual({ ok: false, fault: 'too-large' });
  });
});

describe('a line of a text', () => {
  it('is found by its number', () => {
    expect(lineSpan('ab\ncde\nf', 1)).toEqual([0, 2]);
    expect(lineSpan('ab\ncde\nf', 2)).toEqual([3, 6]);
    expect(lineSpan('ab\ncde\nf', 3)).toEqual([7, 8]);
    expect(lineSpan('ab\ncde\nf', 9)).toEqual([8, 8]);
  });
});
