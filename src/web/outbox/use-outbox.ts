import { createContext, use, useCallback, useMemo } from 'react';
import type { InputNamed, UseCaseName } from '../../contract/index.js';
import { useMe } from '../api/session.js';
import { isOf, type QueuedEntry } from './entry.js';
import { stoppedByRefusal } from './order-of-sending.js';

/** What was entered on the floor and is on its way to the shop. */
export interface Outbox {
  /** Oldest first, of everybody who entered here. */
  readonly entries: readonly QueuedEntry[];
  /** How many the shop has not got yet, those that it refused included. */
  readonly count: number;
  /** Whether the shop's server can be reached just now. */
  readonly isOnline: boolean;
  /** Sends a refused entry again: as it is, or after whatever stood in its way was mended. Where someone else has changed the
   * record meanwhile, upon what stands now. */
  readonly sendAgain: (number: number) => Promise<void>;
  /** Throws an entry away that the shop has not got. False where it may have it already. */
  readonly discard: (number: number) => Promise<boolean>;
  /** Opens an entry to be mended: its form finds it as `editing`. */
  readonly edit: (number: number | undefined) => void;
  /** The refused entry that is being mended. */
  readonly editing: QueuedEntry | undefined;
}

export interface EnterOptions {
  /** What it is, as the person would say it. */
  readonly label: string;
  /** How long it is held before it is sent, ms: so long `undo` takes it back. */
  readonly undoWithin?: number;
  /** Ids of what it depends on, where that is not simply the record that it changes and those that it makes. */
  readonly about?: readonly string[];
  /** Address of the form in which it can be mended if it is refused. */
  readonly place?: string;
}

export interface Entered {
  readonly number: number;
  /** Takes it back, if the shop cannot have it yet. Gives whether it was. */
  readonly undo: () => Promise<boolean>;
}

export interface Queued<Name extends UseCaseName> {
  /**
   * Writes an entry into this browser's own store; from there it is sent in order, done once. `expectedVersion` is that of the
   * record as the page has it: where entries about the record wait already, it is reckoned on from them.
   */
  readonly enter: (input: InputNamed<Name>, options: EnterOptions) => Promise<Entered>;
  /** Entries of this kind which the shop has not answered, or whose answer is not on the page yet; none that were refused or
   * wait behind a refused one. For showing things as they will be. What the server has by the same `id` already: leave out. */
  readonly coming: readonly QueuedEntry<Name>[];
  /** A refused entry that the person chose to mend: the form begins with its input, and `enter` puts the new one in its place. */
  readonly editing: QueuedEntry<Name> | undefined;
}

/** What the provider hands to the hooks. */
export interface OutboxInside extends Outbox {
  readonly enter: <Name extends UseCaseName>(
    useCase: Name,
    input: InputNamed<Name>,
    options: EnterOptions & { readonly by: QueuedEntry['by'] },
  ) => Promise<Entered>;
}

export const OutboxContext = createContext<OutboxInside | undefined>(undefined);

function useInside(): OutboxInside {
  const outbox = use(OutboxContext);
  if (!outbox) throw new Error('Broken promise inside Tautwork: an entry is made outside of any outbox');
  return outbox;
}

export const useOutbox = (): Outbox => useInside();

/** Enters one kind of thing through the outbox: the way of every entry on the floor. */
export function useQueued<Name extends UseCaseName>(name: Name): Queued<Name> {
  const { enter, editing } = useInside();
  const all = useComing();
  const { id, name: personName } = useMe().person;
  const by = useMemo(() => ({ id, name: personName }), [id, personName]);
  const coming = useMemo(
    () => all.filter((entry): entry is QueuedEntry & QueuedEntry<Name> => isOf(entry, name)),
    [all, name],
  );
  return {
    enter: useCallback((input, options) => enter(name, input, { ...options, by }), [enter, name, by]),
    coming,
    editing: editing && isOf(editing, name) ? (editing as QueuedEntry<Name>) : undefined,
  };
}

/** All entries that the shop will probably do, whoever made them: none that were refused or wait behind a refused one. */
export function useComing(): readonly QueuedEntry[] {
  const { entries } = useInside();
  return useMemo(() => {
    const stopped = stoppedByRefusal(entries);
    return entries.filter(({ state, number }) => state !== 'refused' && !stopped.has(number));
  }, [entries]);
}
