import {
  endInWords,
  leanedOnInWords,
  lengthInBoth,
  setPointInWords,
  sizeInBoth,
  whirlInWords,
} from '../contract/index.js';
import type { SetUpSheet } from '../core/winding/index.js';
import { drawSection } from './draw-section.js';
import { GAP, INK, mm, RULE, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/** Core or plain wire: which, how long to cut, which end, how tight; the string's section stands beside it. */
export function drawCore(pages: Pages, sheet: SetUpSheet): void {
  const { pen } = pages;
  pen.ornament(() =>
    pen.rule(pages.here(), { x: pages.left + pages.width, y: pages.y }, RULE.heavy, INK.text),
  );
  pages.y += GAP.small;
  const top = pages.y;
  const at = { x: pages.left, y: top, width: pages.width * TEXT_SHARE };
  let y = top;
  pen.tag('H2', () => pen.line(headingOf(sheet), at, TYPE.heading));
  y += lineHeight(TYPE.heading);
  pen.tag('P', () => pen.line(sizeInWords(sheet.core), { ...at, y }, TYPE.lead));
  y += lineHeight(TYPE.lead);
  // On the bench the cut is the whole setting.
  const cut = sheet.kind === 'cut' ? TYPE.huge : TYPE.large;
  pen.tag('P', () => pen.figure(`Cut to ${lengthInBoth(sheet.core.cutLengthM)}`, { ...at, y }, cut));
  y += lineHeight(cut);
  for (const sentence of sentencesOf(sheet)) {
    pen.tag('P', () => {
      y += pen.lines(sentence, { ...at, y }, TYPE.body);
    });
  }
  const x = at.x + at.width + GAP.section;
  const height = Math.max(SECTION_HEIGHT, y - top);
  drawSection(pen, sheet, { x, y: top, width: pages.left + pages.width - x, height: SECTION_HEIGHT });
  pages.y = top + height + GAP.small;
  if (sheet.whirl) {
    const sentence = `Whirl: ${whirlInWords(sheet.whirl)}`;
    pen.tag('P', () => {
      pages.y += pen.lines(sentence, pages.here(), TYPE.body);
    });
  }
  pages.y += GAP.close;
}

const headingOf = ({ kind, core }: SetUpSheet): string =>
  `${kind === 'cut' ? 'Plain wire' : 'Core'} · wire ${core.wireId}`;

const sizeInWords = ({ shape, sizeM }: SetUpSheet['core']): string =>
  shape === 'hex' ? `hexagon, ${sizeInBoth(sizeM)} across flats` : `round, ${sizeInBoth(sizeM)}`;

function sentencesOf(sheet: SetUpSheet): string[] {
  const side =
    sheet.positions === 2 ? 'two strings at once, both positions set alike' : 'one string at a time';
  return [
    `End: ${endInWords(sheet.core.end)}. ${capitalised(side)}; ${Math.round(sheet.cycleSeconds)} s a cycle, ${Math.round(sheet.setUpMinutes)} min to set up.`,
    ...(sheet.coreTension
      ? [
          `Core tension: ${setPointInWords(sheet.coreTension)} ${leanedOnInWords(sheet.coreTension, 1)}`.trim(),
        ]
      : []),
  ];
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const TEXT_SHARE = 0.6;
const SECTION_HEIGHT = mm(34);
