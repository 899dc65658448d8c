import { getRouteApi } from '@tanstack/react-router';
import { useMay } from '../api/session.js';
import { useRecord } from '../api/use-records.js';
import { OrderEditor } from '../features/orders/order-editor.js';
import { OrderRoom } from '../features/orders/order-room.js';
import { Asked } from '../parts/asked.js';
import { Lost } from '../parts/lost.js';
import { useWords } from '../words/language.js';
import { ORDERS_WORDS } from '../words/orders.js';

const route = getRouteApi('/orders/$id');

/** One order, or a new one. */
export function OrderPage() {
  const { id } = route.useParams();
  const may = useMay();
  if (id === 'new' && may('order.edit')) return <OrderEditor key="new" />;
  return <KeptOrder key={id} id={id} />;
}

function KeptOrder({ id }: { readonly id: string }) {
  const words = useWords(ORDERS_WORDS);
  const order = useRecord('order', id);
  if (order.error && 'problem' in order.error && !order.data) {
    const { status } = order.error.problem as { readonly status: number };
    if (status === 404 || status === 400) return <Lost what={words.lost} />;
  }
  return (
    <Asked question={order} what={words.orderWhat}>
      {(record) => <OrderRoom record={record} />}
    </Asked>
  );
}
