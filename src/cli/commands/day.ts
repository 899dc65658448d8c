import type { Command } from 'commander';
import { type Day, type DayStage, workOutDay } from '../../core/day/index.js';
import type { ReadOrders } from '../../core/orders/index.js';
import { DEMO_DATE, demoFile, readOrdersFile } from '../../workshop/index.js';
import { dayReport } from '../day-report.js';
import { EXIT } from '../exit-codes.js';
import { dayOf, readInput, refusalOf, shopOf } from '../inputs.js';
import { wholeOption } from '../options.js';
import type { Terminal } from '../terminal.js';
import { writeDay } from '../write-day.js';

interface DayOptions {
  readonly orders?: string;
  readonly shop?: string;
  readonly date?: string;
  readonly out?: string;
  readonly json?: boolean;
  readonly iterations: string;
  readonly seed: string;
}

/** `tautwork day`: from a file of orders to the day's plan, sheets, wire, roll, labels and costs. */
export function dayCommand(program: Command, terminal: Terminal): void {
  program
    .command('day')
    .summary('turn a file of orders into a day’s work')
    .description(
      'Reads a file of orders (CSV) and works out the day: the plan of each machine, a set-up sheet for every run, the wire to pull, what is late and why, the roll to pack, labels and costs. Without --orders and --shop it shows the invented demo workshop.',
    )
    .option('--orders <file>', 'orders, CSV with headings (see the handbook)')
    .option('--shop <file>', 'the shop, JSON; the invented demo workshop where left out')
    .option('--date <day>', 'the day to work out, YYYY-MM-DD; today where left out')
    .option('--out <folder>', 'write PDF documents, faults.csv and day.json there')
    .option('--json', 'print the day as JSON')
    .option('--iterations <count>', 'steps of improving the plan', '0')
    .option('--seed <number>', 'the same seed and steps give the same plan', '1')
    .action(async (options: DayOptions) => {
      process.exitCode = await runDay(options, terminal);
    });
}

async function runDay(options: DayOptions, terminal: Terminal): Promise<number> {
  const isDemo = options.orders === undefined && options.shop === undefined;
  const ordersPath = options.orders ?? new URL(demoFile('orders.csv')).pathname;
  const shop = await shopOf(options.shop);
  const read = readOrdersFile(await readInput(ordersPath), shop);
  if (!read.ok) throw refusalOf(ordersPath, read.fault);
  const date = options.date === undefined && isDemo ? DEMO_DATE : dayOf(options.date);
  const day = workOutDay({
    shop,
    read: read.value,
    date,
    seed: wholeOption('--seed', options.seed, { least: 0, most: 4_294_967_295 }),
    iterations: wholeOption('--iterations', options.iterations, { least: 0, most: 10_000_000 }),
    onProgress: (share, stage) => terminal.progress.show(share * 0.8, STAGES[stage]),
  });
  const written =
    options.out === undefined ? [] : await writeDay(day, { folder: options.out, ordersPath }, terminal);
  terminal.progress.end();
  terminal.print(options.json ? JSON.stringify(day) : dayReport(day, { ordersPath, written }));
  remarkOnColumns(read.value, terminal);
  return exitCode(day);
}

/** Headings that mean nothing to us hold cells that nobody will act on: that must be said. */
function remarkOnColumns({ columns }: ReadOrders, terminal: Terminal): void {
  if (columns.ignored.length > 0)
    terminal.remark(`Not read, since their headings are not known: ${columns.ignored.join(', ')}.`);
  for (const { column, headings } of columns.doubled)
    terminal.remark(`${headings.join(' and ')} both mean ${column}: only "${headings[0]}" is read.`);
}

const exitCode = (day: Day): number => (day.faults.length > 0 ? EXIT.someFaults : EXIT.done);

const STAGES: Readonly<Record<DayStage, string>> = {
  resolving: 'turning orders into strings',
  planning: 'planning the machines',
  writing: 'writing sheets and roll',
};
