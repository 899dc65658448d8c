import { useDeferredValue, useMemo, useState } from 'react';
import type { Day, DayOrder } from '../../../core/day/index.js';
import { type OrderWish, pickOrders } from './pick-orders.js';

const ORDERS_ON_A_PAGE = 20;

interface PickedOrders {
  readonly wish: OrderWish;
  readonly wishFor: (change: Partial<OrderWish>) => void;
  readonly found: number;
  readonly shown: readonly DayOrder[];
  readonly page: number;
  readonly pages: number;
  readonly turnTo: (page: number) => void;
}

/** The orders of a day as they are looked for, a page at a time. */
export function usePickedOrders(day: Day): PickedOrders {
  const [wish, setWish] = useState<OrderWish>({ text: '', only: 'all' });
  const [page, turnTo] = useState(1);
  const settled = useDeferredValue(wish);
  const found = useMemo(() => pickOrders(day, settled), [day, settled]);
  return {
    wish,
    wishFor: (change) => {
      setWish({ ...wish, ...change });
      turnTo(1);
    },
    found: found.length,
    shown: found.slice((page - 1) * ORDERS_ON_A_PAGE, page * ORDERS_ON_A_PAGE),
    page,
    pages: Math.max(1, Math.ceil(found.length / ORDERS_ON_A_PAGE)),
    turnTo,
  };
}
