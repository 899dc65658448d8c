import { readStringKey, type StringSpec } from '../../../core/sets/index.js';
import {
  type Bin,
  type Lying,
  mayBePacked,
  openPlaces,
  type Pack,
  type Packing,
  type Wanted,
} from './packing-roll.js';

/** What differs between two kinds of string. */
export type Trait = 'gaugeThou' | 'kind' | 'material' | 'end' | 'lengthM';

/** Why a scan is refused, with all that the hand needs to know. */
export type WrongScan =
  | { readonly because: 'unknown' }
  | { readonly because: 'not-clear'; readonly names: readonly string[] }
  | { readonly because: 'full' }
  | {
      readonly because: 'wrong-string';
      readonly from: string;
      readonly given: string;
      readonly wanted: Wanted;
      readonly differs: readonly Trait[];
    }
  | {
      readonly because: 'held';
      readonly lot: string;
      readonly state: string;
      readonly reason: string | undefined;
    }
  | { readonly because: 'bin-empty'; readonly bin: string; readonly wanted: Wanted }
  | { readonly because: 'not-full'; readonly count: number }
  | { readonly because: 'bin-mixed'; readonly bin: string };

/** What a scan of a lot, a bin or a label means for an open pack. */
export type Scan =
  | { readonly kind: 'take'; readonly position: number; readonly lotId: string; readonly binId: string }
  | { readonly kind: 'this-pack' }
  | { readonly kind: 'other-pack'; readonly packId: string }
  | ({ readonly kind: 'wrong' } & WrongScan);

interface Hand {
  readonly pack: Pack;
  /** The place that is being filled; another one is taken where the string belongs there. */
  readonly place: Wanted | undefined;
  readonly packing: Packing;
}

/**
 * Judges what was scanned or typed: the name of a lot or of a bin, a pack's label. Only the digits of a name do too, where no other
 * name has the same. A string is taken for the place that is being filled, else for another empty place of the pack that wants it.
 */
export function judgeScan(text: string, hand: Hand): Scan {
  const { pack, place, packing } = hand;
  const named = whatIsCalled(text, packing);
  if (named.length === 0) return { kind: 'wrong', because: 'unknown' };
  if (named.length > 1) return { kind: 'wrong', because: 'not-clear', names: named.map(({ name }) => name) };
  const found = named[0]!;
  if (found.kind === 'pack')
    return found.pack.id === pack.id ? { kind: 'this-pack' } : { kind: 'other-pack', packId: found.pack.id };
  if (!place) return { kind: 'wrong', because: 'full' };
  return found.kind === 'lot' ? judgeLot(found, hand, place) : judgeBin(found.bin, hand, place);
}

/** A pack's label on the roll, where no pack is open: which pack it is. */
export function packCalled(text: string, packing: Packing): Pack | undefined {
  const named = whatIsCalled(text, packing).filter((found) => found.kind === 'pack');
  return named.length === 1 ? named[0]!.pack : undefined;
}

type Called =
  | { readonly kind: 'lot'; readonly name: string; readonly rows: readonly Lying[] }
  | { readonly kind: 'bin'; readonly name: string; readonly bin: Bin }
  | { readonly kind: 'pack'; readonly name: string; readonly pack: Pack };

function whatIsCalled(text: string, { bins, lying, packs }: Packing): readonly Called[] {
  const lots = new Map<string, Lying[]>();
  for (const each of lying) lots.set(each.lotId, [...(lots.get(each.lotId) ?? []), each]);
  const all: readonly Called[] = [
    ...packs.map((pack) => ({ kind: 'pack', name: pack.body.labelCode, pack }) as const),
    ...[...lots.values()].map((rows) => ({ kind: 'lot', name: rows[0]!.lot, rows }) as const),
    ...bins.map((bin) => ({ kind: 'bin', name: bin.name, bin }) as const),
  ];
  const whole = folded(text);
  if (whole === '') return [];
  const exact = all.filter(({ name }) => folded(name) === whole);
  if (exact.length > 0 || !/^[\d .-]+$/.test(whole)) return exact;
  return all.filter(({ name }) => digits(name) === digits(whole));
}

const folded = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();
const digits = (text: string): string => text.replace(/\D/g, '');

function judgeLot({ name, rows }: Called & { kind: 'lot' }, { pack }: Hand, place: Wanted): Scan {
  const [first] = rows;
  const { stringKey, state, holdReason } = first!;
  const wanted = fits(place, stringKey) ? place : openPlaces(pack).find((each) => fits(each, stringKey));
  if (!wanted) return wrongString(name, stringKey, place);
  if (state !== 'released') return { kind: 'wrong', because: 'held', lot: name, state, reason: holdReason };
  const from = rows.find(mayBePacked);
  if (!from) return { kind: 'wrong', because: 'bin-empty', bin: name, wanted };
  return { kind: 'take', position: wanted.position, lotId: from.lotId, binId: from.binId };
}

function judgeBin(bin: Bin, { pack, packing }: Hand, place: Wanted): Scan {
  const there = packing.lying.filter(({ binId, count }) => binId === bin.id && count > 0);
  if (there.length === 0) return { kind: 'wrong', because: 'bin-empty', bin: bin.name, wanted: place };
  const wanted = placeFor(there, pack, place);
  if (wanted === 'several') return { kind: 'wrong', because: 'bin-mixed', bin: bin.name };
  if (!wanted) return wrongString(bin.name, there[0]!.stringKey, place);
  const ofKind = there
    .filter(({ stringKey }) => fits(wanted, stringKey))
    .toSorted((a, b) => (a.lotId < b.lotId ? -1 : 1));
  const from = ofKind.find(mayBePacked);
  if (from) return { kind: 'take', position: wanted.position, lotId: from.lotId, binId: bin.id };
  const { lot, state, holdReason } = ofKind[0]!;
  return { kind: 'wrong', because: 'held', lot, state, reason: holdReason };
}

/** The place that what lies in a bin is for: the one being filled before others. */
function placeFor(there: readonly Lying[], pack: Pack, place: Wanted): Wanted | 'several' | undefined {
  const suits = (wanted: Wanted) => there.some(({ stringKey }) => fits(wanted, stringKey));
  if (suits(place)) return place;
  const kinds = openPlaces(pack).filter(suits);
  return new Set(kinds.map(({ stringKey }) => stringKey)).size > 1 ? 'several' : kinds[0];
}

const fits = (wanted: Wanted, stringKey: string): boolean => wanted.stringKey === stringKey;

const wrongString = (from: string, given: string, wanted: Wanted): Scan => ({
  kind: 'wrong',
  because: 'wrong-string',
  from,
  given,
  wanted,
  differs: differences(wanted.spec, readStringKey(given)),
});

const TRAITS: readonly Trait[] = ['gaugeThou', 'kind', 'material', 'end', 'lengthM'];

const differences = (wanted: StringSpec, given: StringSpec | undefined): readonly Trait[] =>
  given ? TRAITS.filter((trait) => wanted[trait] !== given[trait]) : [];
