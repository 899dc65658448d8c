import type { Command } from 'commander';
import { unableInWords } from '../../contract/index.js';
import { type Shop, whatIsKnown } from '../../core/day/index.js';
import { foldName, mostLike } from '../../core/orders/index.js';
import type { Recipe } from '../../core/recipes/index.js';
import type { StringEnd, StringSpec } from '../../core/sets/index.js';
import { coreEndSheet, type Machine, setUp, type UnableReason } from '../../core/winding/index.js';
import { coresReport } from '../ends-report.js';
import { EXIT } from '../exit-codes.js';
import { Refusal, shopOf } from '../inputs.js';
import { numberOption, wholeOption } from '../options.js';
import { sheetReport } from '../sheet-report.js';
import type { Terminal } from '../terminal.js';

interface SetupOptions {
  readonly recipe: string;
  readonly machine: string;
  readonly length?: string;
  readonly quantity: string;
  readonly end: string;
  readonly shop?: string;
  readonly json?: boolean;
}

/** `tautwork setup`: the set-up sheet of a recipe on a machine. */
export function setupCommand(program: Command, terminal: Terminal): void {
  program
    .command('setup')
    .summary('set a machine up for a recipe')
    .description(
      'Gives what geometry, strength and the shop’s own record decide about setting a machine up for a recipe, with its cautions. Where no past run of the shop is near, it says that a tension is a guess, and gives the upper limit. On the bench it gives the sheet of plain strings, or of the cores of wound ones: cut, twist, tail, pull.',
    )
    .requiredOption('--recipe <name>', 'a recipe of the shop, such as "phosphor-bronze 42"')
    .requiredOption('--machine <name>', 'a machine of the shop, by id or name')
    .option('--length <mm>', 'length over all, mm; the usual one where left out')
    .option('--quantity <strings>', 'good strings wanted', '1')
    .option('--end <end>', 'ball or loop', 'ball')
    .option('--shop <file>', 'the shop, JSON; the invented demo workshop where left out')
    .option('--json', 'print as JSON')
    .action(async (options: SetupOptions) => {
      process.exitCode = runSetup(await shopOf(options.shop), options, terminal);
    });
}

function runSetup(shop: Shop, options: SetupOptions, terminal: Terminal): number {
  const recipe = recipeOf(shop, options.recipe);
  const machine = machineOf(shop, options.machine);
  const spec = specOf(shop, recipe, options);
  const quantity = wholeOption('--quantity', options.quantity, { least: 1, most: 100_000 });
  if (machine.kind === 'bench' && recipe.construction.kind === 'wound') {
    const cores = coreEndSheet({ bench: machine, recipe, spec, quantity });
    if (!cores.ok) return sayUnable(machine, cores.fault, terminal);
    const about = `recipe ${recipe.id} at ${machine.name}`;
    terminal.print(options.json ? JSON.stringify(cores.value) : coresReport(cores.value, about));
    return EXIT.done;
  }
  const sheet = setUp({
    machine,
    recipe,
    spec,
    lotId: 'unplanned',
    quantity,
    ...whatIsKnown(shop),
  });
  if (!sheet.ok) return sayUnable(machine, sheet.fault.reasons, terminal);
  terminal.print(options.json ? JSON.stringify(sheet.value) : sheetReport(sheet.value));
  return EXIT.done;
}

function sayUnable(machine: Machine, reasons: readonly UnableReason[], terminal: Terminal): number {
  terminal.remark(reasons.map((reason) => `${machine.name} ${unableInWords(reason)}.`).join('\n'));
  return EXIT.impossible;
}

function specOf({ rules }: Shop, recipe: Recipe, options: SetupOptions): StringSpec {
  if (options.end !== 'ball' && options.end !== 'loop')
    throw new Refusal(`--end "${options.end}" is no end: write ball or loop.`);
  const lengthM =
    options.length === undefined
      ? rules.standardLengthM
      : numberOption('--length', options.length, { least: 100, most: 3000 }) / 1000;
  return {
    gaugeThou: recipe.gaugeThou,
    kind: recipe.construction.kind,
    material: recipe.material,
    end: options.end as StringEnd,
    lengthM,
  };
}

function recipeOf({ recipes }: Shop, name: string): Recipe {
  const recipe = recipes.find(({ id }) => foldName(id) === foldName(name));
  if (recipe) return recipe;
  const nearest = mostLike(
    name,
    recipes.map(({ id }) => id),
  );
  throw new Refusal(
    `--recipe "${name}": the shop has no such recipe.${nearest.length > 0 ? ` Nearest: ${nearest.join(', ')}.` : ''}`,
  );
}

function machineOf({ machines }: Shop, name: string): Machine {
  const machine = machines.find(
    (each) => foldName(each.id) === foldName(name) || foldName(each.name) === foldName(name),
  );
  if (machine) return machine;
  throw new Refusal(
    `--machine "${name}": the shop's machines are ${machines.map(({ id }) => id).join(', ')}.`,
  );
}
