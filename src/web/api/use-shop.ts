import { type UseQueryResult, useQuery } from '@tanstack/react-query';
import type { ShopView } from '../../contract/index.js';
import type { Shop } from '../../core/day/index.js';
import { client, orRefused } from './client.js';

const asked = {
  queryKey: ['reading', 'shop-view'],
  queryFn: () => orRefused(client.read('shop-view', {})),
} as const;

/** The shop with the ids of the records behind its names. */
export const useShopView = (): UseQueryResult<ShopView> => useQuery(asked);

/** The shop itself: recipes, sets, wires, machines, shelf. */
export const useShop = (): UseQueryResult<Shop> => useQuery({ ...asked, select: ({ shop }) => shop });
