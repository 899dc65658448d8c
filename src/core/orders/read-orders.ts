import { fail, type Result, succeed } from '../foundation/index.js';
import type { StringMaterial } from '../recipes/index.js';
import type { StringEnd } from '../sets/index.js';
import type { Catalogue } from './catalogue.js';
import { type CellReader, cellReader } from './cell-reader.js';
import { type ColumnMap, mapColumns, type TableRow } from './columns.js';
import type { OrderLine, WantedSet } from './order.js';
import { readDate } from './read-date.js';
import { readRequest } from './read-request.js';
import { readEnd, readGauges, readMaterial } from './read-strings.js';
import type { OrderFault } from './resolved.js';

/** A file of orders understood as far as it can be: every row is a line or has a fault. */
export interface ReadOrders {
  readonly lines: readonly OrderLine[];
  readonly faults: readonly OrderFault[];
  readonly columns: ColumnMap;
}

/** More sets than any shop of this kind winds for one line: above it the cell is taken for a slip. */
export const MOST_SETS_ON_A_LINE = 10_000;

/**
 * Reads rows of a table as orders. A row that cannot be read becomes a fault and stops no other; a row that
 * repeats an earlier one to the letter is a fault too, since orders are wound and packed for real.
 */
export function readOrders(
  headings: readonly string[],
  rows: readonly TableRow[],
  catalogue: Catalogue,
): ReadOrders {
  const columns = mapColumns(headings);
  const lines: OrderLine[] = [];
  const faults: OrderFault[] = [];
  const firstLineOf = new Map<string, number>();
  for (const row of rows) {
    const cell = cellReader(row, columns);
    const repeated = firstLineOf.get(rowText(row));
    if (repeated !== undefined) {
      faults.push(cell.fault(undefined, 'order.duplicate', { firstLine: repeated }));
      continue;
    }
    firstLineOf.set(rowText(row), row.line);
    const read = readLine(row, cell, catalogue);
    if (read.ok) lines.push(read.value);
    else faults.push(...read.fault);
  }
  return { lines, faults, columns };
}

function readLine(
  row: TableRow,
  cell: CellReader,
  catalogue: Catalogue,
): Result<OrderLine, readonly OrderFault[]> {
  const faults: OrderFault[] = [];
  const orderId = cell.text('order');
  if (orderId === '') faults.push(cell.fault('order', 'order.cell-empty'));
  const quantity = readQuantity(cell);
  if (!quantity.ok) faults.push(quantity.fault);
  const due = readDue(cell);
  if (!due.ok) faults.push(due.fault);
  const wanted = readWanted(cell, catalogue);
  if (!wanted.ok) faults.push(...wanted.fault);
  if (!quantity.ok || !due.ok || !wanted.ok || faults.length > 0) return fail(faults);
  return succeed({
    line: row.line,
    orderId,
    player: cell.text('player'),
    quantity: quantity.value,
    due: due.value,
    note: cell.text('note'),
    wanted: wanted.value,
  });
}

function readQuantity(cell: CellReader): Result<number, OrderFault> {
  const text = cell.text('quantity');
  if (text === '') return fail(cell.fault('quantity', 'order.cell-empty'));
  if (!/^[+-]?\d+$/.test(text))
    return fail(cell.fault('quantity', 'order.cell-unreadable', { expected: 'quantity' }));
  const quantity = Number(text);
  return quantity >= 1 && quantity <= MOST_SETS_ON_A_LINE
    ? succeed(quantity)
    : fail(cell.fault('quantity', 'order.quantity-out-of-range', { least: 1, most: MOST_SETS_ON_A_LINE }));
}

function readDue(cell: CellReader): Result<OrderLine['due'], OrderFault> {
  const text = cell.text('due');
  if (text === '') return fail(cell.fault('due', 'order.cell-empty'));
  const read = readDate(text);
  if (read.ok) return read;
  return fail(
    read.fault.code === 'ambiguous'
      ? cell.fault('due', 'order.cell-ambiguous', { readings: read.fault.readings })
      : cell.fault('due', 'order.cell-unreadable', { expected: 'date' }),
  );
}

/** What is wanted shows by which cells are filled: a set's name, gauges, or a tuning for the shop to answer. */
function readWanted(cell: CellReader, catalogue: Catalogue): Result<WantedSet, readonly OrderFault[]> {
  const setName = cell.text('set');
  const gauges = cell.text('gauges');
  const tuning = cell.text('tuning');
  const filled = [setName, gauges, tuning].filter((text) => text !== '').length;
  if (filled === 0) return fail([cell.fault(undefined, 'order.nothing-wanted')]);
  if (filled > 1) return fail([cell.fault(undefined, 'order.more-than-one-wish')]);
  if (setName !== '') return succeed({ kind: 'stock', setName });
  const made = readMake(cell);
  if (!made.ok) return made;
  if (tuning !== '') return readRequest(cell, catalogue, made.value);
  const strings = readGauges(gauges);
  if (!strings.ok) return fail([cell.fault('gauges', strings.fault.code, strings.fault.facts)]);
  return succeed({ kind: 'custom', strings: strings.value, ...made.value });
}

/** Material and end of a custom set; ball ends unless told. */
function readMake(
  cell: CellReader,
): Result<{ material: StringMaterial; end: StringEnd }, readonly OrderFault[]> {
  const faults: OrderFault[] = [];
  const materialText = cell.text('material');
  const material = readMaterial(materialText);
  if (materialText === '') faults.push(cell.fault('material', 'order.cell-empty'));
  else if (!material.ok) faults.push(cell.fault('material', 'order.material-unknown', material.fault));
  const end = readEnd(cell.text('end'));
  if (!end) faults.push(cell.fault('end', 'order.cell-unreadable', { expected: 'end' }));
  return material.ok && end && faults.length === 0
    ? succeed({ material: material.value, end })
    : fail(faults);
}

const rowText = (row: TableRow): string => JSON.stringify(Object.values(row.cells));
