import {
  type InfiniteData,
  keepPreviousData,
  type UseInfiniteQueryResult,
  type UseQueryResult,
  useInfiniteQuery,
  useQuery,
} from '@tanstack/react-query';
import type {
  BodyOf,
  ListPage,
  ListValues,
  ReadingAnswer,
  ReadingName,
  ReadingQuery,
  RecordKind,
  StoredRecord,
} from '../../contract/index.js';
import { client, orRefused } from './client.js';

export type RecordOf<Kind extends RecordKind> = StoredRecord<BodyOf<Kind>>;

interface Asking {
  /** False while it is not known yet what to ask. */
  readonly enabled?: boolean;
}

/** A page of the records of a kind; the page before stays in sight while another is fetched. */
export const useRecords = <Kind extends RecordKind>(
  kind: Kind,
  query: ListValues = {},
  { enabled = true }: Asking = {},
): UseQueryResult<ListPage<BodyOf<Kind>>> =>
  useQuery({
    queryKey: ['record', kind, 'list', query],
    queryFn: () => orRefused(client.list(kind, query)),
    placeholderData: keepPreviousData,
    enabled,
  });

/** The records of a kind page after page, for lists that may be long: `fetchNextPage` brings the next. */
export const useRecordPages = <Kind extends RecordKind>(
  kind: Kind,
  query: ListValues = {},
): UseInfiniteQueryResult<InfiniteData<ListPage<BodyOf<Kind>>>> =>
  useInfiniteQuery({
    queryKey: ['record', kind, 'pages', query],
    queryFn: ({ pageParam }) => orRefused(client.list(kind, { limit: 200, ...query, after: pageParam })),
    initialPageParam: undefined as string | undefined,
    getNextPageParam: ({ next }) => next,
    placeholderData: keepPreviousData,
  });

/** All records of a kind, however many pages they are: for catalogues and what stands open, not for histories. */
export const useAllRecords = <Kind extends RecordKind>(
  kind: Kind,
  query: ListValues = {},
  { enabled = true }: Asking = {},
): UseQueryResult<readonly RecordOf<Kind>[]> =>
  useQuery({
    queryKey: ['record', kind, 'all', query],
    queryFn: () => allOf(kind, query),
    enabled,
  });

async function allOf<Kind extends RecordKind>(
  kind: Kind,
  query: ListValues,
): Promise<readonly RecordOf<Kind>[]> {
  const items: RecordOf<Kind>[] = [];
  let after: string | undefined;
  do {
    const page: ListPage<BodyOf<Kind>> = await orRefused(client.list(kind, { ...query, limit: 500, after }));
    items.push(...page.items);
    after = page.next;
  } while (after !== undefined);
  return items;
}

export const useRecord = <Kind extends RecordKind>(
  kind: Kind,
  id: string,
  { enabled = true }: Asking = {},
): UseQueryResult<RecordOf<Kind>> =>
  useQuery({
    queryKey: ['record', kind, 'one', id],
    queryFn: () => orRefused(client.get(kind, id)),
    enabled,
  });

/** Every version of a record, the present one last. */
export const useVersions = <Kind extends RecordKind>(
  kind: Kind,
  id: string,
  { enabled = true }: Asking = {},
): UseQueryResult<readonly RecordOf<Kind>[]> =>
  useQuery({
    queryKey: ['record', kind, 'versions', id],
    queryFn: async () => (await orRefused(client.versions(kind, id))).items,
    enabled,
  });

/** What is read but is no record: ledger, readings of the floor, journal, views. */
export const useReading = <Name extends ReadingName>(
  name: Name,
  query: ReadingQuery<Name>,
  { enabled = true }: Asking = {},
): UseQueryResult<ReadingAnswer<Name>> =>
  useQuery({
    queryKey: ['reading', name, query],
    queryFn: () => orRefused(client.read(name, query)),
    placeholderData: keepPreviousData,
    enabled,
  });
