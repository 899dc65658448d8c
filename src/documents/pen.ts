import { onOneLine, shortenText, wrapText } from './fit-text.js';
import { LEADING, type TypeStyle } from './look.js';

/** Kinds of structure that a reader's software is told of (ISO 32000-1, 14.8.4). */
export type StructureKind =
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Figure'
  | 'L'
  | 'LI';

export interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
}

export interface Frame extends Place {
  readonly height: number;
}

export interface TextManner {
  readonly align?: 'left' | 'right' | 'centre';
  /** Text that needs more lines ends in an ellipsis. */
  readonly mostLines?: number;
}

/**
 * Writes and draws on the page that is open. It knows where text may go and what it means (its structure);
 * it knows nothing of strings or days. Positions are points from the upper left corner of the page.
 */
export class Pen {
  private group: PDFKit.PDFStructureElement;
  /** Ink that the open page writes with: said again only when it changes, which halves the drawing's work. */
  private dipped: { page: unknown; ink: string } = { page: undefined, ink: '' };
  /** Widths of texts by face and size: words come again and again, and most lines are measured to be broken and then drawn. */
  private readonly widthsByFont = new Map<string, Map<string, number>>();
  private widths = new Map<string, number>();

  constructor(
    readonly doc: PDFKit.PDFDocument,
    root: PDFKit.PDFStructureElement,
  ) {
    this.group = root;
  }

  /** One line that never leaves its width: what does not fit is cut short with an ellipsis. */
  line(text: string, at: Place, style: TypeStyle, align: TextManner['align'] = 'left'): void {
    this.take(style);
    const shown = shortenText(onOneLine(text), at.width, this.measure);
    if (shown === '') return;
    this.dip(style.ink);
    const textWidth = this.measure(shown);
    const spare = align === 'left' ? 0 : at.width - textWidth;
    const x = at.x + (align === 'centre' ? spare / 2 : spare);
    this.doc.text(shown, x, at.y, { lineBreak: false });
  }

  /** One line whose letters are made smaller until it fits: a figure to set must never be cut short. */
  figure(text: string, at: Place, style: TypeStyle, align: TextManner['align'] = 'left'): void {
    const size = Math.min(style.size, (style.size * at.width) / this.widthOf(text, style));
    // From the foot of the line, so that figures side by side stand on one line.
    const y = at.y + (style.size - size) * ASCENT;
    this.line(text, { ...at, y, width: at.width + ROUNDING }, { ...style, size }, align);
  }

  /** Text in as many lines as it needs; gives the height it took. */
  lines(text: string, at: Place, style: TypeStyle, manner: TextManner = {}): number {
    const wrapped = this.wrap(text, at.width, style, manner.mostLines);
    wrapped.forEach((line, index) => {
      this.line(line, { ...at, y: at.y + index * lineHeight(style) }, style, manner.align);
    });
    return wrapped.length * lineHeight(style);
  }

  wrap(text: string, width: number, style: TypeStyle, mostLines?: number): string[] {
    this.take(style);
    return wrapText(onOneLine(text), width, this.measure, mostLines);
  }

  widthOf(text: string, style: TypeStyle): number {
    this.take(style);
    return this.measure(text);
  }

  /** What `draw` writes is one leaf of the document's structure. */
  tag(kind: StructureKind, draw: () => void, alt?: string): void {
    this.group.add(this.doc.struct(kind, alt === undefined ? {} : { alt }, draw));
  }

  /** What is tagged inside `draw` belongs together; it may go over pages. */
  inGroup(kind: StructureKind, draw: () => void): void {
    const outer = this.group;
    const inner = this.doc.struct(kind);
    outer.add(inner);
    this.group = inner;
    draw();
    inner.end();
    this.group = outer;
  }

  /** Rules, frames and running heads: of no meaning to somebody who listens. */
  ornament(draw: () => void): void {
    this.doc.markContent('Artifact');
    draw();
    this.doc.endMarkedContent();
  }

  rule(from: { x: number; y: number }, to: { x: number; y: number }, weight: number, ink: string): void {
    this.doc.moveTo(from.x, from.y).lineTo(to.x, to.y).lineWidth(weight).strokeColor(ink).stroke();
  }

  /** A box to tick or to write in. */
  box(at: Frame, weight: number, ink: string): void {
    this.doc.rect(at.x, at.y, at.width, at.height).lineWidth(weight).strokeColor(ink).stroke();
  }

  fill(at: Frame, ink: string): void {
    this.shape((doc) => doc.rect(at.x, at.y, at.width, at.height).fill(ink));
  }

  /** Draws what leaves ink, line weight and clipping as they were. */
  shape(draw: (doc: PDFKit.PDFDocument) => void): void {
    this.doc.save();
    draw(this.doc);
    this.doc.restore();
  }

  private readonly measure = (text: string): number => {
    const known = this.widths.get(text);
    if (known !== undefined) return known;
    const width = this.doc.widthOfString(text);
    this.widths.set(text, width);
    return width;
  };

  private take({ face, size }: TypeStyle): void {
    this.doc.font(face).fontSize(size);
    const font = `${face} ${size}`;
    this.widths = this.widthsByFont.get(font) ?? new Map();
    this.widthsByFont.set(font, this.widths);
  }

  private dip(ink: string): void {
    if (this.dipped.page === this.doc.page && this.dipped.ink === ink) return;
    this.doc.fillColor(ink);
    this.dipped = { page: this.doc.page, ink };
  }
}

export const lineHeight = (style: TypeStyle): number => style.size * LEADING;

/** Height of the line above its foot as a share of the size, of the face that is used here. */
const ASCENT = 0.93;
/** Widths are summed in another order after scaling: a hair of room, in points. */
const ROUNDING = 0.01;
