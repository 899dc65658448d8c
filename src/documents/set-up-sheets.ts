import { dateInWords } from '../contract/index.js';
import type { Day } from '../core/day/index.js';
import { drawCautions } from './cautions-box.js';
import { drawCoresToEnd } from './cores-to-end.js';
import { drawFirstOff } from './first-off-table.js';
import { TYPE } from './look.js';
import { Pages } from './page.js';
import { type PaperAbout, printPaper } from './paper.js';
import { drawCore } from './set-up-core.js';
import { drawEnds } from './set-up-ends.js';
import { drawExpected } from './set-up-expected.js';
import { drawSheetHead } from './set-up-head.js';
import { drawLayer } from './set-up-layer.js';

/**
 * One A4 page for every run that starts on the day, to hang at its machine: cautions first, then all
 * settings, what to expect and what to measure first. Of a plain string how its end is made and checked; the
 * cores that are ended at the bench stand on a page of their own.
 */
export function setUpSheetsPdf(day: Day): Promise<Uint8Array> {
  const about: PaperAbout = { title: `Set-up sheets, ${dateInWords(day.date)}`, day };
  return printPaper(about, (pen) => {
    const pages = new Pages(pen, about);
    if (day.sheets.length === 0) {
      pages.newPage();
      pages.heading('Set-up sheets', 'H1');
      pages.paragraph('There are none: no run starts on this day.', TYPE.lead);
    }
    const runs = new Map(day.plan.runs.map((run) => [run.lotId, run]));
    for (const sheet of day.sheets) {
      pages.newPage();
      pen.inGroup('Sect', () => {
        drawSheetHead(pages, sheet, runs.get(sheet.lotId), day.date);
        drawCautions(pages, sheet);
        drawCore(pages, sheet);
        if (sheet.ends?.of === 'plain-string') drawEnds(pages, sheet.ends);
        for (const index of sheet.layers.keys()) drawLayer(pages, sheet, index);
        drawExpected(pages, sheet);
        drawFirstOff(pages, sheet);
      });
    }
    drawCoresToEnd(pages, day.sheets);
    pages.finish();
  });
}
