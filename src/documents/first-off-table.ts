import { firstOffInWords, protocolInWords } from '../contract/index.js';
import { formatMillimetres } from '../core/units/index.js';
import type { SetUpSheet } from '../core/winding/index.js';
import { GAP, INK, mm, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/** The strings to measure before the rest is made: one empty box for every reading, to fill in by pencil. */
export function drawFirstOff(pages: Pages, sheet: SetUpSheet): void {
  const { pen } = pages;
  const { strings, placesFromEndM, rotationsDeg } = sheet.firstOff;
  const reason = pen.wrap(reasonOf(sheet), pages.width, TYPE.small).length * lineHeight(TYPE.small);
  const rowHeight = rowHeightFor(pages.roomLeft - FIXED_HEIGHT - reason, strings);
  pages.makeRoom(FIXED_HEIGHT + reason + strings * rowHeight);
  pen.ornament(() =>
    pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.heavy, INK.text),
  );
  pages.y += GAP.small;
  pen.tag('H2', () => pen.line(headingOf(sheet), pages.here(), TYPE.heading));
  pages.y += lineHeight(TYPE.heading);
  pen.tag('P', () => {
    pages.y += pen.lines(reasonOf(sheet), pages.here(), TYPE.small);
  });
  pages.y += GAP.small;
  const places = placesFromEndM.map((placeM) => `${formatMillimetres(placeM, 0)} mm`);
  pen.inGroup('Table', () => {
    drawHeadings(pages, places, rotationsDeg);
    for (let string = 1; string <= strings; string++) {
      drawRow(pages, `String ${string}`, places.length * rotationsDeg.length, rowHeight);
    }
  });
}

const reasonOf = ({ firstOff }: SetUpSheet): string =>
  `${protocolInWords(firstOff)} ${firstOffInWords(firstOff.why)}`;

const headingOf = ({ firstOff }: SetUpSheet): string =>
  `Measure first: ${firstOff.strings} strings, ${firstOff.placesFromEndM.length} places from the end, ${firstOff.rotationsDeg.length} turns in the micrometer`;

/** As high as the page allows, between what a pencil needs and what looks sane. */
const rowHeightFor = (room: number, strings: number): number =>
  Math.min(MOST_ROW, Math.max(LEAST_ROW, room / strings));

function drawHeadings(pages: Pages, places: readonly string[], rotationsDeg: readonly number[]): void {
  const { pen } = pages;
  const columns = places.length * rotationsDeg.length;
  const width = readingWidth(pages, columns);
  pen.inGroup('TR', () => {
    pen.tag('TH', () => pen.line('Reading in', { ...pages.here(), width: NAME_WIDTH }, TYPE.small));
    places.forEach((place, index) => {
      const x = readingsFrom(pages) + index * rotationsDeg.length * width;
      const at = { x, y: pages.y, width: rotationsDeg.length * width };
      pen.tag('TH', () => pen.line(place, at, TYPE.strong, 'centre'));
    });
  });
  pages.y += lineHeight(TYPE.strong);
  pen.inGroup('TR', () => {
    pen.tag('TH', () => pen.line('thou / mm', { ...pages.here(), width: NAME_WIDTH }, TYPE.small));
    for (let column = 0; column < columns; column++) {
      const at = { x: readingsFrom(pages) + column * width, y: pages.y, width };
      const turn = `${rotationsDeg[column % rotationsDeg.length]}°`;
      pen.tag('TH', () => pen.line(turn, at, TYPE.body, 'centre'));
    }
    const last = { x: readingsFrom(pages) + columns * width, y: pages.y, width };
    pen.tag('TH', () => pen.line('Mean', last, TYPE.strong, 'centre'));
  });
  pages.y += lineHeight(TYPE.body);
}

function drawRow(pages: Pages, name: string, readings: number, height: number): void {
  const { pen } = pages;
  const width = readingWidth(pages, readings);
  pen.inGroup('TR', () => {
    const y = pages.y + (height - lineHeight(TYPE.strong)) / 2;
    pen.tag('TH', () => pen.line(name, { x: pages.left, y, width: NAME_WIDTH }, TYPE.strong));
    for (let column = 0; column <= readings; column++) {
      const box = { x: readingsFrom(pages) + column * width, y: pages.y, width, height };
      pen.tag('TD', () => pen.box(box, column === readings ? RULE.heavy : RULE.line, INK.text));
    }
  });
  pages.y += height;
}

const readingsFrom = (pages: Pages): number => pages.left + NAME_WIDTH;

/** Readings and their mean share what the string's name leaves. */
const readingWidth = (pages: Pages, readings: number): number =>
  Math.min(MOST_WIDTH, (pages.width - NAME_WIDTH) / (readings + 1));

const NAME_WIDTH = mm(22);
const MOST_WIDTH = mm(26);
const LEAST_ROW = mm(5.5);
const MOST_ROW = mm(12);
const FIXED_HEIGHT =
  2 * GAP.small + lineHeight(TYPE.heading) + lineHeight(TYPE.strong) + lineHeight(TYPE.body) + RULE.heavy;
