import { useQueued } from '../../outbox/index.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Pack } from './packing-roll.js';

/** What hands do to a pack. Each is an entry of the outbox: done once, in order, also without a line to the shop. */
export function useHands({ id: packId, version: expectedVersion, body: { setName } }: Pack) {
  const words = useWords(PACKING_WORDS).entry;
  const pick = useQueued('pick-string').enter;
  const unpick = useQueued('unpick-string').enter;
  const seal = useQueued('seal-pack').enter;
  const pack = { packId, expectedVersion };
  return {
    pick: (into: { readonly position: number; readonly lotId: string; readonly binId: string }) =>
      pick({ ...pack, ...into }, { label: words.pick(into.position, setName) }),
    unpick: (position: number) => unpick({ ...pack, position }, { label: words.unpick(position, setName) }),
    seal: () => seal(pack, { label: words.seal(setName) }),
  };
}
