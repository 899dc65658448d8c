import { useEntryLine } from '../../outbox/index.js';
import { EntriesSoFar } from '../../parts/entries-so-far.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
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
  const line = useEntryLine();
  const steps = useStepsAsEntries(book);
  const own = book.readings.filter(({ trialStringId }) => trialStringId === trial.id).toReversed();
  return (
    <EntriesSoFar
      title={words.enteredOf(name)}
      show={words.showEntered(name)}
      entries={[...own.map((row) => line(steps.reading(row), row)), line(steps.string(trial), trial)]}
    />
  );
}
