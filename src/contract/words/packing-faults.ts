import { listInWords } from './lists.js';
import type { WordsOfFault } from './shop-wide-faults.js';
import { wholeStringInWords } from './strings.js';

/** Refusals about packs and what is shipped. They tell what the hand should look for. */
export const PACKING_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'order.packs-all-open': ({ packs }) => ({
    what: `Every set of the order has its pack (${packs}).`,
    mend: 'Fill those, or give one up to open another in its place.',
  }),
  'pack.not-open': ({ state }) => ({
    what: `The pack is ${state}: no string goes in or out.`,
    mend: 'Give the pack up if its strings must change, and open another.',
  }),
  'pack.no-such-position': ({ position, strings }) => ({
    what: `The set has ${strings} strings, and no position ${position}.`,
    mend: `Name a position from 1 (the treble) to ${strings}.`,
  }),
  'pack.position-filled': ({ position }) => ({
    what: `Position ${position} of the pack has its string.`,
    mend: 'Lay that string back first, or fill another position.',
  }),
  'pack.nothing-picked': ({ position }) => ({
    what: `Position ${position} of the pack has no string yet.`,
    mend: 'Choose a position that has one.',
  }),
  'pack.wrong-string': ({ position, wanted, given, differs }) => ({
    what: `Position ${position} wants ${wholeStringInWords(String(wanted))}; this is ${wholeStringInWords(String(given))}: another ${listInWords((differs as readonly string[]).map((trait) => TRAITS[trait] ?? trait))}.`,
    mend: 'Put it back and take the string that is wanted.',
  }),
  'pack.lots-not-released': ({ lots }) => heldLots(lots),
  'order.lots-not-released': ({ lots }) => heldLots(lots),
  'pack.bin-empty': ({ bin, lot, stringKey, elsewhere }) => ({
    what: `By the books bin ${bin} holds no string of ${lot}, ${wholeStringInWords(String(stringKey))}.`,
    mend: elsewhereInWords(elsewhere),
  }),
  'pack.positions-missing': ({ missing }) => ({
    what: `The pack lacks ${listInWords((missing as readonly { position: number; stringKey: string }[]).map(({ position, stringKey }) => `string ${position} (${wholeStringInWords(stringKey)})`))}.`,
    mend: 'Pick them first.',
  }),
  'order.nothing-to-ship': {
    what: 'No pack of the order is sealed.',
    mend: 'Seal its packs first.',
  },
  'order.not-all-sealed': ({ unready }) => ({
    what: `Not every set of the order is in a sealed pack: ${(unready as readonly unknown[]).length} are not.`,
    mend: 'Seal them first, or say that a part is to be shipped.',
  }),
};

const TRAITS: Readonly<Record<string, string>> = {
  gaugeThou: 'gauge',
  kind: 'kind',
  material: 'material',
  end: 'end',
  lengthM: 'length',
};

interface HeldLot {
  readonly name: string;
  readonly state: string;
  readonly holdReason?: string;
}

const heldLots = (lots: unknown) => ({
  what: `Not released for packing: ${listInWords((lots as readonly HeldLot[]).map(heldLot))}.`,
  mend: 'Take strings of another lot, or have the lot released.',
});

const heldLot = ({ name, state, holdReason }: HeldLot): string =>
  `${name} (${state}${holdReason === undefined ? '' : `: ${holdReason}`})`;

function elsewhereInWords(elsewhere: unknown): string {
  const places = elsewhere as readonly { bin: string; lot: string; count: number }[];
  if (places.length === 0) return 'Count the bin if strings lie there; else they must be made first.';
  const named = places.map(({ bin, lot, count }) => `bin ${bin} (${lot}, ${count} there)`);
  return `Count the bin if strings lie there; else take from ${named.join(' or ')}.`;
}
