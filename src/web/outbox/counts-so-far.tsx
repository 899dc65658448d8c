import { EntriesSoFar } from '../parts/entries-so-far.js';
import { useWords } from '../words/language.js';
import { OUTBOX_WORDS } from '../words/outbox.js';
import { type Counted, countsAt, type TakesCountsBack } from './counts.js';
import { useEntryLine } from './use-entry-line.js';

/** Every count that was made at a station, the newest first; any of them can be taken back until it is settled. */
export function CountsSoFar<Tally extends Counted>({ tallies, station, asEntry }: TakesCountsBack<Tally>) {
  const words = useWords(OUTBOX_WORDS);
  const line = useEntryLine();
  const own = countsAt(tallies, station);
  if (own.length === 0) return null;
  return (
    <EntriesSoFar
      title={words.counts}
      show={words.showCounts(own.length)}
      entries={own.toReversed().map((tally) => line(asEntry(tally), tally))}
    />
  );
}
