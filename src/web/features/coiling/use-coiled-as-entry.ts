import type { ToTakeBack } from '../../outbox/index.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import type { LotBook, LotTally } from './use-lots.js';

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
