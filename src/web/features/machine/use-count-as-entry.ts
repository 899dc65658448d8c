import type { ToTakeBack } from '../../outbox/index.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS } from '../../words/machine.js';
import type { RunBook, RunTally } from './use-run-book.js';

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
