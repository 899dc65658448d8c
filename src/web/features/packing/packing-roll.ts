import type { ReadingAnswer } from '../../../contract/index.js';

/** What the packing room goes by. */
export type Packing = ReadingAnswer<'packing-roll'>;
export type Order = Packing['orders'][number];
export type Pack = Packing['packs'][number];
export type Bin = Packing['bins'][number];
/** Strings of one lot in one bin. */
export type Lying = Packing['lying'][number];
export type Wanted = Pack['body']['wanted'][number];

/** The places of a pack that have no string yet, treble first. */
export function openPlaces({ body: { wanted, picked } }: Pack): readonly Wanted[] {
  const filled = new Set(picked.map(({ position }) => position));
  return wanted.filter(({ position }) => !filled.has(position));
}

/** Only strings of lots that were released may be packed. */
export const mayBePacked = ({ state, count }: Lying): boolean => state === 'released' && count > 0;
