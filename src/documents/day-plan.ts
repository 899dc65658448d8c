import { countInWords, dateInWords } from '../contract/index.js';
import type { Day, DayOrder } from '../core/day/index.js';
import {
  costColumns,
  costRows,
  FAULT_COLUMNS,
  lateColumns,
  runColumns,
  UNMADE_COLUMNS,
  WARNING_COLUMNS,
  WIRE_COLUMNS,
  warningsOf,
} from './day-tables.js';
import { drawLanes } from './lanes.js';
import { TYPE } from './look.js';
import { Pages } from './page.js';
import { type PaperAbout, printPaper } from './paper.js';
import { type Column, drawTable } from './table.js';

/**
 * The day on paper: the lanes of the machines, what could not go on, what is late and why, every run and why
 * it stands there, the wire to fetch, what players should be told, and the costs.
 */
export function dayPlanPdf(day: Day): Promise<Uint8Array> {
  const about: PaperAbout = { title: `Day plan, ${dateInWords(day.date)}`, day };
  return printPaper(about, (pen) => {
    const pages = new Pages(pen, about);
    pages.newPage();
    pages.heading(`Plan for ${dateInWords(day.date)}`, 'H1');
    pages.paragraph(summaryOf(day), TYPE.lead);
    pages.heading('Machines');
    drawLanes(pages, day);
    drawPart(pages, 'Lines that could not go on', FAULT_COLUMNS, day.faults);
    drawPart(pages, 'Late, and why', lateColumns(day), day.orders.filter(isLate));
    drawRuns(pages, day);
    drawPart(pages, 'Wire to fetch', WIRE_COLUMNS, day.wirePulls);
    drawPart(pages, 'Bins that stay short', UNMADE_COLUMNS, day.unmade);
    drawPart(pages, 'To tell the players', WARNING_COLUMNS, day.orders.flatMap(warningsOf));
    drawPart(pages, 'What it costs', costColumns(day), costRows(day.costs));
    pages.finish();
  });
}

/** A part with nothing in it is left out. */
function drawPart<Row>(
  pages: Pages,
  heading: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
): void {
  if (rows.length === 0) return;
  pages.heading(heading);
  drawTable(pages, columns, rows);
}

/** A table for each machine, to be cut out and hung there. */
function drawRuns(pages: Pages, day: Day): void {
  for (const { machineId, name } of day.plan.machines) {
    const runs = day.plan.runs.filter((run) => run.machineId === machineId);
    drawPart(pages, `Runs on ${name}`, runColumns(day), runs);
  }
}

function summaryOf(day: Day): string {
  const sets = day.orders.reduce((sum, order) => sum + order.quantity, 0);
  const strings = day.plan.machines.reduce((sum, machine) => sum + machine.stringsToday, 0);
  const late = day.orders.filter(isLate).length;
  return [
    `${countInWords(day.orders.length, 'order')} for ${countInWords(sets, 'set')}, ${late === 0 ? 'none' : late} late.`,
    `${countInWords(day.sheets.length, 'run')} to start and ${countInWords(strings, 'good string')} to wind or cut today.`,
    day.faults.length === 0
      ? 'Every line of the file went on.'
      : `${countInWords(day.faults.length, 'fault')} to mend in the file.`,
  ].join(' ');
}

const isLate = (order: DayOrder): boolean => order.daysLate > 0;
