import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { Shop } from '../../core/day/index.js';
import { askJson } from './ask-json.js';

/** The demo workshop itself: recipes, sets, wires, machines. */
export const useShop = (): UseQueryResult<Shop> =>
  useQuery({
    queryKey: ['demo', 'shop'],
    queryFn: ({ signal }) => askJson<Shop>('/api/v1/demo/shop', signal),
  });
