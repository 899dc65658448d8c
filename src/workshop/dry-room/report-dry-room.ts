import { reportDryRoom as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { refuse } from '../refusal.js';
import { useCase } from '../use-case.js';
import { compareReadings, isAheadOf, writeReadings } from './take-readings.js';

/**
 * What a sensor sends: as often as it likes, since a reading that is known is not written twice. A token that may do no more
 * than this is enough for it.
 */
export const reportDryRoom = useCase(definition, async (work, { room, readings }) => {
  const { tx, now } = work;
  const told = readings.map(({ at, ...air }) => ({ at: momentOf(at), room, ...air }));
  const ahead = told.find(({ at }) => isAheadOf(now, at));
  if (ahead) refuse({ code: 'dry-room.ahead-of-time', at: ahead.at, now });
  const { fresh, known, differing } = await compareReadings(tx, told);
  const [first] = differing;
  if (first) refuse({ code: 'dry-room.other-reading', reading: first.reading, kept: first.kept });
  await writeReadings(work, fresh);
  return succeed({ taken: fresh.length, known });
});

function momentOf(told: string): string {
  const at = new Date(told);
  if (Number.isNaN(at.getTime())) refuse({ code: 'dry-room.moment-impossible', read: told });
  return at.toISOString();
}
