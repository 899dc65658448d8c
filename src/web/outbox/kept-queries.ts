import { type Query, type QueryClient, type QueryKey, useQueryClient } from '@tanstack/react-query';
import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { useEffect, useState } from 'react';
import { useMe, useSession } from '../api/session.js';
import { isFloor } from '../frame/doors.js';

interface Shelves extends DBSchema {
  answers: { key: string; value: KeptAnswer };
}

/** An answer of the shop, kept so that the floor's rooms open without a line. */
interface KeptAnswer {
  readonly hash: string;
  readonly key: QueryKey;
  readonly data: unknown;
  readonly personId: string;
  readonly at: number;
}

/** What the floor's rooms show. What only the desk asks is kept nowhere. */
const KEPT: ReadonlySet<string> = new Set([
  'now',
  'shop-view',
  'balances',
  'trial-strings',
  'past-dial-ins',
  'my-cautions',
  'voided-entries',
  'tallies',
  'measurements',
  'end-checks',
  'machine',
  'dial-round',
  'run',
  'spool',
  'wire',
  'recipe',
  'string-lot',
  'bin',
  'dry-room-air',
  'settings',
  'order',
  'pack',
  'packing-roll',
]);

/** So old that it is asked for again as soon as there is a line. */
const LAID_OUT_AT = 1;

/** Older answers than a week are of runs and lots long done. */
const KEPT_FOR_MS = 7 * 24 * 3600 * 1000;

/**
 * Keeps what the floor's rooms were told, and lays it out again when the page is opened anew. Gives whether the rooms may open:
 * without a line they wait for what is kept, with one they ask the shop at once.
 */
export function useKeptQueries(): boolean {
  const queries = useQueryClient();
  const { standing } = useSession();
  const personId = useMe().person.id;
  const isOnline = standing.kind === 'somebody' && standing.isOnline;
  const [isLaidOut, setLaidOut] = useState(false);
  useEffect(() => {
    const opened = open();
    let stop = () => {};
    let isGone = false;
    void opened
      .then((database) => layOut(database, queries, personId))
      .finally(() => {
        if (isGone) return;
        setLaidOut(true);
        stop = keepAnswers(opened, queries, personId);
      });
    return () => {
      isGone = true;
      stop();
    };
  }, [queries, personId]);
  return isOnline || isLaidOut;
}

const open = (): Promise<IDBPDatabase<Shelves>> =>
  openDB<Shelves>('tautwork.kept', 1, {
    upgrade: (database) => {
      database.createObjectStore('answers', { keyPath: 'hash' });
    },
  });

/** What is fresh from the shop already stays; what is laid out counts as old, and is asked for again where there is a line. */
async function layOut(
  database: IDBPDatabase<Shelves>,
  queries: QueryClient,
  personId: string,
): Promise<void> {
  const oldest = Date.now() - KEPT_FOR_MS;
  for (const { hash, key, data, personId: of, at } of await database.getAll('answers')) {
    // Another person's rooms are not this one's.
    if (of !== personId || at < oldest) await database.delete('answers', hash);
    else if (queries.getQueryData(key) === undefined)
      queries.setQueryData(key, data, { updatedAt: LAID_OUT_AT });
  }
}

/**
 * Keeps every answer that a room of the floor shows: those that come, and those that are here already when it opens. Gives what
 * stops it.
 */
function keepAnswers(
  opened: Promise<IDBPDatabase<Shelves>>,
  queries: QueryClient,
  personId: string,
): () => void {
  const keep = ({ queryHash: hash, queryKey: key, state }: Query) => {
    // What was laid out is kept already.
    if (state.data === undefined || state.dataUpdatedAt === LAID_OUT_AT) return;
    if (!isKept(key) || !isFloor(window.location.pathname)) return;
    const answer = { hash, key, data: state.data, personId, at: state.dataUpdatedAt };
    void opened.then((database) => database.put('answers', answer));
  };
  const cache = queries.getQueryCache();
  for (const query of cache.getAll()) keep(query);
  return cache.subscribe((event) => {
    const isNew = event.type === 'updated' && event.action.type === 'success';
    if (isNew || event.type === 'observerAdded') keep(event.query);
  });
}

const isKept = ([what, name, how]: QueryKey): boolean =>
  (what === 'record' || what === 'reading') && KEPT.has(String(name)) && how !== 'pages';
