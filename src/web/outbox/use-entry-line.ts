import { useWho } from '../api/use-who.js';
import { useFigures } from '../sight/figures.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import { type ToTakeBack, useTakeBack } from './take-back.js';

/** An entry as a list of those so far shows it: what it is, whose and when, and how it is taken back. */
export function useEntryLine() {
  const words = useWords(OUTBOX_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const takeBack = useTakeBack();
  return (entry: ToTakeBack, { at, by }: { readonly at: string; readonly by: string }) => ({
    id: entry.id,
    what: entry.label,
    more: words.enteredBy(whoOf(by), figures.time(at)),
    takeBack: () => takeBack(entry),
  });
}
