import type { OrderFault, OrderFaultCode } from '../../core/orders/index.js';
import type { StringMaterial } from '../../core/recipes/index.js';
import { materialInWords, wholeStringInWords } from './strings.js';
import { unableInShort } from './unable.js';

/** A fault in words: what is wrong, and how to mend it. Both are whole sentences. */
export interface FaultWords {
  readonly what: string;
  readonly mend: string;
}

/** Says what is wrong with a line of an orders file and how to mend it. */
export const orderFaultWords = (fault: OrderFault): FaultWords => WORDS[fault.code](fault);

/** One line for a terminal or a log: file, line, column, what, mend. */
export function orderFaultLine(file: string, fault: OrderFault): string {
  const { what, mend } = orderFaultWords(fault);
  const place = [
    `line ${fault.line}`,
    ...(fault.column === undefined ? [] : [`column ${fault.column}`]),
  ].join(', ');
  return `${file}, ${place}: ${what} ${mend}`;
}

type Facts = OrderFault['facts'];

const WORDS: Readonly<Record<OrderFaultCode, (fault: OrderFault) => FaultWords>> = {
  'order.cells-too-many': ({ facts }) => ({
    what: `The line has ${facts.given} cells under ${facts.expected} headings.`,
    mend: 'Put quotes round a cell that holds the delimiter, or take the cells too many away.',
  }),
  'order.quote-open': () => ({
    what: 'A quotation mark opens a cell and none closes it.',
    mend: 'Close the quote, or write two quotation marks where one is meant.',
  }),
  'order.cell-empty': ({ column, facts }) => ({
    what: `Nothing stands under ${column}.`,
    mend:
      facts.neededFor === 'feel'
        ? 'Write the set that the player likes (by name or by gauges), or an aim that needs none, such as "even 75 N", under wishes.'
        : facts.neededFor === 'request'
          ? 'Name an instrument that the shop knows, or write the scale length, such as 25.5 in.'
          : 'Fill the cell.',
  }),
  'order.cell-unreadable': (fault) => ({
    what: `${quoted(fault)} cannot be read as ${EXPECTED[expected(fault.facts)].name}.`,
    mend: EXPECTED[expected(fault.facts)].mend(fault.facts),
  }),
  'order.cell-ambiguous': (fault) => ({
    what: `${quoted(fault)} can be read as ${either(list(fault.facts.readings))}.`,
    mend:
      list(fault.facts.readings).length === 1
        ? 'Write it so if that is meant.'
        : 'Write the one that is meant.',
  }),
  'order.quantity-out-of-range': (fault) => ({
    what: `${quoted(fault)} is no number of sets that one line may ask for.`,
    mend: `Write a whole number from ${fault.facts.least} to ${fault.facts.most}.`,
  }),
  'order.duplicate': ({ facts }) => ({
    what: `The line repeats line ${facts.firstLine} to the letter.`,
    mend: 'If it is a second order, give it its own order number; else delete it.',
  }),
  'order.nothing-wanted': () => ({
    what: 'The line says for whom and when, but not what.',
    mend: 'Fill one of: set (a stock set by name), gauges (a custom set), or tuning (a request for the shop to answer).',
  }),
  'order.more-than-one-wish': () => ({
    what: 'More than one of set, gauges and tuning is filled, and they may contradict each other.',
    mend: 'Leave one: set for a stock set, gauges for a custom set, tuning for a request. A liked set goes under likes.',
  }),
  'order.cell-unheeded': (fault) => ({
    what: `${quoted(fault)} under ${fault.column} cannot be heeded with what else the line says.`,
    mend: 'Empty the cell. A stock set is made as it is; for another material or end order by gauges; a liked set and wishes belong to a request, which has a tuning.',
  }),
  'order.set-unknown': (fault) => ({
    what: `The shop has no stock set called ${quoted(fault)}.`,
    mend: nearest(fault.facts, 'Write one of its names, or the gauges.'),
  }),
  'order.material-unknown': (fault) => ({
    what: `${quoted(fault)} is no material that the shop knows.`,
    mend: nearest(
      fault.facts,
      'Write nickel-plated steel, pure nickel, stainless steel, phosphor bronze or 80/20 bronze.',
    ),
  }),
  'order.instrument-unknown': (fault) => ({
    what:
      Number(fault.facts.meant ?? 0) > 1
        ? `${quoted(fault)} may be any of several instruments.`
        : `The shop knows no instrument called ${quoted(fault)}.`,
    mend: nearest(fault.facts, 'Or leave the instrument out and give the scale length.'),
  }),
  'order.tuning-unreadable': (fault) => ({
    what: tuningTrouble(fault),
    mend: nearest(
      fault.facts,
      'Write the notes from low to high, such as D A D F# A D or D2 A2 D3 F#3 A3 D4.',
    ),
  }),
  'order.strings-do-not-match': ({ facts }) =>
    facts.string === undefined
      ? {
          what: `${facts.instrument ?? 'The set'} has ${facts.strings} strings, and ${facts.given} are given.`,
          mend: 'Give as many notes (and scale lengths, or pulls) as there are strings.',
        }
      : {
          what: `The set has ${facts.strings} strings: there is no string ${facts.string}.`,
          mend: 'Count strings from the thinnest, which is string 1.',
        },
  'order.recipe-missing': ({ facts }) => ({
    what: `There is no recipe for a ${facts.kind} ${facts.gaugeThou} in ${materialInWords(facts.material as StringMaterial)}.`,
    mend: gaugesThatWork(facts),
  }),
  'order.pitch-unreachable': ({ facts }) => ({
    what: `String ${facts.position}${facts.givenThou === undefined ? '' : `, given as ${facts.givenThou},`} would break before it reaches ${facts.pitch} at ${facts.scaleMm} mm: it may go to ${facts.highestPitch}.`,
    mend: unreachableMend(facts),
  }),
  'order.no-set-fits': ({ facts }) => ({
    what: `No strings of the shop meet all that is asked${facts.position === undefined ? '' : ` of string ${facts.position}`}${facts.because === undefined ? '' : ` (${BECAUSE[String(facts.because)] ?? facts.because})`}.`,
    mend: nearest(
      facts,
      NO_SET_MENDS[String(facts.because)] ?? 'Loosen a wish: let go of a given gauge, or of the wound third.',
    ),
  }),
  'order.machine-missing': ({ facts }) => ({
    what:
      list(facts.machines).length === 0
        ? `The shop has no machine to make ${named(facts)}.`
        : `No machine of the shop can make ${named(facts)}: ${machinesUnable(facts)}.`,
    mend:
      list(facts.machines).length === 0
        ? 'Add the machine to the shop, if there is one.'
        : nearest(facts, 'Choose another gauge, or change the limits of a machine if they are wrong.'),
  }),
  'order.wire-missing': ({ facts }) => ({
    what: `There is not enough wire on hand for ${named(facts)}: ${facts.wireId} is ${facts.shortKg} kg short.`,
    mend: nearest(facts, 'Buy it or weigh in a spool, or choose a gauge that uses another wire.'),
  }),
};

const EXPECTED = {
  quantity: { name: 'a number of sets', mend: () => 'Write a whole number, such as 2.' },
  date: { name: 'a day', mend: () => 'Write year, month and day, such as 2026-12-04.' },
  end: { name: 'an end', mend: () => 'Write ball or loop.' },
  gauge: {
    name: 'gauges',
    mend: (facts: Facts) =>
      `${list(facts.nearest).length > 0 ? `Nearest of the shop’s sets: ${eachName(list(facts.nearest))}. ` : facts.part === undefined ? '' : `The part "${facts.part}" is not clear. `}Write gauges in thousandths of an inch from thin to thick, such as 10-13-17-26-36-46.`,
  },
  scale: {
    name: 'scale lengths',
    mend: (facts: Facts) =>
      `Write one length for all strings (25.5 in), two for a fan (25.5-27 in), or ${facts.strings ?? 'all'} apart by commas; 250 mm to 1,100 mm.`,
  },
  wishes: {
    name: 'wishes',
    mend: (facts: Facts) =>
      `The part "${facts.part}" ${PART_TROUBLE[String(facts.because)] ?? 'is not known'}. Known are, apart by semicolons: ${list(facts.examples).join('; ')}.`,
  },
} as const;

const expected = (facts: Facts): keyof typeof EXPECTED => {
  const name = String(facts.expected);
  return name in EXPECTED ? (name as keyof typeof EXPECTED) : 'quantity';
};

const quoted = (fault: OrderFault): string => `"${shortened(fault.read ?? '')}"`;
const shortened = (read: string): string => (read.length > 60 ? `${read.slice(0, 59)}…` : read);
const part = (facts: Facts): string => (facts.part === undefined ? '' : ` (at "${facts.part}")`);

const list = (fact: Facts[string] | undefined): readonly string[] =>
  Array.isArray(fact) ? fact.map(String) : fact === undefined ? [] : [String(fact)];

const either = (readings: readonly string[]): string =>
  readings.length < 2
    ? (readings[0] ?? 'more than one thing')
    : `${readings.slice(0, -1).join(', ')} or ${readings.at(-1)}`;

/** Names of sets have commas of their own. */
const eachName = (names: readonly string[]): string => names.map((name) => `“${name}”`).join(' or ');

const OTHER_WORK = 'winding.wrong-station';

/** Each machine with its reasons, `Two Herons (gauge out of its range)`; those for other work only where there are no others. */
function machinesUnable(facts: Facts): string {
  const reasons = list(facts.reasons);
  const machines = list(facts.machines).map((machine, at) => ({ machine, reasons: reasons[at] ?? '' }));
  const near = machines.filter((each) => each.reasons !== OTHER_WORK);
  return (near.length > 0 ? near : machines)
    .map((each) => `${each.machine} (${each.reasons.split(' ').map(unableInShort).join(', ')})`)
    .join('; ');
}

function tuningTrouble(fault: OrderFault): string {
  const { facts } = fault;
  if (facts.octavesNeeded !== undefined)
    return `${quoted(fault)} names notes without octaves, and ${facts.given === 1 ? 'a single string has' : `${facts.given} strings have`} no usual tuning to take them from.`;
  if (facts.strings !== undefined)
    return `${quoted(fault)} has ${facts.given} notes for ${facts.strings} strings.`;
  return `${quoted(fault)} cannot be read as a tuning${part(facts)}.`;
}

/** Shorter scales than this are no guitar's: to name one would be no help. */
const SHORTEST_SCALE_MM = 250;

function unreachableMend({ givenThou, highestPitch, longestScaleMm }: Facts): string {
  const ways = [
    ...(givenThou === undefined ? [] : ['let go of the given gauge']),
    `tune it to ${highestPitch} or below`,
    ...(Number(longestScaleMm) < SHORTEST_SCALE_MM
      ? []
      : [`shorten its scale to ${longestScaleMm} mm or less`]),
  ];
  const sentence = ways.length < 2 ? ways[0]! : `${ways.slice(0, -1).join(', ')}, or ${ways.at(-1)}`;
  return `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}.`;
}

const named = (facts: Facts): string => wholeStringInWords(String(facts.stringKey));

const nearest = (facts: Facts, otherwise: string): string => {
  const names = list(facts.nearest);
  return names.length === 0 ? otherwise : `Nearest: ${either(names)}. ${otherwise}`;
};

const gaugesThatWork = (facts: Facts): string => {
  const gauges = list(facts.nearestGauges);
  return gauges.length === 0
    ? 'Choose another material, since none of that kind is made in this one, or add a recipe.'
    : `Nearest with a recipe: ${either(gauges)}. Or add a recipe for it.`;
};

/** Why no set fits, by the core's code. */
const BECAUSE: Readonly<Record<string, string>> = {
  'set.no-candidates': 'the shop has no strings of that material',
  'set.pin-unknown': 'the string that is given is none of the shop',
  'set.no-string-of-kind': 'the shop has no string of the kind that is asked for within its limits',
  'set.strength-unknown': 'the strength of its wire is not known',
  'set.neighbours-contradict': 'gauges must not fall towards the bass, nor a plain string follow a wound one',
  'target.liked-set-missing': 'no liked set is given to take the feel from',
  'target.pulls-missing': 'no pull is given to aim at',
  'target.grade-missing': 'it is not said by how much the pull should grow',
};

const AIM_NEEDED =
  'Name a liked set under likes, or write a pull: even 75 N, graded 3 % from 70 N, or pulls with one for each string.';

/** What to do where no set fits, by the core's code. */
const NO_SET_MENDS: Readonly<Record<string, string>> = {
  'set.no-candidates': 'Choose another material.',
  'set.pin-unknown': 'Give another gauge for it, or none.',
  'target.liked-set-missing': AIM_NEEDED,
  'target.pulls-missing': AIM_NEEDED,
  'target.grade-missing': 'Write graded with a share, such as graded 3 %.',
};

/** Why a phrase of the wishes cannot stand, by the core's word. */
const PART_TROUBLE: Readonly<Record<string, string>> = {
  unreadable: 'is not known',
  'out-of-range': 'asks for more or less than a string can give',
  contradiction: 'contradicts a part before it',
};
