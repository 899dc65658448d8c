import { getRouteApi } from '@tanstack/react-router';
import { OrdersList } from '../features/orders/orders-list.js';
import { LISTS } from '../features/orders/use-listed-orders.js';
import { RoomTitle } from '../parts/room-title.js';
import { useWords } from '../words/language.js';
import { ORDERS_WORDS } from '../words/orders.js';
import styles from './orders-page.module.css';

const route = getRouteApi('/orders');

/** The orders: those that are open first. */
export function OrdersPage() {
  const words = useWords(ORDERS_WORDS);
  const { state } = route.useSearch();
  return (
    <div className={styles.room}>
      <RoomTitle title={words.title} />
      <OrdersList list={LISTS.find((list) => list === state) ?? 'open'} />
    </div>
  );
}
