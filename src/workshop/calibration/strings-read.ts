import type { ReadTransaction, StringReadings } from '../../store/index.js';

/** One string of a run as micrometer, scale and rule have it. */
export interface StringRead {
  readonly stringId: string;
  readonly runId: string;
  /** Whether it is the run's first, wound before anybody could turn what the sheet says. */
  readonly isFirst: boolean;
  /** When it was first measured, and the micrometer (or scale) by which. */
  readonly at: string;
  readonly instrument: string;
  /** Mean over places and rotations, where at least two rotations were told. */
  readonly turnedM?: number;
  /** Mean of readings for which no rotation was told: the largest, found by turning. */
  readonly largestM?: number;
  /** At one told rotation only: of a round core as good as a mean, of a hexagon neither that nor the largest. */
  readonly heldM?: number;
  readonly massKg?: number;
  readonly cutLengthM?: number;
}

/**
 * Every string of the shop that was measured, oldest first. The first of a run is its trial string number 1; where a
 * run has no trial strings, whichever was measured first.
 */
export async function stringsRead(tx: ReadTransaction): Promise<readonly StringRead[]> {
  const rows = await tx.readings.readingsByString({});
  const withTrials = new Set(rows.flatMap(({ runId, trialNumber }) => (trialNumber === null ? [] : [runId])));
  const strings = new Map<string, Mutable<StringRead>>();
  const firstOfRun = new Map<string, string>();
  for (const row of rows) {
    const stringId = row.trialStringId ?? `${row.runId} ${row.at}`;
    if (!firstOfRun.has(row.runId)) firstOfRun.set(row.runId, stringId);
    const isFirst = withTrials.has(row.runId)
      ? row.trialNumber === 1
      : firstOfRun.get(row.runId) === stringId;
    const string = strings.get(stringId) ?? {
      stringId,
      runId: row.runId,
      isFirst,
      at: row.at,
      instrument: row.instrument,
    };
    strings.set(stringId, string);
    if (row.quantity === 'diameter') string.instrument = row.instrument;
    Object.assign(string, asRead(row));
  }
  return [...strings.values()];
}

function asRead({ quantity, rotations, mean }: StringReadings): Partial<StringRead> {
  if (quantity === 'mass') return { massKg: mean };
  if (quantity === 'length') return { cutLengthM: mean };
  if (rotations === 0) return { largestM: mean };
  return rotations === 1 ? { heldM: mean } : { turnedM: mean };
}

type Mutable<Whole> = { -readonly [Field in keyof Whole]: Whole[Field] };
