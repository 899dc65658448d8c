import { useDebouncedValue } from '@mantine/hooks';
import { useMemo } from 'react';
import { byText } from '../../../core/foundation/index.js';
import { type RecordOf, useAllRecords, useRecordPages } from '../../api/use-records.js';

export type OrderRecord = RecordOf<'order'>;

/** Which orders are listed: those that are open (the usual), those of one state, or all that ever were. */
export const LISTS = ['open', 'received', 'packing', 'shipped', 'cancelled', 'all'] as const;
export type OrderList = (typeof LISTS)[number];

export interface ListedOrders {
  readonly orders: readonly OrderRecord[] | undefined;
  readonly error: Error | null;
  readonly isByDue: boolean;
  readonly hasMore: boolean;
  readonly more: () => void;
  readonly again: () => void;
}

const SETTLES_AFTER_MS = 200;

/**
 * Orders as they are looked for. What is open is few enough to be had whole and stands by due date; what is done grows
 * with the years and comes page by page, newest first.
 */
export function useListedOrders(list: OrderList, text: string): ListedOrders {
  const [settled] = useDebouncedValue(text.trim(), SETTLES_AFTER_MS);
  const search = settled === '' ? {} : { search: settled };
  const isWhole = list === 'open' || list === 'received' || list === 'packing';
  const received = useAllRecords(
    'order',
    { state: 'received', ...search },
    { enabled: isWhole && list !== 'packing' },
  );
  const packing = useAllRecords(
    'order',
    { state: 'packing', ...search },
    { enabled: isWhole && list !== 'received' },
  );
  const pages = useRecordPages('order', {
    ...(list === 'shipped' || list === 'cancelled' ? { state: list } : {}),
    ...search,
    // Of a list that is had whole a page is asked for all the same: one, the smallest.
    ...(isWhole ? { limit: 1 } : {}),
  });
  const whole = useMemo(() => {
    const parts = [
      ...(list === 'packing' ? [] : [received.data]),
      ...(list === 'received' ? [] : [packing.data]),
    ];
    if (parts.some((part) => part === undefined)) return undefined;
    return parts.flatMap((part) => part ?? []).sort(byDue);
  }, [list, received.data, packing.data]);
  const paged = useMemo(() => pages.data?.pages.flatMap(({ items }) => items), [pages.data]);
  return {
    orders: isWhole ? whole : paged,
    error: isWhole ? (received.error ?? packing.error) : pages.error,
    isByDue: isWhole,
    hasMore: !isWhole && pages.hasNextPage,
    more: () => {
      if (!isWhole && pages.hasNextPage && !pages.isFetching) void pages.fetchNextPage();
    },
    again: () => {
      for (const asked of [received, packing, pages]) void asked.refetch();
    },
  };
}

const byDue = (a: OrderRecord, b: OrderRecord): number =>
  byText(a.body.due, b.body.due) || byText(a.body.number, b.body.number);
