import { useWho } from '../../api/use-who.js';
import { useTakeBack } from '../../outbox/index.js';
import { EntriesSoFar } from '../../parts/entries-so-far.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS } from '../../words/machine.js';
import { useCountAsEntry } from './undo-count.js';
import type { RunBook } from './use-run-book.js';

/** Every count of the run at the machine, the newest first; any of them can be taken back while the run goes on. */
export function CountedSoFar({ book }: { readonly book: RunBook }) {
  const words = useWords(COUNT_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const takeBack = useTakeBack();
  const asEntry = useCountAsEntry(book);
  const own = book.tallies.filter(({ station }) => station === 'winder');
  if (own.length === 0) return null;
  return (
    <EntriesSoFar
      title={words.entries}
      show={words.showEntries(own.length)}
      entries={own.toReversed().map((tally) => {
        const entry = asEntry(tally);
        return {
          id: tally.id,
          what: entry.label,
          more: words.enteredBy(whoOf(tally.by), figures.time(tally.at)),
          takeBack: () => takeBack(entry),
        };
      })}
    />
  );
}
