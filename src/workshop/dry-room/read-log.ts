import type { ClimateColumn } from '../../contract/index.js';
import type { OrderFault, TableRow } from '../../core/orders/index.js';
import { readTable } from '../read-table.js';
import { refuse } from '../refusal.js';
import { isFahrenheit, type LogColumns, logColumns, missingColumns, withoutHead } from './log-columns.js';
import { type LogClock, orderOf, readMoment } from './read-moment.js';
import type { RoomReading } from './take-readings.js';

/** A row of a log, as understood. */
export interface LoggedReading extends RoomReading {
  readonly line: number;
}

export interface LogFault extends Omit<OrderFault, 'code'> {
  readonly code: string;
}

export interface ClimateLog {
  readonly headings: readonly { readonly heading: string; readonly samples: string[] }[];
  readonly columns: LogColumns;
  readonly ignored: readonly string[];
  readonly readings: readonly LoggedReading[];
  readonly faults: readonly LogFault[];
}

export interface LogText {
  readonly csv: string;
  readonly room: string | undefined;
  readonly told: LogColumns | undefined;
  /** What was said of files of this logger before. */
  readonly remembered: LogColumns;
  readonly clock: LogClock;
}

/** Takes the text of a climate log apart; refuses one that has no times, temperatures and humidities. */
export function readLog({ csv, room, told, remembered, clock }: LogText): ClimateLog {
  const table = readTable(new TextEncoder().encode(withoutHead(csv)));
  if (!table.ok) return refuse({ ...table.fault });
  const { headings, rows } = table.value;
  const unknown = Object.values(told ?? {}).filter((heading) => !headings.includes(heading));
  if (unknown.length > 0) refuse({ code: 'import.headings-missing', missing: unknown, headings });
  const columns = logColumns(headings, told ?? stillThere(remembered, headings));
  const missing = missingColumns(columns);
  if (missing.length > 0) refuse({ code: 'dry-room.columns-missing', missing, headings });
  if (columns.room === undefined && room === undefined) refuse({ code: 'dry-room.room-missing' });
  const dayFirst = clock.dayFirst ?? orderOfAll(rows, columns);
  const read = rows.map((row) => readRow(row, { columns, room, clock: { ...clock, dayFirst } }));
  const used = new Set(Object.values(columns));
  return {
    headings: headings.map((heading) => ({ heading, samples: samplesOf(rows, heading) })),
    columns,
    ignored: headings.filter((heading) => !used.has(heading)),
    readings: read.flatMap((row) => ('code' in row ? [] : [row])),
    faults: [...table.value.faults, ...read.flatMap((row) => ('code' in row ? [row] : []))],
  };
}

const MOST_SAMPLES = 3;

const samplesOf = (rows: readonly TableRow[], heading: string): string[] =>
  rows
    .slice(0, 50)
    .map(({ cells }) => cells[heading] ?? '')
    .filter((cell) => cell !== '')
    .slice(0, MOST_SAMPLES);

const stillThere = (remembered: LogColumns, headings: readonly string[]): LogColumns =>
  Object.fromEntries(Object.entries(remembered).filter(([, heading]) => headings.includes(heading)));

/** One date of a file that can be read one way only tells how all of them are meant, unless another says the opposite. */
function orderOfAll(rows: readonly TableRow[], columns: LogColumns): boolean | undefined {
  const heading = columns.date ?? columns.at ?? '';
  const orders = new Set(rows.map(({ cells }) => orderOf(cells[heading] ?? '')));
  orders.delete(undefined);
  return orders.size === 1 ? [...orders][0] : undefined;
}

interface RowParts {
  readonly columns: LogColumns;
  readonly room: string | undefined;
  readonly clock: LogClock;
}

function readRow(row: TableRow, { columns, room, clock }: RowParts): LoggedReading | LogFault {
  const cell = (column: ClimateColumn): string => (row.cells[columns[column] ?? ''] ?? '').trim();
  const fault = (column: ClimateColumn, code: string, read: string): LogFault => ({
    line: row.line,
    ...(columns[column] === undefined ? {} : { column: columns[column] }),
    read,
    code,
    facts: {},
  });
  const when = columns.at === undefined ? `${cell('date')} ${cell('time')}` : cell('at');
  const moment = readMoment(when, clock);
  if (!moment.ok) return fault(columns.at === undefined ? 'date' : 'at', moment.fault, when);
  const warmth = figure(cell('temperature'));
  const damp = figure(cell('humidity'));
  if (warmth === undefined) return fault('temperature', 'dry-room.figure-unreadable', cell('temperature'));
  if (damp === undefined) return fault('humidity', 'dry-room.figure-unreadable', cell('humidity'));
  const celsius = isFahrenheit(columns.temperature ?? '') ? (warmth - 32) / 1.8 : warmth;
  const temperatureC = Number(celsius.toFixed(2));
  if (temperatureC < -40 || temperatureC > 80)
    return fault('temperature', 'dry-room.figure-impossible', cell('temperature'));
  if (damp < 0 || damp > 100) return fault('humidity', 'dry-room.figure-impossible', cell('humidity'));
  const place = cell('room') || room;
  if (place === undefined) return fault('room', 'dry-room.room-missing', '');
  const relativeHumidity = Number((damp / 100).toFixed(5));
  return { line: row.line, at: moment.value, room: place, temperatureC, relativeHumidity };
}

/** A number with a decimal point or comma and perhaps its unit; a cell without one is a fault, never 0. */
function figure(text: string): number | undefined {
  const match = /^([+-]?\d+(?:[.,]\d+)?)\s*(?:°?\s*[CF]|%(?:\s*RH)?)?$/i.exec(text);
  return match ? Number(match[1]!.replace(',', '.')) : undefined;
}
