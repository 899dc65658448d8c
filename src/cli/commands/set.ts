import type { Command } from 'commander';
import { forceInWords, materialInWords, orderFaultWords, warningInWords } from '../../contract/index.js';
import type { Shop } from '../../core/day/index.js';
import {
  type PlayerRequest,
  type RequestAnswer,
  readOrders,
  requestAnswerer,
  requestFault,
  requestWarnings,
} from '../../core/orders/index.js';
import type { ChosenSet } from '../../core/sets/index.js';
import { formatForce, formatFraction, formatGauge, pitchName } from '../../core/units/index.js';
import { EXIT } from '../exit-codes.js';
import { Refusal, shopOf } from '../inputs.js';
import { wholeOption } from '../options.js';
import { textTable } from '../table.js';
import type { Terminal } from '../terminal.js';

/** Options that are cells of a request, by the heading that the orders file gives them. */
const CELLS = [
  'instrument',
  'scale',
  'tuning',
  'likes',
  'likes-material',
  'likes-scale',
  'likes-tuning',
  'material',
  'end',
  'wishes',
] as const;

type SetOptions = Readonly<Record<string, string | undefined>> & {
  readonly count: string;
  readonly json?: string;
};

/** `tautwork set`: the sets that answer a player's request, best first. */
export function setCommand(program: Command, terminal: Terminal): void {
  program
    .command('set')
    .summary("answer a player's request with a set")
    .description(
      'Finds the strings of the shop that come nearest to what a player wishes: the feel of a liked set on another tuning or scale, an even pull, a graded pull, or pulls outright. No string is taken near breaking.',
    )
    .requiredOption('--tuning <notes>', 'by name, or notes from low to high: "D A D F# A D"')
    .requiredOption('--material <material>', 'such as "nickel-plated steel"')
    .option('--instrument <name>', 'an instrument that the shop knows')
    .option('--scale <length>', 'one length (25.5 in), a fan (25.5-27 in), or one a string')
    .option('--likes <set>', 'the set that is liked: its name or its gauges')
    .option('--likes-tuning <notes>', 'where it is liked; usual tuning where left out')
    .option('--likes-scale <length>', 'where it is liked; the same scale where left out')
    .option('--likes-material <material>', 'of the liked set; the same where left out')
    .option('--wishes <wishes>', 'apart by semicolons: "even 75 N; heavier bass 5 %; string 1 = 10"')
    .option('--end <end>', 'ball or loop', 'ball')
    .option('--count <sets>', 'how many answers to show', '3')
    .option('--shop <file>', 'the shop, JSON; the invented demo workshop where left out')
    .option('--json', 'print as JSON')
    .action(async (options: SetOptions) => {
      process.exitCode = runSet(await shopOf(options.shop), options, terminal);
    });
}

function runSet(shop: Shop, options: SetOptions, terminal: Terminal): number {
  const request = requestOf(shop, options);
  const count = wholeOption('--count', options.count, { least: 1, most: 50 });
  const answer = requestAnswerer(shop)({ request, quantity: 1, count });
  if (!answer.ok) {
    const { what, mend } = orderFaultWords({ line: 1, ...requestFault(answer.fault, request) });
    terminal.remark(`${what} ${mend}`);
    return EXIT.impossible;
  }
  terminal.print(
    options.json ? JSON.stringify(answer.value.sets) : answerReport(shop, request, answer.value),
  );
  return EXIT.done;
}

/** A request typed as options is a row of an orders file with the same names, read by the same reader. */
function requestOf(shop: Shop, options: SetOptions): PlayerRequest {
  const cells: Record<string, string> = { order: 'typed', quantity: '1', due: '2000-01-01' };
  for (const name of CELLS) cells[name] = options[optionKey(name)] ?? '';
  const read = readOrders(Object.keys(cells), [{ line: 1, cells }], shop);
  const [fault] = read.faults;
  if (fault) {
    const { what, mend } = orderFaultWords({
      ...fault,
      ...(fault.column ? { column: `--${fault.column}` } : {}),
    });
    throw new Refusal(`${fault.column ? `--${fault.column}: ` : ''}${what} ${mend}`);
  }
  const wanted = read.lines[0]?.wanted;
  if (wanted?.kind !== 'request') throw new Refusal('Give a tuning for the set.');
  return wanted.request;
}

const optionKey = (name: string): string =>
  name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

function answerReport(shop: Shop, request: PlayerRequest, answer: RequestAnswer): string {
  const sets = answer.sets.map((set, at) => {
    const warnings = requestWarnings({ set, answer, request, stressLimit: shop.rules.stressLimit });
    return [
      `${at + 1}. ${set.strings.map(({ candidate }) => formatGauge(candidate.gaugeThou)).join('-')}, ${materialInWords(request.material)}`,
      setTable(set, request),
      `All strings together pull ${forceInWords(set.totalTensionN)}${answer.likedTensionN === undefined ? '' : `; the liked set pulls ${forceInWords(answer.likedTensionN)}`}.`,
      ...warnings.map(warningInWords),
    ].join('\n');
  });
  return [
    ...sets,
    'Pulls are predicted from geometry and published figures. Bring strings up to pitch slowly, eyes away from them; the owner of the instrument must judge what its neck bears.',
  ].join('\n\n');
}

const setTable = (set: ChosenSet, request: PlayerRequest): string =>
  textTable(set.strings, [
    { heading: 'string', cell: ({ position }) => String(position), align: 'right' },
    { heading: 'pitch', cell: ({ position }) => pitchOf(request, position) },
    { heading: 'gauge', cell: ({ candidate }) => formatGauge(candidate.gaugeThou), align: 'right' },
    { heading: 'kind', cell: ({ candidate }) => candidate.kind },
    { heading: 'pull', cell: ({ tensionN }) => formatForce(tensionN, 'N'), align: 'right' },
    { heading: '', cell: ({ tensionN }) => formatForce(tensionN, 'lbf'), align: 'right' },
    { heading: 'wished', cell: ({ wishedTensionN }) => formatForce(wishedTensionN, 'N'), align: 'right' },
    {
      heading: 'stress',
      cell: ({ stressShare }) => (stressShare === undefined ? 'unknown' : formatFraction(stressShare)),
      align: 'right',
    },
    {
      heading: 'bend a tone',
      cell: ({ bendForceN }) => (bendForceN === undefined ? 'out of reach' : formatForce(bendForceN, 'N')),
      align: 'right',
    },
    {
      heading: 'shelf',
      cell: ({ candidate }) => (candidate.onShelf > 0 ? `${candidate.onShelf} lie there` : 'to wind'),
    },
    { heading: 'recipe', cell: ({ candidate }) => candidate.recipeId },
  ]);

const pitchOf = ({ tuning }: PlayerRequest, position: number): string => {
  const pitch = tuning.pitches[position - 1];
  return pitch ? pitchName(pitch) : '';
};
