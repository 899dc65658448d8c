import { useMe } from '../api/session.js';
import { type Counted, countsAt, type TakesCountsBack } from './counts.js';
import { useTakeBack } from './take-back.js';
import { UndoTouch } from './undo-touch.js';

/** Takes the last count back that this person made at a station. */
export function UndoLastCount<Tally extends Counted>({ tallies, station, asEntry }: TakesCountsBack<Tally>) {
  const me = useMe().person.id;
  const takeBack = useTakeBack();
  const own = countsAt(tallies, station).findLast(({ by }) => by === `person/${me}`);
  const last = own && asEntry(own);
  return <UndoTouch last={last} onUndo={async () => (last ? takeBack(last) : 'not-sent')} />;
}
