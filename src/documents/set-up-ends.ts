import {
  lengthWantedInWords,
  pullInWords,
  tailInWords,
  toPullInWords,
  twistsInWords,
  twistsWhyInWords,
  whipInWords,
} from '../contract/index.js';
import type { EndSheet } from '../core/winding/index.js';
import { GAP, INK, mm, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';
import { type Column, drawTable } from './table.js';

/** How the end of a plain string is made, what is checked of it, and boxes for what is found. */
export function drawEnds(pages: Pages, ends: EndSheet): void {
  const { pen } = pages;
  pages.makeRoom(HEIGHT);
  pen.ornament(() =>
    pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.heavy, INK.text),
  );
  pages.y += GAP.small;
  pen.tag('H2', () => pen.line('The end, and what to check', pages.here(), TYPE.heading));
  pages.y += lineHeight(TYPE.heading);
  pen.tag('P', () => pen.figure(`Twist ${twistsInWords(ends)}`, pages.here(), TYPE.large));
  pages.y += lineHeight(TYPE.large);
  for (const sentence of sentencesOf(ends)) {
    pen.tag('P', () => {
      pages.y += pen.lines(sentence, pages.here(), TYPE.body);
    });
  }
  pages.y += GAP.small;
  drawTable(
    pages,
    BOXES,
    Array.from({ length: ends.toPull.pieces }, (_, at) => `End ${at + 1}`),
  );
}

function sentencesOf(ends: EndSheet): readonly string[] {
  return [
    twistsWhyInWords(ends),
    `Length: ${lengthWantedInWords(ends)}. Tail: ${tailInWords(ends)}. The ball or eye sits straight in its end.`,
    `Pull: ${pullInWords(ends.pull)}`,
    toPullInWords(ends.toPull),
    ...(ends.pull ? [whipInWords(ends.pull)] : []),
  ];
}

/** Empty, to be filled in by pencil. */
const blank = (heading: string): Column<string> => ({ heading, share: 2, cell: () => '' });
const box = (heading: string): Column<string> => ({ heading, share: 2, cell: () => 'tick' });

const BOXES: readonly Column<string>[] = [
  { heading: 'Checked', share: 2, style: TYPE.strong, cell: (name) => name },
  blank('Length, mm'),
  blank('Turns'),
  blank('Tail, mm'),
  box('Sits straight'),
  blank('Pulled to, N'),
  box('Held'),
  blank('Gave way at'),
];

const HEIGHT = mm(52);
