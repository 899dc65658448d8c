import { useQueryClient } from '@tanstack/react-query';
import { type ReactNode, useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { useMe, useSession } from '../api/session.js';
import { fetchAnew, sendEntry, whoIsHere } from './asking.js';
import { discardFrom, sendAgainIn } from './decisions.js';
import { enterInto } from './enter-into.js';
import type { QueuedEntry } from './entry.js';
import { type EntryStore, openEntryStore } from './entry-store.js';
import { useKeptQueries } from './kept-queries.js';
import { type Sending, startSending } from './sending.js';
import { OutboxContext, type OutboxInside } from './use-outbox.js';
import { type VersionsReached, versionsReached } from './versions-reached.js';

interface OutboxProviderProps {
  /** Whether live events come: the quickest sign that the server is there. */
  readonly isUp: boolean;
  readonly children: ReactNode;
}

/** Opens this browser's queue, and sends from it what is of the person who is signed in. */
export function OutboxProvider({ isUp, children }: OutboxProviderProps) {
  const store = useMemo(openEntryStore, []);
  const reached = useMemo(versionsReached, []);
  const entries = useEntries(store);
  const { sending, isReached } = useSending(store, reached);
  const [editedNumber, setEdited] = useState<number>();
  const hasNetwork = useSyncExternalStore(onNetwork, () => navigator.onLine);
  const isOnline = hasNetwork && isUp && isReached;

  useEffect(() => {
    if (hasNetwork && isUp) sending?.kick();
  }, [hasNetwork, isUp, sending]);

  const outbox = useMemo<OutboxInside>(() => {
    const editing = entries.find(({ number, state }) => number === editedNumber && state === 'refused');
    return {
      entries,
      count: entries.filter(({ state }) => state !== 'done').length,
      isOnline,
      editing,
      enter: async (useCase, input, options) => {
        const replaced = editing?.useCase === useCase ? editing.number : undefined;
        const entered = await enterInto(store, {
          useCase,
          input,
          replaced,
          reached: reached.of(input),
          ...options,
        });
        setEdited(undefined);
        sending?.kick();
        return {
          number: entered,
          undo: () => discardFrom(store, entered),
        };
      },
      sendAgain: async (number) => {
        await sendAgainIn(store, number);
        sending?.kick();
      },
      discard: async (number) => {
        const isGone = await discardFrom(store, number);
        sending?.kick();
        return isGone;
      },
      edit: setEdited,
    };
  }, [entries, editedNumber, isOnline, store, sending, reached]);
  const isLaidOut = useKeptQueries();
  return <OutboxContext value={outbox}>{isLaidOut && children}</OutboxContext>;
}

function useEntries(store: EntryStore): readonly QueuedEntry[] {
  const [entries, setEntries] = useState<readonly QueuedEntry[]>([]);
  useEffect(() => {
    let isGone = false;
    const read = () => {
      void store.all().then((all) => {
        if (!isGone) setEntries(all);
      });
    };
    read();
    const stop = store.onChange(read);
    return () => {
      isGone = true;
      stop();
    };
  }, [store]);
  return entries;
}

function useSending(
  store: EntryStore,
  reached: VersionsReached,
): {
  readonly sending: Sending | undefined;
  readonly isReached: boolean;
} {
  const queries = useQueryClient();
  const { askAgain } = useSession();
  const { person } = useMe();
  const [sending, setSending] = useState<Sending>();
  const [isReached, setReached] = useState(true);
  useEffect(() => {
    const started = startSending({
      store,
      personId: person.id,
      send: sendEntry,
      whoIsHere: () => whoIsHere(person.id),
      fetchAnew: () => fetchAnew(queries),
      onOtherPerson: askAgain,
      onDone: reached.note,
      onReach: setReached,
    });
    setSending(started);
    started.kick();
    return started.stop;
  }, [store, person.id, queries, askAgain, reached]);
  return { sending, isReached };
}

function onNetwork(hear: () => void): () => void {
  for (const event of ['online', 'offline']) window.addEventListener(event, hear);
  return () => {
    for (const event of ['online', 'offline']) window.removeEventListener(event, hear);
  };
}
