import { mkdir, rename, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { stringify } from 'csv-stringify/sync';
import { orderFaultWords } from '../contract/index.js';
import type { Day } from '../core/day/index.js';
import { Refusal } from './inputs.js';
import type { Terminal } from './terminal.js';

export interface WrittenFile {
  readonly path: string;
  readonly holds: string;
}

interface DayFile {
  readonly name: string;
  readonly holds: string;
  readonly make: (day: Day) => Promise<Uint8Array> | Uint8Array | string;
}

/** Writes a day's documents to a folder. Each file is whole or not there: it is written beside and then renamed. */
export async function writeDay(
  day: Day,
  place: { readonly folder: string; readonly ordersPath: string },
  terminal: Terminal,
): Promise<readonly WrittenFile[]> {
  const written: WrittenFile[] = [];
  try {
    await mkdir(place.folder, { recursive: true });
    for (const [at, { name, holds, make }] of DAY_FILES.entries()) {
      terminal.progress.show(0.8 + (0.2 * at) / DAY_FILES.length, `writing ${name}`);
      const path = join(place.folder, name);
      await writeFile(`${path}.part`, await make(day));
      await rename(`${path}.part`, path);
      written.push({ path, holds });
    }
  } catch (thrown) {
    throw new Refusal(
      `${place.folder}: cannot be written (${(thrown as Error).message}). Name another folder with --out.`,
    );
  }
  return written;
}

/** Loaded when asked for: fonts and PDF take longer to load than most commands take to answer. */
const documents = () => import('../documents/index.js');

const DAY_FILES: readonly DayFile[] = [
  {
    name: 'day-plan.pdf',
    holds: 'the plan of each machine, late orders, wire to pull, costs',
    make: async (day) => (await documents()).dayPlanPdf(day),
  },
  {
    name: 'set-up-sheets.pdf',
    holds: 'a sheet for every run of the day',
    make: async (day) => (await documents()).setUpSheetsPdf(day),
  },
  {
    name: 'packing-roll.pdf',
    holds: 'the walk past the bins and each set',
    make: async (day) => (await documents()).packingRollPdf(day),
  },
  {
    name: 'labels.pdf',
    holds: 'a label for every set',
    make: async (day) => (await documents()).labelsPdf(day),
  },
  { name: 'faults.csv', holds: 'lines of the orders that could not go on', make: faultsCsv },
  { name: 'day.json', holds: 'all of it, for programs', make: (day) => JSON.stringify(day) },
];

/** Faults as a table that can be sent back to whoever wrote the orders; cells that look like formulas are made harmless. */
function faultsCsv(day: Day): string {
  const rows = day.faults.map((fault) => {
    const { what, mend } = orderFaultWords(fault);
    return [fault.line, fault.column ?? '', fault.orderId ?? '', fault.read ?? '', fault.code, what, mend];
  });
  return stringify(
    [['line', 'column', 'order', 'read', 'code', 'what is wrong', 'how to mend it'], ...rows],
    {
      escape_formulas: true,
    },
  );
}
