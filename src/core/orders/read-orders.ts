import { fail, type Result, succeed } from '../foundation/index.js';
import type { StringMaterial } from '../recipes/index.js';
import type { StringEnd } from '../sets/index.js';
import type { Catalogue } from './catalogue.js';
import { type CellReader, cellReader } from './cell-reader.js';
import { type Column, type ColumnMap, mapColumns, type TableRow } from './columns.js';
import type { OrderLine, WantedSet } from './order.js';
import { readDate } from './read-date.js';
import { readNamedInstrument, readScaled } from './read-instrument.js';
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
  columns: ColumnMap = mapColumns(headings),
): ReadOrders {
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
  const unheeded = tuning === '' ? filledOf(cell, OF_REQUESTS) : [];
  if (unheeded.length > 0) return fail(unheeded.map((column) => cell.fault(column, 'order.cell-unheeded')));
  if (setName !== '') return readStock(cell);
  const made = readMake(cell);
  if (!made.ok) return made;
  return tuning === '' ? readCustom(cell, catalogue, made.value) : readRequest(cell, catalogue, made.value);
}

/** What only the answer to a request heeds: on another line it would be lost in silence. */
const OF_REQUESTS = ['likes', 'likesMaterial', 'likesScale', 'likesTuning', 'wishes'] as const;

const filledOf = (cell: CellReader, columns: readonly Column[]): readonly Column[] =>
  columns.filter((column) => cell.text(column) !== '');

/** A stock set is what it is; material and end told beside its name must be its own. */
function readStock(cell: CellReader): Result<WantedSet, readonly OrderFault[]> {
  const told = {
    ...(cell.text('material') === '' ? {} : { material: readMaterialCell(cell) }),
    ...(cell.text('end') === '' ? {} : { end: readEndCell(cell) }),
  };
  const faults = Object.values(told).flatMap((read) => (read.ok ? [] : [read.fault]));
  if (faults.length > 0) return fail(faults);
  const { material, end } = told;
  return succeed({
    kind: 'stock',
    setName: cell.text('set'),
    ...(material?.ok ? { material: material.value } : {}),
    ...(end?.ok ? { end: end.value } : {}),
  });
}

/** A custom set needs no instrument; where one is told, the strings are cut for its longest scale. */
function readCustom(
  cell: CellReader,
  catalogue: Catalogue,
  make: { readonly material: StringMaterial; readonly end: StringEnd },
): Result<WantedSet, readonly OrderFault[]> {
  const strings = readGauges(cell.text('gauges'));
  if (!strings.ok) return fail([cell.fault('gauges', strings.fault.code, strings.fault.facts)]);
  const custom = { kind: 'custom' as const, strings: strings.value, ...make };
  const base = readNamedInstrument(cell, catalogue);
  if (!base.ok) return fail([base.fault]);
  if (!base.value && cell.text('scale') === '') return succeed(custom);
  const count = strings.value.length;
  const instrument = readScaled(cell, { column: 'scale', base: base.value, count, countedIn: 'gauges' });
  if (!instrument.ok) return fail([instrument.fault]);
  return succeed({ ...custom, longestScaleM: Math.max(...instrument.value.scaleLengthsM) });
}

/** Material and end of a custom set or a request; ball ends unless told. */
function readMake(
  cell: CellReader,
): Result<{ material: StringMaterial; end: StringEnd }, readonly OrderFault[]> {
  const material = readMaterialCell(cell);
  const end = readEndCell(cell);
  if (material.ok && end.ok) return succeed({ material: material.value, end: end.value });
  return fail([material, end].flatMap((read) => (read.ok ? [] : [read.fault])));
}

function readMaterialCell(cell: CellReader): Result<StringMaterial, OrderFault> {
  const text = cell.text('material');
  if (text === '') return fail(cell.fault('material', 'order.cell-empty'));
  const material = readMaterial(text);
  return material.ok ? material : fail(cell.fault('material', 'order.material-unknown', material.fault));
}

function readEndCell(cell: CellReader): Result<StringEnd, OrderFault> {
  const end = readEnd(cell.text('end'));
  return end ? succeed(end) : fail(cell.fault('end', 'order.cell-unreadable', { expected: 'end' }));
}

const rowText = (row: TableRow): string => JSON.stringify(Object.values(row.cells));
