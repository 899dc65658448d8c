import type { InputNamed } from '../../../contract/index.js';
import type { Lying, Pack, Packing } from './packing-roll.js';

/** What was entered here and the shop may not have yet, in order of entry. */
export type PackEntry = {
  readonly [Name in 'pick-string' | 'unpick-string' | 'seal-pack']: {
    readonly number: number;
    readonly useCase: Name;
    readonly input: InputNamed<Name>;
  };
}['pick-string' | 'unpick-string' | 'seal-pack'];

/** The packing room as it will be once all entries have arrived. Versions stay those that the shop gave. */
export function asEntered(packing: Packing, entries: readonly PackEntry[]): Packing {
  const inOrder = entries.toSorted((a, b) => a.number - b.number);
  const packs = packing.packs.map((pack) =>
    inOrder.filter(({ input }) => input.packId === pack.id).reduce(withEntry, pack),
  );
  return { ...packing, packs, lying: lyingAfter(packing, packs) };
}

/** An entry that the shop did already, and whose answer is on the page, changes nothing. */
function withEntry(pack: Pack, entry: PackEntry): Pack {
  if (pack.state !== 'open') return pack;
  if (entry.useCase === 'seal-pack') return { ...pack, state: 'sealed' };
  const { position } = entry.input;
  const others = pack.body.picked.filter((each) => each.position !== position);
  const picked = entry.useCase === 'pick-string' ? [...others, pickedBy(pack, entry)] : others;
  return { ...pack, body: { ...pack.body, picked: picked.toSorted((a, b) => a.position - b.position) } };
}

function pickedBy(pack: Pack, { input }: Extract<PackEntry, { readonly useCase: 'pick-string' }>) {
  const { position, lotId, binId } = input;
  const { stringKey = '' } = pack.body.wanted.find((each) => each.position === position) ?? {};
  return { position, stringKey, lotId, binId };
}

/** What lies in the bins, with what went into packs and out of them since. */
function lyingAfter({ packs: before, lying }: Packing, after: readonly Pack[]): readonly Lying[] & Lying[] {
  const taken = new Map<string, number>();
  const count = (packs: readonly Pack[], sign: 1 | -1) => {
    for (const { lotId, binId } of packs.flatMap(({ body }) => body.picked)) {
      const place = `${binId} ${lotId}`;
      taken.set(place, (taken.get(place) ?? 0) + sign);
    }
  };
  count(after, 1);
  count(before, -1);
  return lying.map((each) => ({
    ...each,
    count: each.count - (taken.get(`${each.binId} ${each.lotId}`) ?? 0),
  }));
}
