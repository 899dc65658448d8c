import { useMe } from '../../api/session.js';
import { type ToTakeBack, UndoTouch, useTakeBack } from '../../outbox/index.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import type { LotBook, LotTally } from './use-lots.js';

/** Takes this person's last touch at the coiling table back: the count of it, and the string that was taken from its bin. */
export function UndoCoiled({ book }: { readonly book: LotBook }) {
  const me = useMe().person.id;
  const takeBack = useTakeBack();
  const asEntry = useCoiledAsEntry(book);
  const own = book.tallies.findLast(({ station, by }) => station === 'coiler' && by === `person/${me}`);
  const last = own && asEntry(own);
  return <UndoTouch last={last} onUndo={async () => (last ? takeBack(last) : 'not-sent')} />;
}

/** What coiling counted, as it is called and taken back. */
export function useCoiledAsEntry({ lot }: LotBook): (tally: LotTally) => ToTakeBack {
  const words = useWords(COILING_WORDS);
  const { name } = lot.body;
  return ({ id, outcome, reason, count }) => ({
    of: 'tally',
    id,
    about: [lot.id],
    label: outcome === 'good' ? words.goodLabel(count, name) : words.rejectLabel(reason, name),
  });
}
