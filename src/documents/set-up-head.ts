import { clockInWords, stringKeyInWords } from '../contract/index.js';
import type { DayRun } from '../core/day/index.js';
import type { CalendarDate } from '../core/foundation/index.js';
import type { SetUpSheet } from '../core/winding/index.js';
import { GAP, TYPE } from './look.js';
import type { Pages } from './page.js';
import { lineHeight } from './pen.js';

/** Who is meant, largest on the page: the string on the left, the machine on the right. */
export function drawSheetHead(
  pages: Pages,
  sheet: SetUpSheet,
  run: DayRun | undefined,
  today: CalendarDate,
): void {
  const { pen } = pages;
  const words = stringKeyInWords(sheet.stringKey);
  const left = { ...pages.here(), width: pages.width * LEFT_SHARE };
  const right = { ...left, x: pages.left + left.width, width: pages.width - left.width };
  const second = pages.y + lineHeight(TYPE.large);
  const third = second + lineHeight(TYPE.lead);
  pen.tag('H1', () => pen.line(words.short, left, TYPE.large));
  pen.tag('P', () => pen.figure(sheet.machineName, right, TYPE.title, 'right'));
  pen.tag('P', () => {
    pen.line([words.material, words.finish].filter(Boolean).join(' · '), { ...left, y: second }, TYPE.lead);
    pen.line(countInWords(sheet), { ...left, y: third }, TYPE.lead);
  });
  pen.tag('P', () => {
    pen.line(sheet.lotId, { ...right, y: second }, TYPE.lead, 'right');
    pen.line(run ? timesInWords(run, today) : '', { ...right, y: third }, TYPE.lead, 'right');
  });
  const fourth = third + lineHeight(TYPE.lead);
  pen.tag('P', () => pen.line(`Recipe ${sheet.recipeId}`, { ...pages.here(), y: fourth }, TYPE.quiet));
  pages.y = fourth + lineHeight(TYPE.quiet) + GAP.small;
}

function countInWords(sheet: SetUpSheet): string {
  const scrap = sheet.expectedScrap > 0 ? `, about ${Math.ceil(sheet.expectedScrap)} more as scrap` : '';
  return `${sheet.quantity} good strings${scrap}`;
}

const timesInWords = (run: DayRun, today: CalendarDate): string =>
  `set up ${clockInWords(run.setUpFrom, today)} · run ${clockInWords(run.runFrom, today)} to ${clockInWords(run.to, today)}`;

const LEFT_SHARE = 0.5;
