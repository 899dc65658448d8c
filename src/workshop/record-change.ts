import type { BodyOf, RecordKind, StoredRecord } from '../contract/index.js';
import { type Lifecycle, takeStep } from '../core/foundation/index.js';
import { type ReadTransaction, StaleVersion } from '../store/index.js';
import { refuse } from './refusal.js';
import type { Work } from './use-case.js';

type RecordOf<Kind extends RecordKind> = StoredRecord<BodyOf<Kind>>;

/** The record; refuses with `record.missing` where there is none. */
export async function needRecord<Kind extends RecordKind>(
  tx: Pick<ReadTransaction, 'records'>,
  kind: Kind,
  id: string,
): Promise<RecordOf<Kind>> {
  return (await tx.records.get(kind, id)) ?? refuse({ code: 'record.missing', kind, id });
}

/**
 * The record as its writer saw it; throws `StaleVersion` where it has changed since. Asked first of all, so that
 * of two people who do the same the second is told so, and not that the step is no longer allowed.
 */
export async function recordAsSeen<Kind extends RecordKind>(
  tx: Pick<ReadTransaction, 'records'>,
  kind: Kind,
  seen: { readonly id: string; readonly expectedVersion: number },
): Promise<RecordOf<Kind>> {
  const record = await needRecord(tx, kind, seen.id);
  if (record.version === seen.expectedVersion) return record;
  throw new StaleVersion(kind, seen.id, seen.expectedVersion, record);
}

/** Writes a new record where no version is given, else the next version over the one given. */
export async function saveRecord<Kind extends RecordKind>(
  { tx, now }: Work,
  kind: Kind,
  saved: {
    readonly id: string;
    readonly expectedVersion?: number | undefined;
    readonly state?: string;
    readonly body: BodyOf<Kind>;
  },
): Promise<RecordOf<Kind>> {
  const { id, expectedVersion, body } = saved;
  const state = saved.state === undefined ? {} : { state: saved.state };
  if (expectedVersion === undefined) return tx.records.insert(kind, { id, ...state, body, at: now });
  // The store says `StaleVersion` of a record that is not there; people are told that it is missing.
  await needRecord(tx, kind, id);
  return tx.records.update(kind, { id, expectedVersion, ...state, body, at: now });
}

/** Takes a step of a record's life and writes the body that goes with it; refuses with the steps that may be taken. */
export async function stepRecord<Kind extends RecordKind, Step extends string>(
  { tx, now }: Work,
  kind: Kind,
  change: {
    readonly record: RecordOf<Kind>;
    readonly life: Lifecycle<string, Step>;
    readonly step: Step;
    readonly body?: BodyOf<Kind>;
  },
): Promise<RecordOf<Kind>> {
  const { record, life, step, body = record.body } = change;
  const state = takeStep(life, record.state, step);
  if (!state.ok) refuse({ ...state.fault, id: record.id });
  return tx.records.update(kind, {
    id: record.id,
    expectedVersion: record.version,
    state: state.value,
    body,
    at: now,
  });
}
