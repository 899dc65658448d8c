import { createHash } from 'node:crypto';
import type { Shop } from '../../core/day/index.js';
import { byText, grouped } from '../../core/foundation/index.js';
import {
  type Column,
  type ColumnMap,
  HEADINGS,
  mapColumns,
  type OrderFault,
  type OrderLine,
  readOrders,
  type TableRow,
  type ToldColumns,
} from '../../core/orders/index.js';
import { readTable } from '../read-table.js';
import { refuse } from '../refusal.js';

/** A file of orders taken apart: its rows order by order, and what could not be read. */
export interface ImportFile {
  /** Every heading of the file, with the first cells under it that hold anything. */
  readonly headings: readonly { readonly heading: string; readonly samples: readonly string[] }[];
  readonly columns: ColumnMap;
  readonly orders: readonly ImportedOrder[];
  /** Of rows that name no order, or could not be taken apart at all. */
  readonly faults: readonly OrderFault[];
}

export interface ImportedOrder {
  readonly number: string;
  readonly fileLines: readonly number[];
  /** Of what the rows say, column by column: the same hash is the same order, however the columns stand. */
  readonly hash: string;
  readonly lines: readonly OrderLine[];
  readonly faults: readonly OrderFault[];
}

export interface ImportText {
  readonly csv: string;
  readonly shop: Shop;
  /** What the person says now, and what was said of this source before. */
  readonly mapping: ToldColumns | undefined;
  readonly remembered: ToldColumns | undefined;
}

/** Takes the text of a file apart; refuses one that is no table of orders. */
export function readImport({ csv, shop, mapping, remembered = {} }: ImportText): ImportFile {
  const table = readTable(new TextEncoder().encode(csv));
  if (!table.ok) return refuse({ ...table.fault });
  const { headings, rows } = table.value;
  const told = mapping ? toldOf(mapping, headings) : stillThere(remembered, headings);
  const columns = mapColumns(headings, told);
  if (Object.keys(columns.headingOf).length === 0)
    return refuse({ code: 'file.no-known-headings', headings });
  const read = readOrders(headings, rows, shop, columns);
  const numberOf = (row: TableRow): string => cellOf(row, columns, 'order');
  const byNumber = grouped(
    rows.filter((row) => numberOf(row) !== ''),
    numberOf,
  );
  return {
    headings: headings.map((heading) => ({ heading, samples: samplesOf(rows, heading) })),
    columns,
    orders: [...byNumber].map(([number, own]) => ({
      number,
      fileLines: own.map(({ line }) => line),
      hash: hashOf(own, columns),
      lines: read.lines.filter(({ orderId }) => orderId === number),
      faults: read.faults.filter(({ orderId }) => orderId === number),
    })),
    faults: [...table.value.faults, ...read.faults.filter(({ orderId }) => orderId === undefined)],
  };
}

const MOST_SAMPLES = 3;

const samplesOf = (rows: readonly TableRow[], heading: string): readonly string[] =>
  rows
    .map(({ cells }) => (cells[heading] ?? '').trim())
    .filter((cell) => cell !== '')
    .slice(0, MOST_SAMPLES);

/** A heading that a person names must stand in the file. */
function toldOf(mapping: ToldColumns, headings: readonly string[]): ToldColumns {
  const missing = Object.values(mapping).filter((heading) => !headings.includes(heading));
  if (missing.length > 0) refuse({ code: 'import.headings-missing', missing, headings });
  return mapping;
}

/** What was remembered of a source holds as far as its files still look so. */
const stillThere = (remembered: ToldColumns, headings: readonly string[]): ToldColumns =>
  Object.fromEntries(Object.entries(remembered).filter(([, heading]) => headings.includes(heading)));

const COLUMNS = (Object.keys(HEADINGS) as Column[]).sort(byText);

function cellOf(row: TableRow, { headingOf }: ColumnMap, column: Column): string {
  const heading = headingOf[column];
  return heading === undefined ? '' : (row.cells[heading] ?? '').trim();
}

/** Of the filled cells alone, so that a column which a later version of this program knows changes no hash. */
const hashOf = (rows: readonly TableRow[], columns: ColumnMap): string =>
  createHash('sha256')
    .update(JSON.stringify(rows.map((row) => filledCells(row, columns))))
    .digest('hex');

const filledCells = (row: TableRow, columns: ColumnMap) =>
  COLUMNS.map((column) => [column, cellOf(row, columns, column)]).filter(([, cell]) => cell !== '');
