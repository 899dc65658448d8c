import { type CardString, cardGauge } from '../contract/index.js';
import { type NeckLines, neckLines } from '../core/sets/index.js';
import { formatForce } from '../core/units/index.js';
import { GAP, INK, mm, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight, type Pen } from './pen.js';

/** The set as strings drawn to length over the neck, treble on top, the pull of each as a bar with a mark where it was wished. */
export function drawCardStrings(pages: Pages, strings: readonly CardString[]): void {
  const rowHeight = Math.min(MOST_ROW, MOST_HEIGHT / strings.length);
  const height = lineHeight(TYPE.small) + strings.length * rowHeight;
  pages.makeRoom(height + GAP.close + GAP.part);
  pages.y += GAP.close;
  const { pen } = pages;
  const drawing = layOut(pages, strings, rowHeight);
  pen.tag('Figure', () => pen.shape(() => drawNeckAndBars(pen, drawing)), altText(strings));
  pen.ornament(() => drawWords(pen, drawing));
  pages.y += height + GAP.part;
}

interface Drawing {
  readonly strings: readonly CardString[];
  readonly lines: NeckLines;
  /** Middle of each string's row. */
  readonly ys: readonly number[];
  readonly top: number;
  readonly names: { readonly x: number; readonly width: number };
  readonly neck: { readonly x: number; readonly width: number };
  readonly bars: { readonly x: number; readonly width: number; readonly perN: number };
}

function layOut({ left, width, y }: Pages, strings: readonly CardString[], rowHeight: number): Drawing {
  const neckWidth = (width - NAME_WIDTH) * NECK_SHARE - BETWEEN;
  const neck = { x: left + NAME_WIDTH, width: neckWidth };
  const barsX = neck.x + neckWidth + BETWEEN;
  const barsWidth = left + width - barsX;
  const largestN = Math.max(...strings.flatMap(({ tensionN, wishedTensionN }) => [tensionN, wishedTensionN]));
  const top = y + lineHeight(TYPE.small);
  return {
    strings,
    lines: neckLines(strings.map(({ speakingLengthM }) => speakingLengthM)),
    ys: strings.map((_, at) => top + (at + 0.5) * rowHeight),
    top: y,
    names: { x: left, width: NAME_WIDTH - GAP.close },
    neck,
    bars: { x: barsX, width: barsWidth, perN: (barsWidth - FIGURE_WIDTH) / largestN },
  };
}

function drawNeckAndBars(pen: Pen, { strings, lines, ys, neck, bars }: Drawing): void {
  const x = (share: number): number => neck.x + share * neck.width;
  const across = (shares: readonly number[], weight: number, ink: string): void => {
    for (let at = 1; at < shares.length; at++)
      pen.rule({ x: x(shares[at - 1]!), y: ys[at - 1]! }, { x: x(shares[at]!), y: ys[at]! }, weight, ink);
  };
  for (const shares of lines.frets) across(shares, RULE.hair, INK.rule);
  across(lines.nut, RULE.heavy, INK.text);
  across(lines.saddle, RULE.heavy, INK.text);
  strings.forEach(({ spec, tensionN, wishedTensionN }, at) => {
    const y = ys[at]!;
    const thickness = Math.max(RULE.line, spec.gaugeThou * POINTS_PER_THOU);
    pen.rule({ x: x(lines.nut[at]!), y }, { x: x(lines.saddle[at]!), y }, thickness, INK.text);
    if (spec.kind === 'wound')
      drawTurns(pen, { from: x(lines.nut[at]!), to: x(lines.saddle[at]!), y, thickness });
    pen.fill({ x: bars.x, y: y - BAR / 2, width: tensionN * bars.perN, height: BAR }, INK.rule);
    const mark = bars.x + wishedTensionN * bars.perN;
    pen.rule({ x: mark, y: y - BAR }, { x: mark, y: y + BAR }, RULE.heavy, INK.accent);
  });
}

interface Turned {
  readonly from: number;
  readonly to: number;
  readonly y: number;
  readonly thickness: number;
}

/** A wound string is told from a plain one by its turns. */
function drawTurns(pen: Pen, { from, to, y, thickness }: Turned): void {
  pen.shape((doc) => {
    doc
      .dash(1.2, { space: 1.2 })
      .lineWidth(thickness * 0.7)
      .strokeColor('#ffffff');
    doc.moveTo(from, y).lineTo(to, y).stroke();
  });
}

/** Everything written here stands in the table as well: a listener hears it there. */
function drawWords(pen: Pen, { strings, ys, top, names, neck, bars }: Drawing): void {
  pen.line('from nut to saddle', { ...neck, y: top }, TYPE.small);
  pen.line('pull, and pull wished for', { ...bars, y: top }, TYPE.small);
  strings.forEach(({ note, spec, tensionN }, at) => {
    const y = ys[at]! - lineHeight(TYPE.body) / 2;
    pen.line(note, { ...names, y }, TYPE.strong);
    pen.line(cardGauge(spec), { ...names, y }, TYPE.body, 'right');
    pen.line(formatForce(tensionN, 'N'), { ...bars, y }, TYPE.strong, 'right');
  });
}

const altText = (strings: readonly CardString[]): string =>
  `The strings to length from treble to bass, each with its pull: ${strings
    .map(
      ({ position, note, tensionN, wishedTensionN }) =>
        `string ${position}, ${note}, ${formatForce(tensionN, 'N')}, wished ${formatForce(wishedTensionN, 'N')}`,
    )
    .join('; ')}.`;

const MOST_ROW = mm(8.5);
const MOST_HEIGHT = mm(60);
const NAME_WIDTH = mm(32);
const NECK_SHARE = 0.6;
const BETWEEN = mm(6);
const FIGURE_WIDTH = mm(17);
const BAR = mm(2.6);
/** A string is drawn far thicker than to length, or a 9 could not be told from an 11. */
const POINTS_PER_THOU = 0.09;
