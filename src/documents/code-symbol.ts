import bwip from 'bwip-js/node';
import { INK, mm } from './look.js';
import type { Pen } from './pen.js';

/** A symbol as filled rectangles on a grid of modules; 0, 0 is its upper left corner. */
export interface CodeSymbol {
  readonly kind: 'code-128' | 'qr';
  readonly columns: number;
  /** One for a bar code, whose bars are as high as one likes to print them. */
  readonly rows: number;
  readonly bars: readonly { readonly column: number; readonly row: number; readonly width: number }[];
  /** Modules to keep blank left and right, all round for a QR code (ISO/IEC 15417, ISO/IEC 18004). */
  readonly quietModules: number;
}

/**
 * The symbol that says `text`. Code 128 where it is at most `mostColumns` modules wide, quiet zones not counted,
 * and the text is plain ASCII: any scanner reads it, and it is made some fifteen times faster than a QR
 * code, which takes whatever is longer or in another script.
 */
export function codeSymbol(text: string, mostColumns: number): CodeSymbol {
  if (PLAIN_ASCII.test(text)) {
    const symbol = code128(text);
    if (symbol.columns <= mostColumns) return symbol;
  }
  return qrCode(text);
}

/** Draws the symbol with its upper left dark corner at `at`; one path, so that no hairlines show between bars. */
export function drawCodeSymbol(
  pen: Pen,
  symbol: CodeSymbol,
  at: { x: number; y: number; moduleWidth: number; moduleHeight: number },
): void {
  // Whole modules on a scaled grid, written at once: a thousand labels have some fifty thousand bars.
  const path = symbol.bars.map(({ column, row, width }) => `${column} ${row} ${width} 1 re`);
  pen.shape((doc) => {
    doc.translate(at.x, at.y).transform(at.moduleWidth, 0, 0, at.moduleHeight, 0, 0).fillColor(INK.text);
    doc.addContent(`${path.join('\n')}\nf`);
  });
}

/**
 * Width of a module: three dots of a 300 dpi label printer and ten thousandths of an inch, so that bars
 * fall on whole dots.
 */
export const MODULE_WIDTH = mm(0.254);

function code128(text: string): CodeSymbol {
  const [raw] = bwip.raw({ bcid: 'code128', text });
  if (raw === undefined || !('sbs' in raw)) throw new Error(`No Code 128 came of ${text}`);
  const bars: CodeSymbol['bars'][number][] = [];
  let column = 0;
  // Widths come in turn: bar, space, bar ... and end with a bar.
  raw.sbs.forEach((width, index) => {
    if (index % 2 === 0) bars.push({ column, row: 0, width });
    column += width;
  });
  return { kind: 'code-128', columns: column, rows: 1, bars, quietModules: 10 };
}

function qrCode(text: string): CodeSymbol {
  const [raw] = bwip.raw(qrOptions(text));
  if (raw === undefined || !('pixs' in raw)) throw new Error(`No QR code came of ${text}`);
  return {
    kind: 'qr',
    columns: raw.pixx,
    rows: raw.pixy,
    bars: darkRuns(raw.pixs, raw.pixx),
    quietModules: 4,
  };
}

/** Text in another script is marked as UTF-8 (extended channel 26, ISO/IEC 18004): readers guess otherwise. */
function qrOptions(text: string): QrOptions {
  if (PLAIN_ASCII.test(text)) return { bcid: 'qrcode', text, eclevel: 'M' };
  return { bcid: 'qrcode', text: `^ECI000026${text.replaceAll('^', '^^')}`, parsefnc: true, eclevel: 'M' };
}

/** The library's types leave out what only some symbols know: here the level of error correction. */
type QrOptions = Parameters<typeof bwip.raw>[0] & { readonly eclevel: 'M' };

/** Dark modules next to each other in a row, as one bar each. */
function darkRuns(pixels: readonly number[], columns: number): CodeSymbol['bars'] {
  const bars: { column: number; row: number; width: number }[] = [];
  pixels.forEach((dark, index) => {
    if (dark === 0) return;
    const column = index % columns;
    const row = Math.floor(index / columns);
    const last = bars.at(-1);
    if (column > 0 && last && last.row === row && last.column + last.width === column) last.width += 1;
    else bars.push({ column, row, width: 1 });
  });
  return bars;
}

const PLAIN_ASCII = /^[\x20-\x7e]+$/;
