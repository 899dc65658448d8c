import { useMe } from '../../api/session.js';
import { type ToTakeBack, UndoTouch, useTakeBack } from '../../outbox/index.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/machine.js';
import { lastStep } from './last-step.js';
import type { Trial } from './run-count.js';
import { useCellWords } from './use-cell-words.js';
import type { RunBook, RunReading } from './use-run-book.js';

/** Takes the last step of the first strings back, and then the one before it: a reading, the word on a string, a string. */
export function UndoStep({ book }: { readonly book: RunBook }) {
  const me = useMe().person.id;
  const takeBack = useTakeBack();
  const { verdict, reading, string } = useStepsAsEntries(book);
  const step = lastStep(book.trials, book.readings);
  const own = step && (step.kind === 'reading' ? step.reading.by : step.trial.by) === `person/${me}`;
  const last = !own
    ? undefined
    : step.kind === 'reading'
      ? reading(step.reading)
      : step.kind === 'verdict'
        ? verdict(step.trial)
        : string(step.trial);
  return <UndoTouch last={last} onUndo={async () => (last ? takeBack(last) : 'not-sent')} />;
}

/** Steps of the first strings as they are called and taken back. */
export function useStepsAsEntries({ run }: RunBook): {
  readonly verdict: (trial: Trial) => ToTakeBack;
  readonly reading: (reading: RunReading) => ToTakeBack;
  readonly string: (trial: Trial) => ToTakeBack;
} {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const cellWords = useCellWords();
  const about = [run.id];
  return {
    verdict: ({ id, number, verdict }) => ({
      of: 'verdict',
      id,
      about,
      label: words.judged(words.stringIs(number), words.verdicts[verdict]),
    }),
    string: ({ id, number }) => ({ of: 'trial-string', id, about, label: words.entered(number) }),
    reading: ({ id, quantity, value, placeM, rotationDeg, trialStringId }) => ({
      of: 'measurement',
      id,
      about: [...about, ...(trialStringId === null ? [] : [trialStringId])],
      label:
        quantity === 'diameter'
          ? words.enteredReading(
              cellWords.short({ quantity, placeM: placeM ?? 0, rotationDeg: rotationDeg ?? 0 }),
              figures.diameter(value),
            )
          : words.enteredReading(words.weight, figures.weight(value)),
    }),
  };
}
