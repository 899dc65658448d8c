import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { lateInWords } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { useDayView } from '../../api/use-day.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Facts } from '../../parts/facts.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { CancelOrder } from './cancel-order.js';
import { OrderEditor } from './order-editor.js';
import { OrderHistory } from './order-history.js';
import { OrderLines } from './order-lines.js';
import { OrderPacks } from './order-packs.js';
import { OrderState } from './order-state.js';
import { machineNames } from './order-words.js';
import { setsOf } from './orders-list.js';
import { promiseInWords, promises } from './promise.js';
import type { OrderRecord } from './use-listed-orders.js';

/** One order: whose, when, of what strings, how far it is, and what happened to it. */
export function OrderRoom({ record }: { readonly record: OrderRecord }) {
  const words = useWords(ORDERS_WORDS);
  const may = useMay();
  const [isEdited, setEdited] = useState(false);
  const { id, state, body } = record;
  if (isEdited) return <OrderEditor record={record} onDone={() => setEdited(false)} />;
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div className={desk.about}>
          <RoomTitle title={words.order(body.number)} />
          <OrderState state={state} />
        </div>
        <div className={desk.row}>
          {may('order.edit') && state === 'received' && (
            <Button onClick={() => setEdited(true)}>{words.edit}</Button>
          )}
          {may('order.edit') && (state === 'received' || state === 'packing') && (
            <CancelOrder record={record} />
          )}
          <Link to="/orders">{words.backToList}</Link>
        </div>
      </div>
      <About record={record} />
      <OrderLines record={record} />
      <OrderPacks orderId={id} />
      <OrderHistory record={record} />
    </div>
  );
}

function About({ record }: { readonly record: OrderRecord }) {
  const words = useWords(ORDERS_WORDS);
  const { date, number, moment } = useFigures();
  const day = useDayView();
  const { body, createdAt } = record;
  const promise = promises(day.data)(record);
  const isLate = promise.kind === 'cannot' || (promise.kind === 'ready' && promise.daysLate > 0);
  const late = day.data?.day.orders.find(
    ({ line, lateBecause }) => day.data.orderIds[line] === record.id && lateBecause,
  );
  const { facts } = words;
  return (
    <section aria-label={words.orderWhat} className={desk.stack}>
      <Facts
        facts={[
          { name: facts.player, value: body.player === '' ? words.nobody : body.player },
          { name: facts.due, value: date(body.due) },
          { name: facts.sets, value: number(setsOf(body)) },
          {
            name: facts.promise,
            value: promiseInWords(promise, day.data?.day.date, words, date),
            care: isLate,
          },
          {
            name: facts.entered,
            value: moment(createdAt),
            under: body.imported?.source ?? words.byHand,
          },
        ]}
      />
      {late?.lateBecause && day.data && (
        <p className="care">{words.lateBecause(lateInWords(late.lateBecause, machineNames(day.data.day)))}</p>
      )}
      {body.note && <p>{words.quoted(body.note)}</p>}
    </section>
  );
}
