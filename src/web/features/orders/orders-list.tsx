import { NativeSelect, TextInput } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { useMay } from '../../api/session.js';
import { useDayView } from '../../api/use-day.js';
import { Button, buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { OrderState } from './order-state.js';
import { type OrderPromise, promiseInWords, promises } from './promise.js';
import { useExport } from './use-export.js';
import { LISTS, type OrderList, type OrderRecord, useListedOrders } from './use-listed-orders.js';

/** The orders, as long as the list may be. */
export function OrdersList({ list }: { readonly list: OrderList }) {
  const words = useWords(ORDERS_WORDS);
  const figures = useFigures();
  const navigate = useNavigate();
  const [text, setText] = useState('');
  const { orders, isByDue, hasMore, more, error, again } = useListedOrders(list, text);
  const day = useDayView();
  const promiseOf = useMemo(() => promises(day.data), [day.data]);
  const today = day.data?.day.date;
  const columns = useMemo(
    () => columnsOf({ words, figures, promiseOf, today }),
    [words, figures, promiseOf, today],
  );
  return (
    <>
      <div className={desk.narrow}>
        <TextInput
          label={words.find}
          placeholder={words.findHint}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <NativeSelect
          label={words.which}
          value={list}
          data={LISTS.map((value) => ({ value, label: words.states[value] ?? value }))}
          onChange={({ currentTarget: { value: state } }) =>
            void navigate({ to: '/orders', search: { state }, replace: true })
          }
        />
        <p role="status" className={desk.loose}>
          {orders && words.count(orders.length, hasMore, isByDue ? words.byDue : words.byEntry)}
        </p>
        <Doings {...{ list, text, promiseOf, today }} />
      </div>
      {error && !orders && (
        <Empty what={error.message}>
          <Button onClick={again}>{words.lookAgain}</Button>
        </Empty>
      )}
      {orders?.length === 0 && (
        <Empty what={text === '' && list === 'open' ? words.noneAtAll : words.none}>
          <p>{words.noneMore}</p>
        </Empty>
      )}
      {orders && orders.length > 0 && (
        <LongTable
          caption={words.title}
          columns={columns}
          rows={orders}
          rowKey={({ id }) => id}
          onNearEnd={more}
        />
      )}
    </>
  );
}

interface Shown {
  readonly words: (typeof ORDERS_WORDS)['en'];
  readonly figures: Figures;
  readonly promiseOf: (order: OrderRecord) => OrderPromise;
  readonly today: string | undefined;
}

const columnsOf = ({ words, figures, promiseOf, today }: Shown): readonly LongColumn<OrderRecord>[] => [
  {
    heading: words.columns.number,
    cell: ({ id, body }) => (
      <Link to="/orders/$id" params={{ id }} preload={false}>
        {body.number}
      </Link>
    ),
  },
  { heading: words.columns.player, share: 1.6, cell: ({ body }) => body.player },
  { heading: words.columns.due, share: 1.85, cell: ({ body }) => figures.date(body.due) },
  {
    heading: words.columns.sets,
    share: 0.65,
    figures: true,
    cell: ({ body }) => figures.number(setsOf(body)),
  },
  { heading: words.columns.state, share: 1.75, cell: ({ state }) => <OrderState state={state} /> },
  {
    heading: words.columns.promise,
    share: 2.15,
    cell: (order) => {
      const promise = promiseOf(order);
      const isLate = promise.kind === 'cannot' || (promise.kind === 'ready' && promise.daysLate > 0);
      return (
        <span className={isLate ? 'care' : ''}>{promiseInWords(promise, today, words, figures.date)}</span>
      );
    },
  },
];

export const setsOf = ({ lines }: OrderRecord['body']): number =>
  lines.reduce((sum, { quantity }) => sum + quantity, 0);

interface DoingsProps {
  readonly list: OrderList;
  readonly text: string;
  readonly promiseOf: Shown['promiseOf'];
  readonly today: string | undefined;
}

function Doings({ list, text, promiseOf, today }: DoingsProps) {
  const words = useWords(ORDERS_WORDS);
  const may = useMay();
  const { exportList, busy } = useExport({ list, text, promiseOf, today });
  return (
    <div className={`${desk.row} ${desk.loose}`}>
      {may('order.edit') && (
        <>
          <Link to="/orders/$id" params={{ id: 'new' }} className={buttonClass('main')}>
            {words.newOrder}
          </Link>
          <Link to="/orders/import" className={buttonClass()}>
            {words.import}
          </Link>
        </>
      )}
      <Button busy={busy} onClick={exportList}>
        {words.export}
      </Button>
    </div>
  );
}
