import { parse } from 'csv-parse/sync';
import type { TableFault } from '../contract/index.js';
import { fail, type Result, succeed } from '../core/foundation/index.js';
import type { OrderFault, TableRow } from '../core/orders/index.js';

/** A table of text cells. Rows that could not be taken apart are faults, and stop no other row. */
export interface Table {
  readonly headings: readonly string[];
  readonly rows: readonly TableRow[];
  readonly faults: readonly OrderFault[];
  readonly delimiter: string;
}

const DELIMITERS = [',', ';', '\t', '|'] as const;

/** Takes a file of comma, semicolon, tab or bar separated values apart: UTF-8 with or without BOM, UTF-16 with. */
export function readTable(bytes: Uint8Array): Result<Table, TableFault> {
  const decoded = decode(bytes);
  if (!decoded.ok) return decoded;
  const lines = decoded.value.split(/\r\n|\n|\r/);
  const headingAt = lines.findIndex((line) => line.trim() !== '');
  const headingLine = lines[headingAt];
  if (headingLine === undefined) return fail({ code: 'file.empty' });
  const delimiter = sniffDelimiter(headingLine);
  const headings = distinct(cellsOf(headingLine, delimiter)[0]?.cells ?? []);
  return succeed({ headings, delimiter, ...readRows({ lines, from: headingAt + 1, delimiter, headings }) });
}

interface Region {
  readonly lines: readonly string[];
  readonly from: number;
  readonly delimiter: string;
  readonly headings: readonly string[];
}

/**
 * A quote that is never closed would swallow every line after it. So where a record runs over several lines
 * and does not have the headings' number of cells, or the file ends inside a quote, its first line alone is
 * the fault and reading goes on at the next.
 */
function readRows({ lines, from, delimiter, headings }: Region): Pick<Table, 'rows' | 'faults'> {
  const rows: TableRow[] = [];
  const faults: OrderFault[] = [];
  let at = from;
  while (at < lines.length) {
    const records = cellsOf(lines.slice(at).join('\n'), delimiter);
    const bad = records.find((record) => record.spans > 1 && record.cells.length !== headings.length);
    for (const record of records) {
      if (record === bad) break;
      const line = at + record.startsAt + 1;
      const row = toRow(record.cells, line, headings);
      if ('cells' in row) rows.push(row);
      else faults.push(row);
    }
    const stoppedAt = bad?.startsAt ?? endOf(records);
    at += stoppedAt;
    while (at < lines.length && lines[at]?.trim() === '') at++;
    if (at >= lines.length) break;
    faults.push({ line: at + 1, code: 'order.quote-open', facts: {}, read: lines[at] ?? '' });
    at++;
  }
  return { rows, faults };
}

interface CsvRecord {
  readonly cells: readonly string[];
  /** Lines after the region's first where the record starts, and how many it spans. */
  readonly startsAt: number;
  readonly spans: number;
}

const endOf = (records: readonly CsvRecord[]): number => {
  const last = records.at(-1);
  return last ? last.startsAt + last.spans : 0;
};

/** Records up to the end, or up to the record in which a quote is not closed. */
function cellsOf(text: string, delimiter: string): readonly CsvRecord[] {
  const options = {
    delimiter,
    info: true,
    relax_column_count: true,
    relax_quotes: true,
    skip_empty_lines: true,
    trim: true,
  } as const;
  try {
    return withLines(parse(text, options) as unknown as RawRecord[], text);
  } catch (thrown) {
    const good = (thrown as { records?: number }).records;
    if (good === undefined) throw thrown;
    if (good === 0) return [];
    return withLines(parse(text, { ...options, to: good }) as unknown as RawRecord[], text);
  }
}

interface RawRecord {
  readonly record: readonly string[];
  /** `lines` is the line on which the record ends, from 1. */
  readonly info: { readonly lines: number };
}

function withLines(raw: readonly RawRecord[], text: string): readonly CsvRecord[] {
  const blank = text.split('\n').map((line) => line.trim() === '');
  let next = 0;
  return raw.map(({ record, info }) => {
    while (blank[next]) next++;
    const startsAt = next;
    next = Math.max(info.lines, startsAt + 1);
    return { cells: record, startsAt, spans: next - startsAt };
  });
}

function toRow(cells: readonly string[], line: number, headings: readonly string[]): TableRow | OrderFault {
  const surplus = cells.slice(headings.length).filter((cell) => cell !== '');
  if (surplus.length > 0)
    return { line, code: 'order.cells-too-many', facts: { expected: headings.length, given: cells.length } };
  return { line, cells: Object.fromEntries(headings.map((heading, at) => [heading, cells[at] ?? ''])) };
}

/** The delimiter that parts the heading line most often, outside quotes; a comma where none does. */
function sniffDelimiter(headingLine: string): string {
  const bare = headingLine.replace(/"[^"]*"/g, '');
  const counts = DELIMITERS.map((delimiter) => bare.split(delimiter).length);
  return DELIMITERS[counts.indexOf(Math.max(...counts))] ?? ',';
}

/** Two headings alike would hide one another: the second is shown with its place. */
function distinct(headings: readonly string[]): readonly string[] {
  return headings.map((heading, at) =>
    headings.indexOf(heading) < at ? `${heading} (column ${at + 1})` : heading,
  );
}

function decode(bytes: Uint8Array): Result<string, TableFault> {
  if (bytes.length === 0) return fail({ code: 'file.empty' });
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return fail({ code: 'file.is-workbook' });
  const encoding =
    bytes[0] === 0xff && bytes[1] === 0xfe
      ? 'utf-16le'
      : bytes[0] === 0xfe && bytes[1] === 0xff
        ? 'utf-16be'
        : 'utf-8';
  try {
    return succeed(new TextDecoder(encoding, { fatal: true }).decode(bytes));
  } catch {
    return fail({ code: 'file.not-text', line: firstBadLine(bytes) });
  }
}

function firstBadLine(bytes: Uint8Array): number {
  const strict = new TextDecoder('utf-8', { fatal: true });
  let line = 1;
  let from = 0;
  for (let at = 0; at <= bytes.length; at++) {
    if (at < bytes.length && bytes[at] !== 0x0a) continue;
    try {
      strict.decode(bytes.subarray(from, at));
    } catch {
      return line;
    }
    line++;
    from = at + 1;
  }
  return 1;
}
