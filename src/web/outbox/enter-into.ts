import type { InputNamed, UseCaseName } from '../../contract/index.js';
import { freshId } from '../api/fresh-id.js';
import type { QueuedEntry } from './entry.js';
import type { EntryStore, Queue } from './entry-store.js';
import { expectedVersionOf, followersMoved, inputReckonedOn, recordsTouched } from './records-touched.js';
import type { EnterOptions } from './use-outbox.js';

interface NewEntry<Name extends UseCaseName> extends EnterOptions {
  readonly useCase: Name;
  readonly input: InputNamed<Name>;
  readonly by: QueuedEntry['by'];
  /** Number of the refused entry whose place it takes. */
  readonly replaced: number | undefined;
  /** Version that its record has by what was sent already. */
  readonly reached?: number | undefined;
}

/** Writes an entry into the queue. Gives its number. */
export const enterInto = <Name extends UseCaseName>(
  store: EntryStore,
  entry: NewEntry<Name>,
): Promise<number> =>
  store.change(async (queue) => {
    const before = await queue.all();
    const replaced = before.find(({ number, state }) => number === entry.replaced && state === 'refused');
    return replaced ? takePlace(queue, replaced, entryOf(entry, [])) : queue.add(entryOf(entry, before));
  });

/** A mended entry is a new request, but keeps its place before those that build on it. */
async function takePlace(
  queue: Queue,
  replaced: QueuedEntry,
  fresh: Omit<QueuedEntry, 'number'>,
): Promise<number> {
  const { number } = replaced;
  const by = (expectedVersionOf(fresh.input) ?? 0) - (expectedVersionOf(replaced.input) ?? 0);
  await queue.put({ ...fresh, number } as QueuedEntry);
  const moved = followersMoved(await queue.all(), { entry: replaced, by });
  for (const follower of moved) await queue.put(follower);
  return number;
}

function entryOf<Name extends UseCaseName>(
  { useCase, input, label, by, undoWithin, about, place, reached }: NewEntry<Name>,
  before: readonly QueuedEntry[],
): Omit<QueuedEntry, 'number'> {
  const now = Date.now();
  return {
    requestId: freshId(),
    useCase,
    input: inputReckonedOn(input, before, reached),
    label,
    by,
    at: new Date(now).toISOString(),
    about: about ?? recordsTouched(input),
    state: 'waiting',
    ...(undoWithin === undefined ? {} : { heldUntil: now + undoWithin }),
    ...(place === undefined ? {} : { place }),
  };
}
