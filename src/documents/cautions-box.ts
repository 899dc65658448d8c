import { cautionInWords, looseTailInWords } from '../contract/index.js';
import type { SetUpSheet } from '../core/winding/index.js';
import { GAP, INK, mm, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/** The cautions in a heavy frame, before anything that a hand could act on. */
export function drawCautions(pages: Pages, sheet: Cautioned): void {
  if (sheet.cautions.length === 0) return;
  const { pen } = pages;
  const top = pages.y;
  pages.y += PADDING;
  const heading = { x: pages.left + INSET, y: pages.y, width: pages.width - 2 * INSET };
  pen.tag('H2', () => pen.line('Before your hands go near the machine', heading, TYPE.heading));
  pages.y += lineHeight(TYPE.heading) + GAP.small;
  pen.inGroup('L', () => {
    for (const entry of entriesOf(sheet)) drawEntry(pages, entry);
  });
  pages.y += PADDING - GAP.small;
  pen.ornament(() => {
    pen.box({ x: pages.left, y: top, width: pages.width, height: pages.y - top }, RULE.heavy, INK.accent);
    pen.fill({ x: pages.left, y: top, width: mm(2.5), height: pages.y - top }, INK.accent);
  });
  pages.y += GAP.close;
}

/** Whatever a hand is about to act by. */
type Cautioned = Pick<SetUpSheet, 'cautions' | 'looseTail'>;

interface Entry {
  readonly title: string;
  readonly sentence: string;
}

const entriesOf = (sheet: Cautioned): Entry[] =>
  sheet.cautions.map((caution) => {
    const { title, sentence } = cautionInWords(caution);
    if (caution !== 'wire-whip' || !sheet.looseTail) return { title, sentence };
    return { title, sentence: `${sentence} ${looseTailInWords(sheet.looseTail)}` };
  });

/** One under the other: a list that is read top down is read. */
function drawEntry(pages: Pages, entry: Entry): void {
  const { pen } = pages;
  const x = pages.left + INSET;
  const width = pages.width - 2 * INSET;
  pen.tag('LI', () => {
    pen.line(entry.title, { x, y: pages.y, width: TITLE_WIDTH - GAP.small }, TYPE.alarm);
    const beside = { x: x + TITLE_WIDTH, y: pages.y, width: width - TITLE_WIDTH };
    pages.y += pen.lines(entry.sentence, beside, TYPE.body) + GAP.small;
  });
}

const PADDING = mm(2);
const INSET = mm(5);
const TITLE_WIDTH = mm(34);
