import {
  type InfiniteData,
  keepPreviousData,
  type UseInfiniteQueryResult,
  useInfiniteQuery,
} from '@tanstack/react-query';
import type { ReadingAnswer, ReadingQuery } from '../../contract/index.js';
import { client, orRefused } from './client.js';

type Paged = 'movements' | 'journal' | 'measurements' | 'tallies' | 'caution-readings';

/** A long reading page after page, newest first: `fetchNextPage` brings the next. */
export const useReadingPages = <Name extends Paged>(
  name: Name,
  query: ReadingQuery<Name>,
): UseInfiniteQueryResult<InfiniteData<ReadingAnswer<Name>>> =>
  useInfiniteQuery({
    queryKey: ['reading', name, 'pages', query],
    queryFn: ({ pageParam }) => orRefused(client.read(name, { limit: 200, ...query, ...after(pageParam) })),
    initialPageParam: undefined as string | undefined,
    getNextPageParam: ({ next }) => next,
    placeholderData: keepPreviousData,
  });

const after = (cursor: string | undefined) => (cursor === undefined ? {} : { after: cursor });
