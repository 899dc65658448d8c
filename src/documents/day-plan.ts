import {
  clockInWords,
  dateInWords,
  daysInWords,
  lateInWords,
  orderFaultWords,
  placementInWords,
  stringKeyInWords,
  unmadeInWords,
  warningInWords,
} from '../contract/index.js';
import type { Day, DayCosts, DayOrder, DayRun, UnmadeLot, WirePull } from '../core/day/index.js';
import type { OrderFault } from '../core/orders/index.js';
import { formatMoney } from '../core/units/index.js';
import { weight } from './amounts.js';
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
    drawPart(pages, 'Runs', runColumns(day), day.plan.runs);
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

function summaryOf(day: Day): string {
  const sets = day.orders.reduce((sum, order) => sum + order.quantity, 0);
  const strings = day.plan.machines.reduce((sum, machine) => sum + machine.stringsToday, 0);
  const late = day.orders.filter(isLate).length;
  return [
    `${counted(day.orders.length, 'order')} for ${counted(sets, 'set')}, ${late === 0 ? 'none' : late} late.`,
    `${counted(day.sheets.length, 'run')} to start and ${counted(strings, 'good string')} to wind or cut today.`,
    day.faults.length === 0
      ? 'Every line of the file went on.'
      : `${counted(day.faults.length, 'fault')} to mend in the file.`,
  ].join(' ');
}

const isLate = (order: DayOrder): boolean => order.daysLate > 0;

const FAULT_COLUMNS: readonly Column<OrderFault>[] = [
  { heading: 'Line', share: 7, style: TYPE.strong, cell: (fault) => String(fault.line) },
  { heading: 'Order', share: 14, cell: (fault) => fault.orderId ?? '' },
  { heading: 'Column', share: 13, cell: (fault) => fault.column ?? '' },
  { heading: 'What is wrong', share: 33, cell: (fault) => orderFaultWords(fault).what },
  { heading: 'What to do', share: 33, cell: (fault) => orderFaultWords(fault).mend },
];

function lateColumns(day: Day): readonly Column<DayOrder>[] {
  const machineName = machineNames(day);
  return [
    { heading: 'Order', share: 12, style: TYPE.strong, cell: (order) => order.orderId },
    { heading: 'Player', share: 19, cell: (order) => order.player },
    { heading: 'Due', share: 17, cell: (order) => dateInWords(order.due) },
    { heading: 'Ready', share: 17, cell: (order) => readyInWords(order, day) },
    { heading: 'Late', share: 9, style: TYPE.alarm, cell: (order) => daysInWords(order.daysLate) },
    {
      heading: 'Why',
      share: 26,
      cell: (order) => (order.lateBecause ? lateInWords(order.lateBecause, machineName) : ''),
    },
  ];
}

const readyInWords = (order: DayOrder, day: Day): string =>
  dateInWords(order.readyAt === 'now' ? day.date : order.readyAt.date);

function runColumns(day: Day): readonly Column<DayRun>[] {
  const machineName = machineNames(day);
  return [
    { heading: 'Machine', share: 15, style: TYPE.strong, cell: (run) => machineName(run.machineId) },
    { heading: 'Lot', share: 12, cell: (run) => run.lotId },
    { heading: 'String', share: 22, cell: (run) => stringInWords(run.stringKey) },
    { heading: 'Good', share: 6, align: 'right', style: TYPE.strong, cell: (run) => String(run.quantity) },
    { heading: 'Scrap', share: 6, align: 'right', cell: (run) => String(Math.ceil(run.scrapStrings)) },
    { heading: 'Set up', share: 10, cell: (run) => clockInWords(run.setUpFrom, day.date) },
    { heading: 'Run to', share: 10, cell: (run) => clockInWords(run.to, day.date) },
    { heading: 'Why here', share: 23, style: TYPE.small, cell: (run) => placementInWords(run.reason) },
  ];
}

function stringInWords(key: string): string {
  const { short, material } = stringKeyInWords(key);
  return [short, material].filter(Boolean).join(', ');
}

function machineNames(day: Day): (machineId: string) => string {
  const names = new Map(day.plan.machines.map(({ machineId, name }) => [machineId, name]));
  return (machineId) => names.get(machineId) ?? machineId;
}

const WIRE_COLUMNS: readonly Column<WirePull>[] = [
  { heading: 'Wire', share: 18, style: TYPE.strong, cell: (pull) => pull.wireId },
  { heading: '', share: 4, cell: () => 'tick' },
  { heading: 'Needed', share: 12, align: 'right', cell: (pull) => weight(pull.neededKg) },
  { heading: 'Length', share: 11, align: 'right', cell: (pull) => `${Math.ceil(pull.neededM)} m` },
  { heading: 'From spools', share: 30, cell: spoolsInWords },
  {
    heading: 'Short',
    share: 10,
    style: TYPE.alarm,
    cell: (pull) => (pull.shortKg > 0 ? weight(pull.shortKg) : ''),
  },
  { heading: 'For lots', share: 15, style: TYPE.quiet, cell: (pull) => pull.runs.join(', ') },
];

function spoolsInWords(pull: WirePull): string {
  if (pull.spools.length === 0) return 'no spool has any';
  return pull.spools
    .map(
      (spool) =>
        `${spool.spoolId}, lot ${spool.lot}: ${weight(spool.takeKg)}, ${restInWords(spool.leavesKg)}`,
    )
    .join('; ');
}

const UNMADE_COLUMNS: readonly Column<UnmadeLot>[] = [
  { heading: 'String', share: 40, style: TYPE.strong, cell: (lot) => stringInWords(lot.stringKey) },
  { heading: 'Strings', share: 10, align: 'right', cell: (lot) => String(lot.quantity) },
  { heading: 'Why', share: 50, cell: unmadeInWords },
];

const restInWords = (leavesKg: number): string =>
  leavesKg > 0 ? `leaves ${weight(leavesKg)}` : 'empties it';

interface Told {
  readonly order: DayOrder;
  readonly sentence: string;
}

const warningsOf = (order: DayOrder): Told[] =>
  order.warnings.map((warning) => ({ order, sentence: warningInWords(warning) }));

const WARNING_COLUMNS: readonly Column<Told>[] = [
  { heading: 'Order', share: 13, style: TYPE.strong, cell: ({ order }) => order.orderId },
  { heading: 'Player', share: 25, cell: ({ order }) => order.player },
  { heading: 'What', share: 62, cell: ({ sentence }) => sentence },
];

interface CostRow {
  readonly name: string;
  readonly minor: number;
}

const costRows = (costs: DayCosts): CostRow[] => [
  { name: 'Wire', minor: costs.wireMinor },
  { name: 'Ends', minor: costs.endsMinor },
  { name: 'Packs', minor: costs.packMinor },
  { name: 'Labour', minor: costs.labourMinor },
  { name: 'Overhead', minor: costs.overheadMinor },
  { name: 'Scrap', minor: costs.scrapMinor },
  { name: 'All together', minor: costs.totalMinor },
];

const costColumns = (day: Day): readonly Column<CostRow>[] => [
  { heading: 'Part', share: 30, cell: (row) => row.name },
  {
    heading: 'Amount',
    share: 20,
    align: 'right',
    style: TYPE.strong,
    cell: (row) => formatMoney(row.minor, day.shop),
  },
  { heading: '', share: 50, cell: () => '' },
];

const counted = (count: number, thing: string): string => `${count} ${thing}${count === 1 ? '' : 's'}`;
