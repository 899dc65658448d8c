import type { BodyOf } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { Work } from '../use-case.js';

export type RoomReading = BodyOf<'dry-room-reading'>;

/** Readings that come in, held against those that are kept: one room has one air at one moment. */
export interface ComparedReadings<Reading extends RoomReading> {
  readonly fresh: readonly Reading[];
  /** How many say what is kept already, or what another of them says. */
  readonly known: number;
  readonly differing: readonly { readonly reading: Reading; readonly kept: RoomReading }[];
}

/** Which readings are new, which are known, and which say another thing than is known of that room and moment. */
export async function compareReadings<Reading extends RoomReading>(
  { records }: Pick<ReadTransaction, 'records'>,
  readings: readonly Reading[],
): Promise<ComparedReadings<Reading>> {
  const moments = readings.map(({ at }) => at).sort();
  const [from, to] = [moments[0], moments.at(-1)];
  if (from === undefined || to === undefined) return { fresh: [], known: 0, differing: [] };
  const kept = new Map<string, RoomReading>();
  for (const { body } of await records.between('dry-room-reading', 'at', { from, to }))
    kept.set(keyOf(body), body);
  const fresh: Reading[] = [];
  const differing: { reading: Reading; kept: RoomReading }[] = [];
  for (const reading of readings) {
    const before = kept.get(keyOf(reading));
    if (!before) {
      fresh.push(reading);
      kept.set(keyOf(reading), reading);
    } else if (!saysTheSame(before, reading)) differing.push({ reading, kept: before });
  }
  return { fresh, known: readings.length - fresh.length - differing.length, differing };
}

const keyOf = ({ room, at }: RoomReading): string => `${at} ${room}`;

const saysTheSame = (one: RoomReading, other: RoomReading): boolean =>
  one.temperatureC === other.temperatureC && one.relativeHumidity === other.relativeHumidity;

/** Writes readings down, each as a record. */
export async function writeReadings(
  { tx, newId, now }: Work,
  readings: readonly RoomReading[],
): Promise<void> {
  const records = readings.map(({ at, room, temperatureC, relativeHumidity }) => ({
    id: newId(),
    body: { at, room, temperatureC, relativeHumidity },
    at: now,
  }));
  await tx.records.insertAll('dry-room-reading', records);
}

/** An instrument's clock may be so far ahead of the shop's before its readings are not believed. */
const AHEAD_MS = 10 * 60_000;

export const isAheadOf = (now: string, at: string): boolean => Date.parse(at) - Date.parse(now) > AHEAD_MS;
