import { freshId } from '../../api/fresh-id.js';
import type { RecordOf } from '../../api/use-records.js';
import { useQueued } from '../../outbox/index.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';

/** So long a touch can be taken back before the shop has it. */
const UNDO_MS = 8_000;

/** Counts what the coiler finds. A reject is counted, and taken from the bin where the lot lies. */
export function useEnterCoiled({ id: lotId, body }: RecordOf<'string-lot'>, binId: string | undefined) {
  const words = useWords(COILING_WORDS);
  const tally = useQueued('record-tally');
  const scrap = useQueued('scrap-strings');
  const held = { undoWithin: UNDO_MS };
  const of = { lotId, station: 'coiler' } as const;
  return {
    good: (count: number) =>
      tally.enter(
        { id: freshId(), ...of, outcome: 'good', reason: '', count },
        { label: words.goodLabel(count, body.name), ...held },
      ),
    reject: async (reason: string) => {
      const id = freshId();
      await tally.enter(
        { id, ...of, outcome: 'scrap', reason, count: 1 },
        { label: words.rejectLabel(reason, body.name), ...held },
      );
      if (binId === undefined) return;
      // Both are of one touch: about the same count, so that they are taken back together.
      await scrap.enter(
        { lotId, binId, count: 1, reason, tallyId: id },
        { label: words.scrapLabel(reason, body.name), about: [lotId, id], ...held },
      );
    },
  };
}
