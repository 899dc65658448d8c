import { useMe } from '../../api/session.js';
import { type ToTakeBack, UndoTouch, useTakeBack } from '../../outbox/index.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS } from '../../words/machine.js';
import type { RunBook, RunTally } from './use-run-book.js';

/** Takes the last count of a run back that this person made. */
export function UndoCount({ book }: { readonly book: RunBook }) {
  const me = useMe().person.id;
  const takeBack = useTakeBack();
  const asEntry = useCountAsEntry(book);
  const own = book.tallies.findLast(({ station, by }) => station === 'winder' && by === `person/${me}`);
  const last = own && asEntry(own);
  return <UndoTouch last={last} onUndo={async () => (last ? takeBack(last) : 'not-sent')} />;
}

/** A count as it is called and taken back. */
export function useCountAsEntry({ run }: RunBook): (tally: RunTally) => ToTakeBack {
  const words = useWords(COUNT_WORDS);
  const { name } = run.body;
  return ({ id, outcome, reason, count }) => ({
    of: 'tally',
    id,
    about: [run.id],
    label: outcome === 'good' ? words.goodLabel(count, name) : words.scrapLabel(reason, name),
  });
}
