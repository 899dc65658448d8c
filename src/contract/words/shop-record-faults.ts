import type { ShopFlaw } from '../../core/day/index.js';
import { formatGauge } from '../../core/units/index.js';
import { listInWords } from './lists.js';
import { shopFlawInWords } from './shop-flaws.js';
import type { WordsOfFault } from './shop-wide-faults.js';

/** Refusals about what the shop is made of: its settings, wires, machines, bins, instruments and sets. */
export const SHOP_RECORD_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'settings.missing': {
    what: 'The shop is not settled yet: its name, rules and rates are missing.',
    mend: 'Enter them first.',
  },
  'settings.already': {
    what: 'The shop is settled already: there is one such record.',
    mend: 'Change that one.',
  },
  'settings.flawed': ({ flaws }) => ({
    what: `These rules do not fit the machines: ${flawsInWords(flaws)}.`,
    mend: 'Begin the day earlier, or change the machines first.',
  }),
  'wire.without-strength': ({ name }) => ({
    what: `Nothing says how strong the core wire ${name} is.`,
    mend: 'Name the standard whose table its strength is judged by.',
  }),
  'wire.recipes-differ': ({ name, flaws }) => ({
    what: `Recipes are made of the wire ${name} as it was: ${flawsInWords(flaws)}.`,
    mend: 'Enter another wire under a name of its own, and name it in the recipes that take it.',
  }),
  'machine.flawed': ({ flaws }) => ({
    what: `The figures of the machine contradict themselves: ${flawsInWords(flaws)}.`,
    mend: 'Mend what is named.',
  }),
  'bin.level-without-kind': ({ name, reorderLevel }) => ({
    what: `Bin ${name} is to hold ${reorderLevel} strings, and nothing says of which kind.`,
    mend: 'Name the kind, or let its level be 0.',
  }),
  'bin.kind-unreadable': ({ name, stringKey }) => ({
    what: `“${stringKey}”, for bin ${name}, is no kind of string.`,
    mend: 'Write gauge, plain or wound, material, end and length, such as 46 wound nickel-plated-steel ball 1000 mm.',
  }),
  'instrument.lengths-do-not-match': ({ name, scales, stretching }) => ({
    what: `Instrument ${name} has ${scales} sounding lengths and ${stretching} stretching lengths.`,
    mend: 'Give one of each for every string, or leave the stretching lengths out.',
  }),
  'instrument.stretching-too-short': ({ name, position }) => ({
    what: `String ${position} of instrument ${name} would stretch over less than what sounds of it.`,
    mend: 'Measure from post to anchor: it is longer than from nut to saddle.',
  }),
  'set.string-implausible': ({ name, position, because, gaugeThou }) => ({
    what: `String ${position} of set ${name}, a ${formatGauge(Number(gaugeThou))}, ${IMPLAUSIBLE[String(because)] ?? 'is none that the shop makes'}.`,
    mend: 'Amend the string, or the rules of the shop if they are too narrow.',
  }),
};

const IMPLAUSIBLE: Readonly<Record<string, string>> = {
  material: 'is plain in a metal for wrapping, or wound in plain steel',
  'too-thick-plain': 'is thicker than the shop makes plain strings',
  'too-thin-wound': 'is thinner than the shop makes wound strings',
};

const flawsInWords = (flaws: unknown): string =>
  listInWords((flaws as readonly ShopFlaw[]).map(shopFlawInWords));
