import { freshId } from '../api/fresh-id.js';
import type { QueuedEntry } from './entry.js';
import type { EntryStore } from './entry-store.js';
import { expectedVersionOf, expecting, followersMoved } from './records-touched.js';

/**
 * Throws an entry away, and moves what builds on it. Only what the shop cannot have: a refused one, or one that was never sent;
 * gives false of any other.
 */
export const discardFrom = (store: EntryStore, number: number): Promise<boolean> =>
  store.change(async (queue) => {
    const entry = await queue.get(number);
    if (!entry || entry.state === 'sending' || entry.state === 'done') return false;
    await queue.drop(number);
    for (const follower of followersMoved(await queue.all(), { entry, by: -1 })) await queue.put(follower);
    return true;
  });

/**
 * Puts a refused entry back into its turn. Where someone else changed the record meanwhile it goes upon what stands now, and
 * so does what builds on it; that is another request then.
 */
export const sendAgainIn = (store: EntryStore, number: number): Promise<void> =>
  store.change(async (queue) => {
    const entry = await queue.get(number);
    if (entry?.state !== 'refused') return;
    const { problem: _, ...waiting } = { ...entry, state: 'waiting' as const };
    const current = versionNow(entry);
    const expected = expectedVersionOf(entry.input);
    if (current === undefined || expected === undefined || current === expected) {
      await queue.put(waiting);
      return;
    }
    await queue.put({ ...expecting(waiting, current), requestId: freshId() });
    const moved = followersMoved(await queue.all(), { entry, by: current - expected });
    for (const follower of moved) await queue.put(follower);
  });

/** The version that the record has now, where the shop refused because it is another than was thought. */
export function versionNow({ problem }: QueuedEntry): number | undefined {
  if (problem?.code !== 'stale-version') return undefined;
  const { current } = problem as { readonly current?: { readonly version?: number } };
  return current?.version;
}
