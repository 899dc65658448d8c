import { GAP, INK, RULE, TYPE, type TypeStyle } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

export interface Column<Row> {
  readonly heading: string;
  /** Width in proportion to the other columns. */
  readonly share: number;
  readonly align?: 'left' | 'right';
  readonly style?: TypeStyle;
  /** What stands in the cell; `tick` is an empty box to tick with a pencil. */
  readonly cell: (row: Row) => string | 'tick';
}

/** A table whose rows go over pages whole, with its headings again at the top of each page. */
export function drawTable<Row>(pages: Pages, columns: readonly Column<Row>[], rows: readonly Row[]): void {
  const { pen } = pages;
  const places = columnPlaces(pages, columns);
  pen.inGroup('Table', () => {
    pages.makeRoom(2 * headHeight);
    pen.inGroup('TR', () => {
      drawHeadings(pages, places, (draw) => pen.tag('TH', draw));
    });
    pen.ornament(() => ruleAcross(pages, RULE.line, INK.text));
    for (const row of rows) {
      const cells = places.map((place) => layCell(pages, place, row));
      const height = Math.max(...cells.map((cell) => cell.height)) + 2 * PADDING;
      // Headings repeated on a later page are an ornament: a listener has heard them already.
      if (pages.makeRoom(height)) pen.ornament(() => repeatHeadings(pages, places));
      pen.inGroup('TR', () => {
        for (const cell of cells) pen.tag('TD', () => drawCell(pages, cell));
      });
      pages.y += height;
      pen.ornament(() => ruleAcross(pages, RULE.hair, INK.rule));
    }
  });
  pages.y += GAP.part;
}

interface PlacedColumn<Row> {
  readonly column: Column<Row>;
  readonly x: number;
  readonly width: number;
}

interface LaidCell<Row> extends PlacedColumn<Row> {
  readonly lines: readonly string[] | 'tick';
  readonly height: number;
}

function columnPlaces<Row>(pages: Pages, columns: readonly Column<Row>[]): PlacedColumn<Row>[] {
  const shares = columns.reduce((sum, column) => sum + column.share, 0);
  let x = pages.left;
  return columns.map((column) => {
    const full = (pages.width * column.share) / shares;
    const placed = { column, x, width: full - GUTTER };
    x += full;
    return placed;
  });
}

function layCell<Row>(pages: Pages, place: PlacedColumn<Row>, row: Row): LaidCell<Row> {
  const text = place.column.cell(row);
  if (text === 'tick') return { ...place, lines: 'tick', height: TICK };
  const style = styleOf(place.column);
  const lines = pages.pen.wrap(text, place.width, style, MOST_LINES);
  return { ...place, lines, height: Math.max(1, lines.length) * lineHeight(style) };
}

function drawCell<Row>(pages: Pages, cell: LaidCell<Row>): void {
  const y = pages.y + PADDING;
  if (cell.lines === 'tick') {
    pages.pen.box({ x: cell.x, y, width: TICK, height: TICK }, RULE.line, INK.text);
    return;
  }
  const style = styleOf(cell.column);
  cell.lines.forEach((line, index) => {
    const at = { x: cell.x, y: y + index * lineHeight(style), width: cell.width };
    pages.pen.line(line, at, style, cell.column.align);
  });
}

function drawHeadings<Row>(
  pages: Pages,
  places: readonly PlacedColumn<Row>[],
  each: (draw: () => void) => void,
): void {
  const y = pages.y + PADDING;
  for (const { column, x, width } of places) {
    each(() => pages.pen.line(column.heading, { x, y, width }, TYPE.smallStrong, column.align));
  }
  pages.y += headHeight;
}

function repeatHeadings<Row>(pages: Pages, places: readonly PlacedColumn<Row>[]): void {
  drawHeadings(pages, places, (draw) => draw());
  ruleAcross(pages, RULE.line, INK.text);
}

const ruleAcross = (pages: Pages, weight: number, ink: string): void =>
  pages.pen.rule({ x: pages.left, y: pages.y }, { x: pages.left + pages.width, y: pages.y }, weight, ink);

const styleOf = <Row>(column: Column<Row>): TypeStyle => column.style ?? TYPE.body;

const PADDING = 2.2;
const GUTTER = 9;
const TICK = 9;
/** Longer cells are cut short: a row must stay a row. */
const MOST_LINES = 12;
const headHeight = lineHeight(TYPE.smallStrong) + 2 * PADDING;
