import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readTable, type Table } from './read-table.js';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

function table(text: string): Table {
  const read = readTable(bytes(text));
  if (!read.ok) throw new Error(read.fault.code);
  return read.value;
}

describe('a file of separated values', () => {
  it.each([
    [',', 'a,b\n1,2'],
    [';', 'a;b\n1;2'],
    ['\t', 'a\tb\n1\t2'],
    ['|', 'a|b\n1|2'],
  ])('is parted at %j where its heading is', (delimiter, text) => {
    expect(table(text)).toMatchObject({
      delimiter,
      headings: ['a', 'b'],
      rows: [{ line: 2, cells: { a: '1', b: '2' } }],
    });
  });

  it('reads with a byte-order mark, with Windows line ends, and as UTF-16', () => {
    expect(table('\ufeffa,b\r\n1,2\r\n').rows).toEqual([{ line: 2, cells: { a: '1', b: '2' } }]);
    const utf16 = new Uint8Array([
      0xff,
      0xfe,
      ...[...'a;b\nx;½'].flatMap((letter) => [letter.charCodeAt(0) & 255, letter.charCodeAt(0) >> 8]),
    ]);
    const read = readTable(utf16);
    expect(read.ok && read.value.rows[0]?.cells).toEqual({ a: 'x', b: '½' });
  });

  it('counts lines as an editor does, over blank lines and cells that hold line breaks', () => {
    expect(table('\na,b\n\n"x\ny",2\n\n3,4\n').rows).toEqual([
      { line: 4, cells: { a: 'x\ny', b: '2' } },
      { line: 7, cells: { a: '3', b: '4' } },
    ]);
  });

  it('takes cells left off the end as empty, and refuses a row with cells to spare', () => {
    const read = table('a,b,c\n1,2\n1,2,3,4\n5,6,7,,\n');
    expect(read.rows.map(({ line }) => line)).toEqual([2, 4]);
    expect(read.rows[0]?.cells).toEqual({ a: '1', b: '2', c: '' });
    expect(read.faults).toEqual([
      { line: 3, code: 'order.cells-too-many', facts: { expected: 3, given: 4 } },
    ]);
  });

  it('loses one line, not the rest of the file, to a quote that is never closed', () => {
    const read = table('a,b\n1,2\n"open,3\n4,5\n6,7');
    expect(read.faults.map(({ line, code }) => ({ line, code }))).toEqual([
      { line: 3, code: 'order.quote-open' },
    ]);
    expect(read.rows.map(({ line }) => line)).toEqual([2, 4, 5]);
  });

  it('loses one line to an open quote that a later quoted cell would close', () => {
    const read = table('a,b\n"open,3\n4,5\n"six",7\n8,9');
    expect(read.faults.map(({ line }) => line)).toEqual([2]);
    expect(read.rows.map(({ line }) => line)).toEqual([3, 4, 5]);
  });

  it('says that a workbook, an empty file or bytes that are no text cannot be read', () => {
    expect(readTable(new Uint8Array([0x50, 0x4b, 3, 4]))).toEqual({
      ok: false,
      fault: { code: 'file.is-workbook' },
    });
    expect(readTable(bytes(''))).toEqual({ ok: false, fault: { code: 'file.empty' } });
    expect(readTable(bytes('\n \n'))).toEqual({ ok: false, fault: { code: 'file.empty' } });
    expect(readTable(new Uint8Array([97, 10, 98, 0xe9, 99]))).toEqual({
      ok: false,
      fault: { code: 'file.not-text', line: 2 },
    });
  });

  it('keeps headings that stand twice apart', () => {
    expect(table('a,a\n1,2').rows[0]?.cells).toEqual({ a: '1', 'a (column 2)': '2' });
  });

  it('neither loses nor doubles a line, whatever stands in it', () => {
    const cell = fc.stringMatching(/^[a-z0-9", ]{0,6}$/);
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 12 }), (pairs) => {
        const text = ['a;b', ...pairs.map(([one, two]) => `x${one};${two}`)].join('\n');
        const { rows, faults } = table(text);
        const seen = [...rows, ...faults].map(({ line }) => line).sort((a, b) => a - b);
        expect(new Set(seen).size).toBe(seen.length);
        for (const { line } of [...rows, ...faults]) expect(line).toBeLessThanOrEqual(pairs.length + 1);
      }),
    );
  });
});
