import { listInWords } from './lists.js';
import type { WordsOfFault } from './shop-wide-faults.js';

/** Refusals about readings of a dry room, and what is wrong with lines of a logger's file. */
export const DRY_ROOM_FAULTS: Readonly<Record<string, WordsOfFault>> = {
  'dry-room.columns-missing': ({ missing, headings }) => ({
    what: `The file has no heading for ${listInWords((missing as readonly string[]).map((column) => COLUMN_NAMES[column] ?? column))}. It has: ${(headings as readonly string[]).join(', ')}.`,
    mend: 'Say which of its headings mean time, temperature and humidity.',
  }),
  'dry-room.room-missing': {
    what: 'Neither the file nor anybody says in which room it was read.',
    mend: 'Name the room.',
  },
  'dry-room.log-has-faults': ({ preview }) => ({
    what: `Nothing of the file was taken: ${(preview as { readonly faultCount: number }).faultCount} faults stand in its preview.`,
    mend: 'Mend the lines that are named, or say how the file is meant, and give it again.',
  }),
  'dry-room.moment-unreadable': ({ read }) => ({
    what: `“${read ?? ''}” is no day and time.`,
    mend: 'Write it like 2027-03-01 10:20, with the time of day.',
  }),
  'dry-room.moment-ambiguous': ({ read }) => ({
    what: `“${read ?? ''}” may mean two days: it does not tell day from month, and no other line of the file does.`,
    mend: 'Say whether the day or the month stands first.',
  }),
  'dry-room.moment-impossible': ({ read }) => ({
    what: `There is no moment ${read}.`,
    mend: 'Mend the clock of the sensor, or what it sends.',
  }),
  'dry-room.figure-unreadable': ({ read }) => ({
    what: read ? `“${read}” is no number.` : 'There is no number.',
    mend: 'Write a number, or take the line out: a reading that is missing is none.',
  }),
  'dry-room.figure-impossible': ({ read }) => ({
    what: `${read} cannot be: temperatures go from -40 to 80 °C, humidity from 0 to 100 %.`,
    mend: 'See whether the headings are taken for what they are, or take the line out.',
  }),
  'dry-room.ahead-of-time': ({ at, read, now }) => ({
    what: `The reading is of ${at ?? read}, which is still to come${now ? `: it is ${now}` : ''}.`,
    mend: 'Set the clock of the instrument, or say whose time its file has.',
  }),
  'dry-room.other-reading': (facts) => ({
    what: `Another reading of that room and moment is kept already${keptInWords(facts.kept)}.`,
    mend: 'Two instruments need two names of rooms; else take the line out.',
  }),
};

const COLUMN_NAMES: Readonly<Record<string, string>> = { at: 'date and time' };

function keptInWords(kept: unknown): string {
  const { temperatureC, relativeHumidity } = (kept ?? {}) as Readonly<Record<string, number | undefined>>;
  if (temperatureC === undefined || relativeHumidity === undefined) return '';
  return `: ${temperatureC} °C and ${Number((relativeHumidity * 100).toFixed(3))} %`;
}
