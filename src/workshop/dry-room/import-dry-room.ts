import { importDryRoom as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { refuse } from '../refusal.js';
import { useCase } from '../use-case.js';
import { type LogFault, type LoggedReading, readLog } from './read-log.js';
import { compareReadings, isAheadOf, writeReadings } from './take-readings.js';

/** So many faults are told one by one; more are counted. */
const MOST_FAULTS = 200;
const MOST_SAMPLES = 3;

/**
 * The file of a logger, all of it or nothing. A reading of a room and moment that is kept already is left alone, so that
 * the same file may come again, and the next may begin before this one ends.
 */
export const importDryRoom = useCase(definition, async (work, asked) => {
  const { tx, now } = work;
  const { source, room, csv, mapping, dayFirst, clock = 'shop', commit } = asked;
  const remembered = (await tx.mappings.get(mappingOf(source))) ?? {};
  const log = readLog({ csv, room, told: mapping, remembered, clock: { dayFirst, clock } });
  const { fresh, known, differing } = await compareReadings(tx, log.readings);
  const faults: readonly LogFault[] = [
    ...log.faults,
    ...log.readings
      .filter(({ at }) => isAheadOf(now, at))
      .map((each) => faultOf(each, 'dry-room.ahead-of-time')),
    ...differing.map(({ reading }) => faultOf(reading, 'dry-room.other-reading')),
  ];
  const moments = log.readings.map(({ at }) => at).sort();
  const [first, last] = [moments[0], moments.at(-1)];
  const preview = {
    headings: [...log.headings],
    columns: log.columns,
    ignored: [...log.ignored],
    fresh: fresh.length,
    known,
    rooms: [...new Set(log.readings.map((reading) => reading.room))],
    ...(first === undefined || last === undefined ? {} : { first, last }),
    samples: samplesOf(log.readings),
    faults: faults.slice(0, MOST_FAULTS).map((fault) => ({ ...fault, facts: {} })),
    faultCount: faults.length,
  };
  if (!commit) return succeed({ preview, committed: false });
  if (faults.length > 0) refuse({ code: 'dry-room.log-has-faults', source, preview });
  await writeReadings(work, fresh);
  if (mapping) await tx.mappings.put(mappingOf(source), mapping);
  return succeed({ preview, committed: true });
});

/** Loggers and sources of orders may bear one name. */
const mappingOf = (source: string): string => `dry-room/${source}`;

const faultOf = ({ line, at }: LoggedReading, code: string): LogFault => ({
  line,
  read: at,
  code,
  facts: {},
});

const samplesOf = (readings: readonly LoggedReading[]): LoggedReading[] =>
  readings.length <= 2 * MOST_SAMPLES
    ? [...readings]
    : [...readings.slice(0, MOST_SAMPLES), ...readings.slice(-MOST_SAMPLES)];
