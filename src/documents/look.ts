/** Points (1/72 in) in a millimetre: PDF measures in points, the shop in millimetres. */
const POINTS_PER_MM = 72 / 25.4;

/** Points of a length in millimetres. */
export const mm = (millimetres: number): number => millimetres * POINTS_PER_MM;

/** Points of a length in metres. */
export const pointsFromMetres = (lengthM: number): number => mm(lengthM * 1000);

export type Face = 'regular' | 'bold';

/** How a piece of text looks: size in points, its face, and the share of the size that lines stand apart. */
export interface TypeStyle {
  readonly face: Face;
  readonly size: number;
  readonly ink: string;
}

/** Inks that stay apart when printed in black and white; the accent marks only what needs care. */
export const INK = { text: '#000000', quiet: '#4a4a4a', rule: '#9a9a9a', tint: '#ececec', accent: '#7d2418' };

/** Sizes climb by about a fifth; the two largest are read from a metre away, standing at a machine. */
export const TYPE = {
  huge: { face: 'bold', size: 38, ink: INK.text },
  large: { face: 'bold', size: 22, ink: INK.text },
  title: { face: 'bold', size: 16, ink: INK.text },
  heading: { face: 'bold', size: 11.5, ink: INK.text },
  lead: { face: 'regular', size: 11.5, ink: INK.text },
  strong: { face: 'bold', size: 9, ink: INK.text },
  body: { face: 'regular', size: 9, ink: INK.text },
  quiet: { face: 'regular', size: 9, ink: INK.quiet },
  small: { face: 'regular', size: 7.5, ink: INK.quiet },
  smallStrong: { face: 'bold', size: 7.5, ink: INK.text },
  alarm: { face: 'bold', size: 9, ink: INK.accent },
} as const satisfies Record<string, TypeStyle>;

/** Distance from one line of text to the next, as a share of its size. */
export const LEADING = 1.24;

/** A4, upright, with the band that holds text between header and footer. */
export const PAGE = {
  width: mm(210),
  height: mm(297),
  left: mm(14),
  right: mm(196),
  headerAt: mm(9),
  top: mm(18),
  bottom: mm(284),
  footerAt: mm(287.5),
} as const;

/** Gaps between parts, in points. */
export const GAP = { small: mm(1.2), close: mm(2), part: mm(3), section: mm(6) } as const;

export const RULE = { hair: 0.4, line: 0.8, heavy: 1.6 } as const;
