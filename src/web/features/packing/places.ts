import {
  type Bin,
  type Lying,
  mayBePacked,
  openPlaces,
  type Pack,
  type Packing,
  type Wanted,
} from './packing-roll.js';

/** A string of a lot, and the bin that it is taken from. */
export interface Source {
  readonly bin: Bin;
  readonly lying: Lying;
}

/** A place of a pack: what it wants, what is in it, where that may be taken from. */
export interface Place {
  readonly wanted: Wanted;
  readonly picked?: Pack['body']['picked'][number];
  /** Oldest lot first; empty where none lies there. */
  readonly sources: readonly Source[];
}

/** Every place of a pack, treble first. */
export const placesOf = (pack: Pack, packing: Packing): readonly Place[] =>
  pack.body.wanted.map((wanted) => {
    const picked = pack.body.picked.find(({ position }) => position === wanted.position);
    return { wanted, ...(picked ? { picked } : {}), sources: sourcesOf(wanted.stringKey, packing) };
  });

/** Where strings of a kind may be taken from, the oldest lot first, of a lot the bin that one comes to first. */
export function sourcesOf(stringKey: string, { bins, lying }: Packing): readonly Source[] {
  const binById = new Map(bins.map((bin) => [bin.id, bin]));
  return lying
    .filter((each) => each.stringKey === stringKey && mayBePacked(each))
    .flatMap((each) => {
      const bin = binById.get(each.binId);
      return bin ? [{ bin, lying: each }] : [];
    })
    .sort((a, b) => byTime(a.lying.lotId, b.lying.lotId) || a.bin.walkOrder - b.bin.walkOrder);
}

/** Ids are made in the order of time. */
const byTime = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/** The place to fill next: of those whose string lies somewhere the first along the walk; else the first that is empty. */
export function nextPlace(pack: Pack, packing: Packing): Wanted | undefined {
  const open = openPlaces(pack).map((wanted) => ({
    wanted,
    walkOrder: sourcesOf(wanted.stringKey, packing)[0]?.bin.walkOrder ?? Number.POSITIVE_INFINITY,
  }));
  return open.toSorted((a, b) => order(a.walkOrder, b.walkOrder))[0]?.wanted;
}

const order = (a: number, b: number): number => (a === b ? 0 : a < b ? -1 : 1);
