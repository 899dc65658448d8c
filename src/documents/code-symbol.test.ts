import { describe, expect, it } from 'vitest';
import { codeSymbol } from './code-symbol.js';

describe('the symbol of a code', () => {
  it('six letters in code set B are 11 modules each, as are start and check, and 13 the stop (ISO/IEC 15417)', () => {
    expect(codeSymbol('AbCdEf', 200)).toMatchObject({
      kind: 'code-128',
      columns: 11 * (6 + 2) + 13,
      rows: 1,
    });
  });

  it('a Code 128 stops with the bars 2 3 1 and a bar of 2 (ISO/IEC 15417)', () => {
    const { bars, columns } = codeSymbol('TW1:R-1042:12', 240);
    expect(bars.slice(-4).map(({ width }) => width)).toEqual([2, 3, 1, 2]);
    const last = bars.at(-1)!;
    expect(last.column + last.width).toBe(columns);
  });

  it('what is too long for bars becomes a QR code', () => {
    expect(codeSymbol(`TW1:${'R-2026-04-1042-again'.repeat(2)}:12`, 240).kind).toBe('qr');
  });

  it('what is not plain ASCII becomes a QR code', () => {
    expect(codeSymbol('TW1:Ø-17:2', 240).kind).toBe('qr');
  });

  it('a QR code has a finder seven modules wide in three of its corners (ISO/IEC 18004)', () => {
    const { bars, columns, rows } = codeSymbol('TW1:Ø-17:2', 240);
    const top = bars.filter(({ row }) => row === 0);
    expect(top[0]).toEqual({ column: 0, row: 0, width: 7 });
    expect(top.at(-1)).toEqual({ column: columns - 7, row: 0, width: 7 });
    expect(bars.find(({ row }) => row === rows - 1)).toEqual({ column: 0, row: rows - 1, width: 7 });
  });
});
