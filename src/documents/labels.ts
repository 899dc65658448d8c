import { dateInWords, gaugesInWords, listInWords } from '../contract/index.js';
import type { Day, DayOrder, PackedSet } from '../core/day/index.js';
import { invariant } from '../core/foundation/index.js';
import { type CodeSymbol, codeSymbol, drawCodeSymbol, MODULE_WIDTH } from './code-symbol.js';
import { LABELS_3_BY_8, type LabelSheet, labelFrame } from './label-sheet.js';
import { INK, mm, TYPE, type TypeStyle } from './look.js';
import { Pages } from './page.js';
import { type PaperAbout, printPaper } from './paper.js';
import { type Frame, lineHeight, type Pen } from './pen.js';

/**
 * Labels for every set of the packing roll, one for each of its envelopes, in the roll's order: player, set,
 * gauges, order, day, where the strings come from, and a code to scan that reads as the set's `labelCode`.
 */
export function labelsPdf(day: Day, sheet: LabelSheet = LABELS_3_BY_8): Promise<Uint8Array> {
  return printLabels(labelsOf(day), { about: { title: `Labels, ${dateInWords(day.date)}`, day }, sheet });
}

interface LabelPaper {
  readonly about: PaperAbout;
  readonly sheet: LabelSheet;
  /** Where the first goes on a sheet of which some are gone: 0 is the upper left, and where left out. */
  readonly firstPlace?: number;
}

/** Labels one after the other along the rows, as many sheets as they take; a page that says so where there are none. */
export function printLabels(
  labels: readonly Label[],
  { about, sheet, firstPlace = 0 }: LabelPaper,
): Promise<Uint8Array> {
  return printPaper(about, (pen) => {
    if (labels.length === 0) drawNone(pen, about);
    labels.forEach((label, index) => {
      const place = (firstPlace + index) % (sheet.columns * sheet.rows);
      if (index === 0 || place === 0) pen.doc.addPage();
      drawLabel(pen, label, labelFrame(sheet, place));
    });
  });
}

/** What stands on a label. */
export interface Label {
  readonly player: string;
  readonly setName: string;
  readonly gauges: string;
  readonly order: string;
  readonly origin: string;
  readonly shop: string;
  readonly code: string;
}

function labelsOf(day: Day): Label[] {
  const orders = new Map(day.orders.map((order) => [order.line, order]));
  return day.roll.sets.flatMap((set) => {
    const order = orders.get(set.line);
    invariant(order, `line ${set.line} is packed but not among the day's orders`);
    return Array.from({ length: set.quantity }, (_, copy) => label(day, set, order, copy + 1));
  });
}

const label = (day: Day, set: PackedSet, order: DayOrder, copy: number): Label => ({
  player: set.player,
  setName: set.setName,
  gauges: gaugesInWords(order.strings.map((string) => string.spec)),
  order: `Order ${set.orderId} · ${copy} of ${set.quantity} · ${dateInWords(day.date)}`,
  origin: originInWords(order),
  shop: shopOnLabel(day.shop),
  code: set.labelCode,
});

/** The warning first: of a long name the end is cut off. */
export const shopOnLabel = ({ name, invented }: Pick<Day['shop'], 'name' | 'invented'>): string =>
  invented ? `invented: ${name}` : name;

function originInWords(order: DayOrder): string {
  if (order.readyAt === 'now') return 'Strings from the shelf';
  const { lotIds, date } = order.readyAt;
  return `Made in ${listInWords(lotIds)}, ready ${dateInWords(date)}`;
}

/** All words are one leaf of structure; the bars are an ornament, for they say what the words say. */
function drawLabel(pen: Pen, label: Label, frame: Frame): void {
  const lines = linesOf(label);
  const textHeight = lines.reduce((sum, [, style]) => sum + lineHeight(style), 0);
  const top = frame.y + textHeight + CODE_GAP;
  const code = layCode(label, { ...frame, y: top, height: frame.y + frame.height - top });
  pen.tag('P', () => {
    let y = frame.y;
    for (const [text, style] of lines) {
      pen.line(text, { ...frame, y }, style);
      y += lineHeight(style);
    }
    const codeWidth = pen.widthOf(label.code, TINY) + CODE_GAP;
    const { letters } = code;
    pen.line(label.code, letters, TINY);
    const beside = { ...letters, x: letters.x + codeWidth, width: letters.width - codeWidth };
    pen.line(label.shop, beside, TINY, 'right');
  });
  pen.ornament(() => drawCodeSymbol(pen, code.symbol, code.at));
}

const linesOf = (label: Label): [string, TypeStyle][] => [
  [label.player, TYPE.strong],
  [label.setName, SET_NAME],
  [label.gauges, TYPE.strong],
  [label.order, TYPE.small],
  [label.origin, TYPE.small],
];

interface LaidCode {
  readonly symbol: CodeSymbol;
  readonly at: {
    readonly x: number;
    readonly y: number;
    readonly moduleWidth: number;
    readonly moduleHeight: number;
  };
  /** Where it stands in letters what the code says. */
  readonly letters: { readonly x: number; readonly y: number; readonly width: number };
}

/** The code fills the foot of the label; bars lie over their letters, a square stands to their right. */
function layCode(label: Label, room: Frame): LaidCode {
  // The quiet zone of a bar code lies in the padding: its bars begin where the text does.
  const symbol = codeSymbol(label.code, Math.floor(room.width / MODULE_WIDTH));
  const letters = { ...room, y: room.y + room.height - lineHeight(TINY) };
  if (symbol.kind === 'code-128') {
    const moduleHeight = room.height - lineHeight(TINY) - 1;
    return { symbol, letters, at: { x: room.x, y: room.y, moduleWidth: MODULE_WIDTH, moduleHeight } };
  }
  const side = room.height / (symbol.rows + 2 * symbol.quietModules);
  const quiet = symbol.quietModules * side;
  const x = room.x + room.width - room.height + quiet;
  return {
    symbol,
    letters: { ...letters, width: room.width - room.height },
    at: { x, y: room.y + quiet, moduleWidth: side, moduleHeight: side },
  };
}

function drawNone(pen: Pen, about: PaperAbout): void {
  const pages = new Pages(pen, about);
  pages.newPage();
  pages.heading('Labels', 'H1');
  pages.paragraph('There are none: no set is on the packing roll of this day.', TYPE.lead);
  pages.finish();
}

const SET_NAME: TypeStyle = { ...TYPE.body, size: 8 };
/** White between words and bars, and between the code's letters and the shop. */
const CODE_GAP = mm(1);
const TINY: TypeStyle = { face: 'regular', size: 6, ink: INK.quiet };
