import { useWho } from '../../api/use-who.js';
import { useTakeBack } from '../../outbox/index.js';
import { EntriesSoFar } from '../../parts/entries-so-far.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS, STRINGS_WORDS } from '../../words/machine.js';
import type { Trial } from './run-count.js';
import { useStepsAsEntries } from './undo-step.js';
import type { RunBook } from './use-run-book.js';

interface EnteredOfStringProps {
  readonly book: RunBook;
  readonly trial: Trial;
  readonly name: string;
}

/** All that was entered of one trial string, the newest first, and the string itself: any of it can be taken back. */
export function EnteredOfString({ book, trial, name }: EnteredOfStringProps) {
  const words = useWords(STRINGS_WORDS);
  const countWords = useWords(COUNT_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const takeBack = useTakeBack();
  const steps = useStepsAsEntries(book);
  const own = book.readings.filter(({ trialStringId }) => trialStringId === trial.id).toReversed();
  const line = (entry: ReturnType<typeof steps.string>, { at, by }: { at: string; by: string }) => ({
    id: entry.id,
    what: entry.label,
    more: countWords.enteredBy(whoOf(by), figures.time(at)),
    takeBack: () => takeBack(entry),
  });
  return (
    <EntriesSoFar
      title={words.enteredOf(name)}
      show={words.showEntered(name)}
      entries={[...own.map((row) => line(steps.reading(row), row)), line(steps.string(trial), trial)]}
    />
  );
}
