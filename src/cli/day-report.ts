import {
  clockInWords,
  countInWords,
  dateInWords,
  daysInWords,
  lateInWords,
  orderFaultLine,
  placementInWords,
  unmadeInWords,
  warningInWords,
  wholeStringInWords,
} from '../contract/index.js';
import type { Day, WirePull } from '../core/day/index.js';
import { byText } from '../core/foundation/index.js';
import { grossesFromStrings } from '../core/planning/index.js';
import { formatMoney } from '../core/units/index.js';
import { textTable } from './table.js';
import type { WrittenFile } from './write-day.js';

export interface ReportPlace {
  readonly ordersPath: string;
  readonly written: readonly WrittenFile[];
}

/** A day's work for a person at a terminal. */
export function dayReport(day: Day, place: ReportPlace): string {
  const parts = [
    heading(day),
    capacityPart(day),
    planPart(day),
    latePart(day),
    tellPart(day),
    wirePart(day),
    unmadePart(day),
    packingPart(day),
    costsPart(day),
    writtenPart(place),
    faultsPart(day, place),
  ];
  return parts.filter((part) => part !== '').join('\n\n');
}

function heading({ shop, date, orders, faults }: Day): string {
  const count = new Set([...orders.map(({ line }) => line), ...faults.map(({ line }) => line)]).size;
  const bad = new Set(faults.map(({ line }) => line)).size;
  const invented = shop.invented ? ' (an invented workshop)' : '';
  return `${shop.name}${invented}, ${dateInWords(date)}\n${countInWords(count, 'line')}: ${orders.length} turned into strings, ${bad} with faults.`;
}

function capacityPart({ plan }: Day): string {
  return titled(
    'Machines today',
    textTable(plan.machines, [
      { heading: 'machine', cell: ({ name }) => name },
      {
        heading: 'busy',
        cell: ({ busyShareToday }) => `${Math.round(busyShareToday * 100)} %`,
        align: 'right',
      },
      { heading: 'good strings', cell: ({ stringsToday }) => String(stringsToday), align: 'right' },
      {
        heading: 'grosses',
        cell: ({ stringsToday }) => grossesFromStrings(stringsToday).toFixed(1),
        align: 'right',
      },
    ]),
  );
}

function planPart(day: Day): string {
  const names = machineNames(day);
  const today = day.plan.runs.filter(({ setUpFrom }) => setUpFrom.date === day.date);
  if (today.length === 0) return titled('Plan', nothingToday(day));
  const later = day.plan.runs.length - today.length;
  return titled(
    `Plan: ${countInWords(today.length, 'run')} to start today${later > 0 ? `, ${later} on later days` : ''}`,
    textTable(
      today.toSorted((a, b) => byText(a.machineId, b.machineId)),
      [
        { heading: 'machine', cell: ({ machineId }) => names(machineId), widest: 24 },
        { heading: 'set up', cell: ({ setUpFrom }) => clockInWords(setUpFrom, day.date) },
        { heading: 'run', cell: ({ runFrom }) => clockInWords(runFrom, day.date) },
        { heading: 'until', cell: ({ to }) => clockInWords(to, day.date) },
        { heading: 'strings', cell: ({ quantity }) => String(quantity), align: 'right' },
        { heading: 'what', cell: ({ stringKey }) => wholeStringInWords(stringKey), widest: 46 },
        { heading: 'lot', cell: ({ lotId }) => lotId },
        { heading: 'why here', cell: ({ reason }) => placementInWords(reason), widest: 60 },
      ],
    ),
  );
}

function nothingToday({ plan }: Day): string {
  const [first] = plan.runs;
  return first
    ? `No run starts today. ${countInWords(plan.runs.length, 'run')} on later days, the first on ${dateInWords(first.setUpFrom.date)}.`
    : 'Nothing needs to be wound or cut.';
}

function latePart(day: Day): string {
  const late = day.orders.filter(({ daysLate }) => daysLate > 0);
  if (late.length === 0) return titled('Late', 'No order will be late.');
  const names = machineNames(day);
  return titled(
    `Late: ${countInWords(late.length, 'order')}`,
    textTable(late, [
      { heading: 'order', cell: ({ orderId }) => orderId },
      { heading: 'player', cell: ({ player }) => player, widest: 24 },
      { heading: 'set', cell: ({ setName }) => setName, widest: 34 },
      { heading: 'due', cell: ({ due }) => due },
      { heading: 'ready', cell: ({ readyAt }) => (readyAt === 'now' ? 'now' : readyAt.date) },
      { heading: 'late by', cell: ({ daysLate }) => daysInWords(daysLate), align: 'right' },
      { heading: 'why', cell: ({ lateBecause }) => (lateBecause ? lateInWords(lateBecause, names) : '') },
    ]),
  );
}

/** What the people who ordered should hear before their strings are made. */
function tellPart({ orders }: Day): string {
  const told = orders.flatMap((order) => order.warnings.map((warning) => ({ order, warning })));
  if (told.length === 0) return '';
  return titled(
    'To tell the players',
    textTable(told, [
      { heading: 'order', cell: ({ order }) => order.orderId },
      { heading: 'player', cell: ({ order }) => order.player, widest: 24 },
      { heading: 'what', cell: ({ warning }) => warningInWords(warning) },
    ]),
  );
}

interface WireRow {
  readonly pull: WirePull;
  readonly spool?: WirePull['spools'][number];
}

function wirePart({ wirePulls }: Day): string {
  if (wirePulls.length === 0) return '';
  const rows: readonly WireRow[] = wirePulls.flatMap((pull): readonly WireRow[] =>
    pull.spools.length === 0 ? [{ pull }] : pull.spools.map((spool) => ({ pull, spool })),
  );
  return titled(
    'Wire to pull for today',
    textTable(rows, [
      { heading: 'wire', cell: ({ pull }) => pull.wireId },
      { heading: 'spool', cell: ({ spool }) => spool?.spoolId ?? 'none' },
      { heading: 'lot', cell: ({ spool }) => spool?.lot ?? '' },
      { heading: 'take kg', cell: ({ spool }) => (spool ? spool.takeKg.toFixed(3) : ''), align: 'right' },
      { heading: 'leaves kg', cell: ({ spool }) => (spool ? spool.leavesKg.toFixed(3) : ''), align: 'right' },
      {
        heading: 'short kg',
        cell: ({ pull }) => (pull.shortKg > 0 ? pull.shortKg.toFixed(3) : ''),
        align: 'right',
      },
    ]),
  );
}

function unmadePart({ unmade }: Day): string {
  if (unmade.length === 0) return '';
  return titled(
    'Bins that stay low',
    textTable(unmade, [
      { heading: 'string', cell: ({ stringKey }) => wholeStringInWords(stringKey) },
      { heading: 'wanted', cell: ({ quantity }) => String(quantity), align: 'right' },
      { heading: 'why', cell: unmadeInWords },
    ]),
  );
}

function packingPart({ roll }: Day): string {
  const now = roll.sets.filter(({ state }) => state === 'pack-now');
  const strings = roll.stops.flatMap(({ picks }) => picks).reduce((sum, { count }) => sum + count, 0);
  return titled(
    'Packing roll',
    roll.sets.length === 0
      ? 'Nothing can be packed today.'
      : `${countInWords(now.length, 'order')} can be packed now, ${roll.sets.length - now.length} more once today's runs are done. One walk: ${countInWords(roll.stops.length, 'bin')}, ${countInWords(strings, 'string')}.`,
  );
}

function costsPart({ costs, shop }: Day): string {
  const rows = [
    ['wire', costs.wireMinor],
    ['ends', costs.endsMinor],
    ['packs', costs.packMinor],
    ['labour', costs.labourMinor],
    ['overhead', costs.overheadMinor],
    ['scrap', costs.scrapMinor],
    ['together', costs.totalMinor],
  ] as const;
  return titled(
    "Cost of today's runs and packing",
    textTable(rows, [
      { heading: 'part', cell: ([part]) => part },
      { heading: 'cost', cell: ([, minor]) => formatMoney(minor, shop), align: 'right' },
    ]),
  );
}

const writtenPart = ({ written }: ReportPlace): string =>
  written.length === 0
    ? ''
    : titled('Written', written.map(({ path, holds }) => `${path}: ${holds}`).join('\n'));

const faultsPart = ({ faults }: Day, { ordersPath }: ReportPlace): string =>
  faults.length === 0
    ? ''
    : titled(`Faults: ${faults.length}`, faults.map((fault) => orderFaultLine(ordersPath, fault)).join('\n'));

const titled = (title: string, body: string): string => `${title}\n${body}`;

const machineNames = ({ plan }: Day): ((machineId: string) => string) => {
  const names = new Map(plan.machines.map(({ machineId, name }) => [machineId, name]));
  return (machineId) => names.get(machineId) ?? machineId;
};
