import { fail, type Result, succeed } from '../foundation/index.js';
import type { StringMaterial } from '../recipes/index.js';
import {
  type Instrument,
  parseTuning,
  type StringEnd,
  type Tuning,
  type TuningFault,
  usualTuning,
} from '../sets/index.js';
import type { Catalogue } from './catalogue.js';
import type { CellReader } from './cell-reader.js';
import type { Column } from './columns.js';
import { calledBy, foldName, mostLike } from './likeness.js';
import type { PlayerRequest, ReferenceSet, WantedSet, WantedString } from './order.js';
import { readNamedInstrument, readScaled } from './read-instrument.js';
import { readGauges, readMaterial } from './read-strings.js';
import { readWishes, WISH_EXAMPLES } from './read-wishes.js';
import type { OrderFault } from './resolved.js';

interface Make {
  readonly material: StringMaterial;
  readonly end: StringEnd;
}

/** A row that gives a tuning to string for: instrument or scale, the set that is liked now, and wishes. */
export function readRequest(
  cell: CellReader,
  catalogue: Catalogue,
  make: Make,
): Result<WantedSet, readonly OrderFault[]> {
  const base = readNamedInstrument(cell, catalogue);
  if (!base.ok) return fail([base.fault]);
  const tuning = readTuning(cell, 'tuning', catalogue, base.value?.scaleLengthsM.length);
  if (!tuning.ok) return fail([tuning.fault]);
  const instrument = readScaled(cell, {
    column: 'scale',
    base: base.value,
    count: tuning.value.tuning.pitches.length,
    countedIn: 'tuning',
  });
  if (!instrument.ok) return fail([instrument.fault]);
  const wishes = readWishes(cell.text('wishes'));
  if (!wishes.ok)
    return fail([
      cell.fault('wishes', 'order.cell-unreadable', {
        expected: 'wishes',
        because: wishes.fault.code,
        part: wishes.fault.phrase,
        examples: WISH_EXAMPLES,
      }),
    ]);
  const reference = readReference(cell, catalogue, instrument.value, make.material);
  if (!reference.ok) return fail([reference.fault]);
  if (wishes.value.target === 'feel' && !reference.value)
    return fail([cell.fault('likes', 'order.cell-empty', { neededFor: 'feel' })]);
  const request: PlayerRequest = {
    instrument: instrument.value,
    tuning: tuning.value.tuning,
    octavesAssumed: tuning.value.octavesAssumed,
    wishes: wishes.value,
    ...make,
    ...(reference.value ? { reference: reference.value } : {}),
  };
  return succeed({ kind: 'request', request });
}

interface ReadTuning {
  readonly tuning: Tuning;
  readonly octavesAssumed: boolean;
}

/**
 * A tuning by the shop's name for it, or by its notes from low to high. The beginning of a name is enough where it
 * names one alone and cannot be read as notes.
 */
function readTuning(
  cell: CellReader,
  column: Column,
  catalogue: Catalogue,
  count: number | undefined,
): Result<ReadTuning, OrderFault> {
  const text = cell.text(column);
  const known = catalogue.tunings.find(({ name }) => foldName(name) === foldName(text));
  if (known) return succeed({ tuning: known.tuning, octavesAssumed: false });
  const read = parseTuning(text, count === undefined ? undefined : usualTuning(count));
  if (read.ok) return read;
  const called = read.fault.code === 'tuning.unreadable' ? calledBy(text, catalogue.tunings) : [];
  if (called.length === 1 && called[0]) return succeed({ tuning: called[0].tuning, octavesAssumed: false });
  const nearest =
    called.length > 0
      ? called.map(({ name }) => name)
      : mostLike(
          text,
          catalogue.tunings.map(({ name }) => name),
        );
  return fail(cell.fault(column, 'order.tuning-unreadable', { ...tuningFacts(read.fault), nearest }));
}

/** The set that a player likes: a stock set by name or gauges, with the tuning and scale it is liked on. */
function readReference(
  cell: CellReader,
  catalogue: Catalogue,
  instrument: Instrument,
  material: StringMaterial,
): Result<ReferenceSet | undefined, OrderFault> {
  if (cell.text('likes') === '') return succeed(undefined);
  const strings = readLikedStrings(cell, catalogue, material);
  if (!strings.ok) return strings;
  const count = strings.value.strings.length;
  const tuning = readLikedTuning(cell, catalogue, count);
  if (!tuning.ok) return tuning;
  const liked = readLikedInstrument(cell, instrument, count);
  if (!liked.ok) return liked;
  return succeed({ ...strings.value, instrument: liked.value, tuning: tuning.value });
}

/** The liked set is taken to be tuned as so many strings usually are unless the row says otherwise. */
function readLikedTuning(cell: CellReader, catalogue: Catalogue, count: number): Result<Tuning, OrderFault> {
  const usual = usualTuning(count);
  if (cell.text('likesTuning') === '')
    return usual
      ? succeed(usual)
      : fail(cell.fault('likesTuning', 'order.cell-empty', { neededFor: 'liked-tuning' }));
  const read = readTuning(cell, 'likesTuning', catalogue, count);
  if (!read.ok) return read;
  const { tuning } = read.value;
  return tuning.pitches.length === count
    ? succeed(tuning)
    : fail(
        cell.fault('likesTuning', 'order.strings-do-not-match', {
          strings: count,
          given: tuning.pitches.length,
        }),
      );
}

function tuningFacts(fault: TuningFault): OrderFault['facts'] {
  if (fault.code === 'tuning.unreadable') return { part: fault.read, note: fault.note };
  return fault.code === 'tuning.wrong-count'
    ? { strings: fault.expected, given: fault.given }
    : { given: fault.given, octavesNeeded: 1 };
}

/** Without a scale of its own the liked set is taken to be on the same instrument, where the strings are as many. */
function readLikedInstrument(
  cell: CellReader,
  instrument: Instrument,
  count: number,
): Result<Instrument, OrderFault> {
  const base = instrument.scaleLengthsM.length === count ? instrument : undefined;
  return readScaled(cell, { column: 'likesScale', base, count, countedIn: 'likes' });
}

function readLikedStrings(
  cell: CellReader,
  catalogue: Catalogue,
  material: StringMaterial,
): Result<{ readonly strings: readonly WantedString[]; readonly material: StringMaterial }, OrderFault> {
  const text = cell.text('likes');
  const known = catalogue.sets.find(({ name }) => foldName(name) === foldName(text));
  if (known) {
    const wound = known.strings.find(({ kind }) => kind === 'wound');
    const strings = known.strings.map(({ gaugeThou, kind }) => ({ gaugeThou, kind }));
    return succeed({ strings, material: wound?.material ?? material });
  }
  const read = readGauges(text);
  if (!read.ok)
    return fail(
      cell.fault('likes', read.fault.code, {
        ...read.fault.facts,
        nearest: setsLike(text, catalogue, material),
      }),
    );
  const likedMaterial = cell.text('likesMaterial');
  if (likedMaterial === '') return succeed({ strings: read.value, material });
  const liked = readMaterial(likedMaterial);
  return liked.ok
    ? succeed({ strings: read.value, material: liked.value })
    : fail(cell.fault('likesMaterial', 'order.material-unknown', liked.fault));
}

/** Sets that a text may mean: those named alike or, of a word such as `tens`, those whose first string is so thick. */
function setsLike(text: string, { sets }: Catalogue, material: StringMaterial): readonly string[] {
  const firstThou = firstGaugeCalled(text);
  if (firstThou !== undefined) {
    const begin = sets.filter(({ strings }) => Math.floor(strings[0]?.gaugeThou ?? 0) === firstThou);
    const ofMaterial = begin.filter(({ strings }) => strings.some((string) => string.material === material));
    return (ofMaterial.length > 0 ? ofMaterial : begin).slice(0, 4).map(({ name }) => name);
  }
  return mostLike(
    text,
    sets.map(({ name }) => name),
  );
}

/** Players call a set by its first string (common practice, no source): `tens`, `my 10s`. */
function firstGaugeCalled(text: string): number | undefined {
  const word = foldName(text).replace(/^(my|the|his|her|a set of) /, '');
  const digits = /^(\d{1,2})[’']?s?$/.exec(word)?.[1];
  if (digits !== undefined) return Number(digits);
  const at = FIRST_GAUGES.indexOf(word.replace(/s$/, ''));
  return at < 0 ? undefined : at + FIRST_GAUGE_THOU;
}

const FIRST_GAUGE_THOU = 8;
const FIRST_GAUGES = ['eight', 'nine', 'ten', 'eleven', 'twelve', 'thirteen', 'fourteen'];
