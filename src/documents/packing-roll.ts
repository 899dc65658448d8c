import {
  countInWords,
  dateInWords,
  listInWords,
  stringKeyInWords,
  wholeStringInWords,
} from '../contract/index.js';
import type { Day, DayOrder, PackedSet, RollStop } from '../core/day/index.js';
import { GAP, INK, mm, RULE, TYPE } from './look.js';
import { Pages } from './page.js';
import { type PaperAbout, printPaper } from './paper.js';
import { lineHeight } from './pen.js';
import { type Column, drawTable } from './table.js';

/**
 * The packing roll: first the walk along the bins, each taken from once, then every set with its strings and
 * a box to tick for each.
 */
export function packingRollPdf(day: Day): Promise<Uint8Array> {
  const about: PaperAbout = { title: `Packing roll, ${dateInWords(day.date)}`, day };
  return printPaper(about, (pen) => {
    const pages = new Pages(pen, about);
    pages.newPage();
    pages.heading('Packing roll', 'H1');
    pages.paragraph(summaryOf(day), TYPE.lead);
    if (day.roll.stops.length > 0) {
      pages.heading('The walk');
      drawTable(pages, WALK_COLUMNS, day.roll.stops.flatMap(picksOf));
    }
    if (day.roll.sets.length > 0) drawSets(pages, day);
    pages.finish();
  });
}

function summaryOf({ roll }: Day): string {
  if (roll.sets.length === 0) return 'There is nothing to pack on this day.';
  const sets = roll.sets.reduce((sum, set) => sum + set.quantity, 0);
  const now = roll.sets.reduce((sum, set) => sum + (set.state === 'pack-now' ? set.quantity : 0), 0);
  return `${countInWords(sets, 'set')}: ${now} to pack now, ${sets - now} after winding. ${countInWords(roll.stops.length, 'bin')} to stop at.`;
}

interface WalkRow {
  readonly bin: string;
  readonly count: number;
  readonly stringKey: string;
  readonly forLines: readonly number[];
}

/** The bin is named at every pick: the next row may stand on another page. */
const picksOf = (stop: RollStop): WalkRow[] => stop.picks.map((pick) => ({ ...pick, bin: stop.binId }));

const WALK_COLUMNS: readonly Column<WalkRow>[] = [
  { heading: 'Bin', share: 16, style: TYPE.strong, cell: (row) => row.bin },
  { heading: '', share: 4, cell: () => 'tick' },
  { heading: 'Take', share: 7, align: 'right', style: TYPE.strong, cell: (row) => String(row.count) },
  { heading: 'String', share: 44, cell: (row) => wholeStringInWords(row.stringKey) },
  { heading: 'For lines', share: 29, style: TYPE.quiet, cell: (row) => row.forLines.join(', ') },
];

function drawSets(pages: Pages, day: Day): void {
  const orders = new Map(day.orders.map((order) => [order.line, order]));
  pages.heading('The sets');
  for (const set of day.roll.sets) drawSet(pages, set, orders.get(set.line));
}

/** A set is never torn across two pages. */
function drawSet(pages: Pages, set: PackedSet, order: DayOrder | undefined): void {
  const { pen } = pages;
  const rows = Math.ceil(set.strings.length / STRING_COLUMNS);
  const headHeight = lineHeight(TYPE.heading) + 2 * lineHeight(TYPE.body) + GAP.small;
  pages.makeRoom(headHeight + rows * STRING_ROW + GAP.part);
  const state = stateInWords(set, order);
  const stateWidth = Math.min(pages.width * 0.45, pen.widthOf(state, TYPE.strong) + 1);
  const left = { ...pages.here(), width: pages.width - stateWidth - GAP.part };
  const right = { ...left, x: pages.left + pages.width - stateWidth, width: stateWidth };
  pen.tag('H3', () => pen.line(set.player, left, TYPE.heading));
  pen.tag('P', () => {
    pen.line(state, right, TYPE.strong, 'right');
    drawWhatItIs(pages, set, pages.y + lineHeight(TYPE.heading));
    pages.y += headHeight;
    drawStrings(pages, set);
  });
  pages.y += rows * STRING_ROW + GAP.small;
  pen.ornament(() =>
    pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.hair, INK.rule),
  );
  pages.y += GAP.part;
}

function drawWhatItIs(pages: Pages, set: PackedSet, y: number): void {
  const times = set.quantity === 1 ? '1 set' : `${set.quantity} sets alike`;
  const from = `Order ${set.orderId} · line ${set.line} · ${kindsInWords(set)}`;
  const at = { ...pages.here(), y };
  pages.pen.line(`${times} · ${set.setName}`, at, TYPE.strong);
  pages.pen.line(from, { ...at, y: y + lineHeight(TYPE.body) }, TYPE.quiet);
}

function stateInWords(set: PackedSet, order: DayOrder | undefined): string {
  if (set.state === 'pack-now') return 'pack now';
  if (!order || order.readyAt === 'now') return 'after winding';
  return `after winding, ${dateInWords(order.readyAt.date)}: ${order.readyAt.lotIds.join(', ')}`;
}

/** What all its strings have in common, said once: `steel and phosphor bronze, ball end, 1000 mm`. */
function kindsInWords(set: PackedSet): string {
  const words = set.strings.map((string) => stringKeyInWords(string.stringKey));
  const materials = listInWords([...new Set(words.map((word) => word.material).filter(Boolean))]);
  const finishes = [...new Set(words.map((word) => word.finish).filter(Boolean))];
  return [materials, finishes.join(' or ')].filter(Boolean).join(', ');
}

function drawStrings(pages: Pages, set: PackedSet): void {
  const { pen } = pages;
  const width = pages.width / STRING_COLUMNS;
  set.strings.forEach((string, index) => {
    const x = pages.left + (index % STRING_COLUMNS) * width;
    const y = pages.y + Math.floor(index / STRING_COLUMNS) * STRING_ROW;
    pen.box({ x, y: y + 1, width: TICK, height: TICK }, RULE.line, INK.text);
    const times = set.quantity === 1 ? '' : `${set.quantity} × `;
    const what = `${string.position}: ${times}${stringKeyInWords(string.stringKey).short}`;
    const textWidth = width - TICK - GAP.part;
    const at = { x: x + TICK + 1.5 * GAP.small, y, width: textWidth * 0.58 };
    pen.line(what, at, TYPE.strong);
    pen.line(string.binId, { ...at, x: at.x + at.width + 2, width: textWidth * 0.42 - 4 }, TYPE.quiet);
  });
}

const STRING_COLUMNS = 3;
const STRING_ROW = mm(5);
const TICK = mm(3.2);
