import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { DayView } from '../../contract/index.js';
import type { Day } from '../../core/day/index.js';
import { client, orRefused } from './client.js';

const asked = (date?: string) =>
  ({
    queryKey: ['reading', 'day-view', date],
    queryFn: () => orRefused(client.read('day-view', date === undefined ? {} : { date })),
  }) as const;

/** A day's work as it would be planned now, with the orders behind its lines; the shop's today where no date is given. */
export const useDayView = (date?: string): UseQueryResult<DayView> => useQuery(asked(date));

/** The day itself. */
export const useDay = (date?: string): UseQueryResult<Day> =>
  useQuery({ ...asked(date), select: ({ day }) => day });
