import { stringify } from 'csv-stringify/sync';

type Plain = string | number | boolean | null | undefined;

/**
 * A record's body as cells: nested fields by their path (`certificate.diameterM`), lists as JSON. Going back needs
 * no schema: every cell is read as JSON where it is JSON, else as text.
 */
export function flatten(body: object, path = ''): Readonly<Record<string, string>> {
  const cells: Record<string, string> = {};
  for (const [name, value] of Object.entries(body) as [string, unknown][]) {
    const place = path === '' ? name : `${path}.${name}`;
    if (value === undefined) continue;
    if (typeof value === 'object' && value !== null && !Array.isArray(value))
      Object.assign(cells, flatten(value, place));
    else cells[place] = cellOf(value as Plain | readonly unknown[]);
  }
  return cells;
}

/** A text that reads as JSON is quoted, so that `12` stays a text when it comes back. */
const cellOf = (value: Plain | readonly unknown[]): string =>
  typeof value === 'string' && !readsAsJson(value) ? value : JSON.stringify(value);

const readsAsJson = (text: string): boolean => {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
};

/** A body from its cells; empty cells are fields left out. */
export function unflatten(cells: Readonly<Record<string, string>>): Record<string, unknown> {
  const body: Record<string, unknown> = {};
  for (const [path, cell] of Object.entries(cells)) {
    if (cell.trim() === '') continue;
    const names = path.split('.');
    const last = names.pop();
    if (last === undefined || names.concat(last).some((name) => UNSAFE.has(name))) continue;
    let place = body;
    for (const name of names) {
      place[name] ??= {};
      place = place[name] as Record<string, unknown>;
    }
    place[last] = readsAsJson(cell) ? (JSON.parse(cell) as unknown) : cell;
  }
  return body;
}

/** Names that would reach behind an object instead of into it. */
const UNSAFE = new Set(['__proto__', 'constructor', 'prototype']);

/** A table of separated values: every column that any row has, in the order they first come; formulas made harmless. */
export function csvOf(rows: readonly Readonly<Record<string, string>>[]): string {
  const columns = [...new Set(rows.flatMap((row) => Object.keys(row)))];
  return stringify([columns, ...rows.map((row) => columns.map((column) => row[column] ?? ''))], {
    escape_formulas: true,
  });
}
