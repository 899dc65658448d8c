import type { QueuedEntry } from './entry.js';

type Fields = Readonly<Record<string, unknown>>;

/** In whose name a use case is done, the nearest first: a string that is picked changes its pack, though it names its lot. */
const SUBJECTS = ['packId', 'runId', 'lotId', 'spoolId', 'orderId', 'id'] as const;

/** The record that an input changes: the one whose version it expects. */
export const subjectOf = (input: object): string | undefined =>
  SUBJECTS.map((name) => (input as Fields)[name]).find((id) => typeof id === 'string');

/** What an entry depends on: the record that it changes, and those that it makes; of several rows, theirs. */
export function recordsTouched(input: object): readonly string[] {
  const { id, runId, lotId, trialStringId, rows } = input as Fields;
  const ofRows = Array.isArray(rows) ? rows.flatMap(recordsTouched) : [];
  // The lot that a closing run names is made by it.
  const made = [id, trialStringId, runId === undefined ? undefined : lotId];
  const all = [subjectOf(input), ...made, ...ofRows].filter((each) => typeof each === 'string');
  return [...new Set(all)];
}

/** An input with the version that its record will have, once all that waits before it is done: each step adds one. `reached`:
 * the version that the record has by what was sent already, where that is known. */
export function inputReckonedOn<Input extends object>(
  input: Input,
  before: readonly QueuedEntry[],
  reached = 0,
): Input {
  const given = expectedVersionOf(input);
  if (given === undefined) return input;
  const reckoned = before
    .filter((entry) => subjectOf(entry.input) === subjectOf(input))
    .map((entry) => (expectedVersionOf(entry.input) ?? 0) + 1);
  return { ...input, expectedVersion: Math.max(given, reached, ...reckoned) };
}

/** The entries that wait behind one about the same record, their versions moved: where it was thrown away, or went on from
 * another version than was thought. */
export function followersMoved(
  entries: readonly QueuedEntry[],
  { entry, by }: { readonly entry: QueuedEntry; readonly by: number },
): readonly QueuedEntry[] {
  if (by === 0 || expectedVersionOf(entry.input) === undefined) return [];
  return entries
    .filter(({ number, state, input }) => {
      const isBehind = number > entry.number && subjectOf(input) === subjectOf(entry.input);
      return isBehind && state !== 'done' && expectedVersionOf(input) !== undefined;
    })
    .map((follower) => expecting(follower, expectedVersionOf(follower.input)! + by));
}

/** An entry that expects another version of its record. */
export const expecting = (entry: QueuedEntry, expectedVersion: number): QueuedEntry =>
  ({ ...entry, input: { ...entry.input, expectedVersion } }) as QueuedEntry;

export function expectedVersionOf(input: object): number | undefined {
  const { expectedVersion } = input as Fields;
  return typeof expectedVersion === 'number' ? expectedVersion : undefined;
}
