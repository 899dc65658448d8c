import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { Day } from '../../core/day/index.js';
import { askJson } from './ask-json.js';

/** The demo workshop's day. */
export const useDay = (): UseQueryResult<Day> =>
  useQuery({ queryKey: ['demo', 'day'], queryFn: ({ signal }) => askJson<Day>('/api/v1/demo/day', signal) });
