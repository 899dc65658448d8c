import bwip from 'bwip-js/node';

/** A QR code as rows of dark and light squares, with the light margin of four squares that readers need (ISO/IEC 18004). */
export function qrSquares(text: string): readonly (readonly boolean[])[] {
  const [code] = bwip.raw(qrOptions(text)) as readonly Squares[];
  if (!code) throw new Error('The QR library drew nothing');
  const { pixs, pixx } = code;
  const width = pixx + 2 * MARGIN;
  return Array.from({ length: width }, (_, y) =>
    Array.from({ length: width }, (_, x) => {
      const [column, row] = [x - MARGIN, y - MARGIN];
      const isInside = column >= 0 && row >= 0 && column < pixx && row < pixx;
      return isInside && pixs[row * pixx + column] === 1;
    }),
  );
}

/** A QR code for a terminal: two rows of squares in one line of blocks, light on dark as most terminals are. */
export function qrInBlocks(text: string): string {
  const rows = qrSquares(text);
  const lines: string[] = [];
  for (let y = 0; y < rows.length; y += 2) {
    lines.push(rows[y]!.map((isDark, x) => BLOCKS[`${isDark}/${rows[y + 1]?.[x] ?? false}`]).join(''));
  }
  return lines.join('\n');
}

/** A QR code as a picture to print or to hang beside the machine. */
export const qrPicture = (text: string): Promise<Uint8Array> =>
  bwip.toBuffer({ ...qrOptions(text), scale: 6, padding: MARGIN, backgroundcolor: 'FFFFFF' });

const MARGIN = 4;

interface Squares {
  readonly pixs: readonly number[];
  /** Squares in a row. */
  readonly pixx: number;
}

/** The library's types do not know the level of error correction. */
const qrOptions = (text: string): Parameters<typeof bwip.raw>[0] & { readonly eclevel: 'M' } => ({
  bcid: 'qrcode',
  text,
  eclevel: 'M',
});

/** The light squares are drawn, the dark ones left to the terminal's ground. */
const BLOCKS: Readonly<Record<string, string>> = {
  'false/false': '█',
  'false/true': '▀',
  'true/false': '▄',
  'true/true': ' ',
};
