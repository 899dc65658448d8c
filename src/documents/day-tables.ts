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
  weight,
} from '../contract/index.js';
import type { Day, DayCosts, DayOrder, DayRun, UnmadeLot, WirePull } from '../core/day/index.js';
import type { OrderFault } from '../core/orders/index.js';
import { formatMoney } from '../core/units/index.js';
import { TYPE } from './look.js';
import type { Column } from './table.js';

export const FAULT_COLUMNS: readonly Column<OrderFault>[] = [
  { heading: 'Line', share: 7, style: TYPE.strong, cell: (fault) => String(fault.line) },
  { heading: 'Order', share: 14, cell: (fault) => fault.orderId ?? '' },
  { heading: 'Column', share: 13, cell: (fault) => fault.column ?? '' },
  { heading: 'What is wrong', share: 33, cell: (fault) => orderFaultWords(fault).what },
  { heading: 'What to do', share: 33, cell: (fault) => orderFaultWords(fault).mend },
];

export function lateColumns(day: Day): readonly Column<DayOrder>[] {
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

export const runColumns = (day: Day): readonly Column<DayRun>[] => [
  { heading: 'Lot', share: 11, style: TYPE.strong, cell: (run) => run.lotId },
  { heading: 'String', share: 30, cell: (run) => stringInWords(run.stringKey) },
  { heading: 'Good', share: 7, align: 'right', style: TYPE.strong, cell: (run) => String(run.quantity) },
  { heading: 'Scrap', share: 7, align: 'right', cell: (run) => String(Math.ceil(run.scrapStrings)) },
  { heading: 'Set up', share: 18, cell: (run) => clockInWords(run.setUpFrom, day.date) },
  { heading: 'Run to', share: 18, cell: (run) => clockInWords(run.to, day.date) },
  { heading: 'Why here', share: 21, style: TYPE.small, cell: (run) => placementInWords(run.reason) },
];

function stringInWords(key: string): string {
  const { short, material } = stringKeyInWords(key);
  return [short, material].filter(Boolean).join(', ');
}

function machineNames(day: Day): (machineId: string) => string {
  const names = new Map(day.plan.machines.map(({ machineId, name }) => [machineId, name]));
  return (machineId) => names.get(machineId) ?? machineId;
}

export const WIRE_COLUMNS: readonly Column<WirePull>[] = [
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
      (spool) => `${spool.spoolId} (${spool.lot}): ${weight(spool.takeKg)}, ${restInWords(spool.leavesKg)}`,
    )
    .join('; ');
}

export const UNMADE_COLUMNS: readonly Column<UnmadeLot>[] = [
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

export const warningsOf = (order: DayOrder): Told[] =>
  order.warnings.map((warning) => ({ order, sentence: warningInWords(warning) }));

export const WARNING_COLUMNS: readonly Column<Told>[] = [
  { heading: 'Order', share: 13, style: TYPE.strong, cell: ({ order }) => order.orderId },
  { heading: 'Player', share: 25, cell: ({ order }) => order.player },
  { heading: 'What', share: 62, cell: ({ sentence }) => sentence },
];

interface CostRow {
  readonly name: string;
  readonly minor: number;
}

export const costRows = (costs: DayCosts): CostRow[] => [
  { name: 'Wire', minor: costs.wireMinor },
  { name: 'Ends', minor: costs.endsMinor },
  { name: 'Packs', minor: costs.packMinor },
  { name: 'Labour', minor: costs.labourMinor },
  { name: 'Overhead', minor: costs.overheadMinor },
  { name: 'Scrap', minor: costs.scrapMinor },
  { name: 'All together', minor: costs.totalMinor },
];

export const costColumns = (day: Day): readonly Column<CostRow>[] => [
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
