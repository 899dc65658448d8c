import { useWho } from '../../api/use-who.js';
import { useTakeBack } from '../../outbox/index.js';
import { EntriesSoFar } from '../../parts/entries-so-far.js';
import { useFigures } from '../../sight/figures.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import { useCoiledAsEntry } from './undo-coiled.js';
import type { LotBook } from './use-lots.js';

/** Every count of the lot at coiling, the newest first; any of them can be taken back until the lot is judged. */
export function CoiledSoFar({ book }: { readonly book: LotBook }) {
  const words = useWords(COILING_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const takeBack = useTakeBack();
  const asEntry = useCoiledAsEntry(book);
  const own = book.tallies.filter(({ station }) => station === 'coiler');
  if (own.length === 0) return null;
  return (
    <EntriesSoFar
      title={words.entries}
      show={words.showEntries(own.length)}
      entries={own.toReversed().map((tally) => {
        const entry = asEntry(tally);
        const more = words.enteredBy(whoOf(tally.by), figures.time(tally.at));
        return { id: tally.id, what: entry.label, more, takeBack: () => takeBack(entry) };
      })}
    />
  );
}
