import { createWriteStream } from 'node:fs';
import { rename, writeFile } from 'node:fs/promises';
import { type Command, Option } from 'commander';
import { RECORD_KINDS, type RecordKind } from '../../contract/index.js';
import { exportRecords, exportShop } from '../../workshop/index.js';
import { Refusal } from '../inputs.js';
import type { Terminal } from '../terminal.js';
import { withStore } from '../with-store.js';

interface ExportOptions {
  readonly db: string;
  readonly to?: string;
  readonly kind?: string;
  readonly format: 'csv' | 'json';
}

/** `tautwork export`: the whole shop as an archive, or one kind of record as a table. */
export function exportCommand(program: Command, terminal: Terminal): void {
  program
    .command('export')
    .summary('write the whole shop, or records of one kind')
    .description(
      'Without --kind the whole shop goes into one archive that any Tautwork can read, from and to either kind of database. With it the records of that kind are written as CSV or JSON.',
    )
    .requiredOption('--db <place>', 'the shop: a file, or a postgres:// address')
    .option('--to <file>', 'where to; needed for the whole shop, else the terminal')
    .option('--kind <kind>', `one of ${Object.keys(RECORD_KINDS).join(', ')}`)
    .addOption(new Option('--format <format>', 'of records').choices(['csv', 'json']).default('csv'))
    .action(async (options: ExportOptions) => {
      if (options.kind !== undefined) return writeRecords(kindOf(options.kind), options, terminal);
      const { to } = options;
      if (to === undefined) throw new Refusal('Name the archive with --to, such as --to shop.gz.');
      const { rows } = await withStore(options.db, (store) =>
        exportShop(store, createWriteStream(`${to}.part`)),
      );
      await rename(`${to}.part`, to);
      terminal.print(`${rows} rows written to ${to}.`);
    });
}

function kindOf(typed: string): RecordKind {
  if (typed in RECORD_KINDS) return typed as RecordKind;
  throw new Refusal(`--kind "${typed}" is none: write one of ${Object.keys(RECORD_KINDS).join(', ')}.`);
}

async function writeRecords(
  kind: RecordKind,
  { db, to, format }: ExportOptions,
  terminal: Terminal,
): Promise<void> {
  const written = await withStore(db, (store) => store.read((tx) => exportRecords(tx, kind, format)));
  if (to === undefined) terminal.print(written.trimEnd());
  else await writeFile(to, written);
}
