import { readFile } from 'node:fs/promises';
import { type FileFault, fileFaultWords } from '../contract/index.js';
import type { Shop } from '../core/day/index.js';
import { type CalendarDate, calendarDate } from '../core/foundation/index.js';
import { demoShop, loadShop } from '../workshop/index.js';

/** What was typed, or a file named, that a command cannot go on with. */
export class Refusal extends Error {
  override readonly name = 'Refusal';
}

/** Bytes of a file, or a refusal that says why not. */
export async function readInput(path: string): Promise<Uint8Array> {
  try {
    return await readFile(path);
  } catch (thrown) {
    throw refusalOf(path, { code: 'file.missing', because: whyNot(thrown) });
  }
}

/** The shop of a file; the invented workshop where none is named. */
export async function shopOf(path: string | undefined): Promise<Shop> {
  if (path === undefined) return demoShop();
  const shop = loadShop(new TextDecoder().decode(await readInput(path)));
  if (!shop.ok) throw refusalOf(path, shop.fault);
  return shop.value;
}

/** A file's fault in words, with the file's name before them. */
export function refusalOf(path: string, fault: FileFault): Refusal {
  const { what, mend } = fileFaultWords(fault);
  return new Refusal(`${path}: ${what} ${mend}`);
}

/** The day of an option, or today by this computer's clock. */
export function dayOf(text: string | undefined): CalendarDate {
  const date = calendarDate(text ?? localToday());
  if (!date) throw new Refusal(`--date "${text}" is no day. Write year, month and day, such as 2027-03-01.`);
  return date;
}

function localToday(): string {
  const now = new Date();
  return [
    now.getFullYear(),
    String(now.getMonth() + 1).padStart(2, '0'),
    String(now.getDate()).padStart(2, '0'),
  ].join('-');
}

const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file',
  EACCES: 'you may not read it',
  EISDIR: 'it is a folder',
};

const whyNot = (thrown: unknown): string => {
  const code = (thrown as { code?: string }).code ?? '';
  return REASONS[code] ?? (thrown as Error).message;
};
