import type { QueuedEntry } from './entry.js';

/** What is to be sent next: an entry; one that is held a while yet; or nothing, as things stand. */
export type Next =
  | { readonly kind: 'entry'; readonly entry: QueuedEntry }
  | { readonly kind: 'held'; readonly until: number }
  | { readonly kind: 'nothing' };

/**
 * The next entry of a person in the order of entry. One that shares a record with an earlier one that was refused, or that waits
 * for another person, stays behind it; others pass by.
 */
export function nextToSend(
  entries: readonly QueuedEntry[],
  { personId, now }: { readonly personId: string; readonly now: number },
): Next {
  const stay = numbersBehind(entries, ({ state, by }) => state === 'refused' || by.id !== personId);
  const entry = entries.find(
    ({ number, state, by }) =>
      (state === 'waiting' || state === 'sending') && by.id === personId && !stay.has(number),
  );
  if (!entry) return { kind: 'nothing' };
  const { heldUntil = 0 } = entry;
  return heldUntil > now ? { kind: 'held', until: heldUntil } : { kind: 'entry', entry };
}

/** Numbers of the entries that wait for a person's word about a refused one before them. */
export const stoppedByRefusal = (entries: readonly QueuedEntry[]): ReadonlySet<number> =>
  numbersBehind(entries, ({ state }) => state === 'refused');

/** Entries behind one that stops, as far as they are about the same; what is behind those stays too. */
function numbersBehind(
  entries: readonly QueuedEntry[],
  stops: (entry: QueuedEntry) => boolean,
): ReadonlySet<number> {
  const behind = new Set<number>();
  const touched = new Set<string>();
  for (const entry of entries) {
    if (entry.state === 'done') continue;
    const isBehind = entry.about.some((id) => touched.has(id));
    if (isBehind) behind.add(entry.number);
    if (isBehind || stops(entry)) for (const id of entry.about) touched.add(id);
  }
  return behind;
}
