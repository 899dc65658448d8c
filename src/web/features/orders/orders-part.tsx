import { Pagination, SegmentedControl, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useMemo } from 'react';
import { lateInWords, type PlanView, warningInWords } from '../../../contract/index.js';
import type { Day, DayOrder } from '../../../core/day/index.js';
import { formatMoney } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { machineNames, orderKindInWords, readyInWords } from './order-words.js';
import styles from './orders-part.module.css';
import { usePickedOrders } from './use-picked-orders.js';

type OrdersWords = (typeof ORDERS_WORDS)['en'];

/** The orders of the day: whose, what, due when, ready when, late why, at what cost. */
export function OrdersPart({ view }: { readonly view: PlanView }) {
  const words = useWords(ORDERS_WORDS);
  const figures = useFigures();
  const { day } = view;
  const { wish, wishFor, found, shown, page, pages, turnTo } = usePickedOrders(day);
  const columns = useMemo(() => columnsOf(view, words, figures), [view, words, figures]);
  return (
    <section aria-labelledby="orders" className={styles.part}>
      <h2 id="orders">{words.partTitle}</h2>
      <div className={styles.wishes}>
        <TextInput
          label={words.find}
          placeholder={words.findOrderHint}
          value={wish.text}
          onChange={(event) => wishFor({ text: event.currentTarget.value })}
        />
        <SegmentedControl
          aria-label={words.which}
          data={(['all', 'late', 'to-tell'] as const).map((value) => ({ value, label: words.only[value] }))}
          value={wish.only}
          onChange={(only) => wishFor({ only: only as typeof wish.only })}
        />
        <p role="status" className={styles.count}>
          {words.countOf(found, day.orders.length)}
        </p>
      </div>
      {found === 0 ? (
        <p className="quiet">{day.orders.length === 0 ? words.noneAtAll : words.none}</p>
      ) : (
        <SheetTable caption={words.partTitle} columns={columns} rows={shown} rowKey={({ line }) => line} />
      )}
      {pages > 1 && (
        <nav aria-label={words.pages} className={styles.pages}>
          <Pagination
            total={pages}
            value={page}
            onChange={turnTo}
            getControlProps={(control) => ({ 'aria-label': words.turn(control) })}
            getItemProps={(number) => ({ 'aria-label': words.page(number) })}
          />
        </nav>
      )}
    </section>
  );
}

function columnsOf(
  { day, orderIds }: PlanView,
  words: OrdersWords,
  { date }: Figures,
): readonly SheetColumn<DayOrder>[] {
  const machineName = machineNames(day);
  const { columns } = words;
  return [
    {
      heading: columns.number,
      names: true,
      cell: ({ line, orderId }) => (
        <Link to="/orders/$id" params={{ id: orderIds[line] ?? '' }} preload={false}>
          {orderId}
        </Link>
      ),
    },
    { heading: columns.player, cell: ({ player }) => player },
    {
      heading: columns.set,
      wide: true,
      cell: (order) => <WantedSet order={order} machineName={machineName} />,
    },
    { heading: columns.sets, figures: true, cell: ({ quantity }) => quantity },
    { heading: columns.due, whole: true, cell: ({ due }) => date(due) },
    { heading: columns.ready, whole: true, cell: (order) => readyInWords(order, day) },
    {
      heading: columns.late,
      whole: true,
      cell: ({ daysLate }) =>
        daysLate > 0 ? (
          <span className="care">{words.daysLate(daysLate)}</span>
        ) : (
          <span className="quiet">{words.inTime}</span>
        ),
    },
    {
      heading: columns.cost,
      figures: true,
      cell: ({ orderId, costMinor }) => <Cost number={orderId} costMinor={costMinor} shop={day.shop} />,
    },
  ];
}

interface CostProps {
  readonly number: string;
  readonly costMinor: number;
  readonly shop: Day['shop'];
}

function Cost({ number, costMinor, shop }: CostProps) {
  const words = useWords(ORDERS_WORDS);
  return (
    <Explained
      name={words.costName(number)}
      what={words.costWhat}
      formula={words.costFormula}
      source={words.costSource}
    >
      {formatMoney(costMinor, shop)}
    </Explained>
  );
}

interface WantedSetProps {
  readonly order: DayOrder;
  readonly machineName: (machineId: string) => string;
}

/** The set, and under it all that is to be said about the order. */
function WantedSet({ order, machineName }: WantedSetProps) {
  const words = useWords(ORDERS_WORDS);
  return (
    <>
      {order.setName} <span className="quiet">{orderKindInWords(order.kind)}</span>
      {order.lateBecause && (
        <p className={styles.late}>{words.lateBecause(lateInWords(order.lateBecause, machineName))}</p>
      )}
      {order.warnings.map((warning) => (
        <p key={JSON.stringify(warning)} className={styles.word}>
          {warningInWords(warning)}
        </p>
      ))}
      {order.note && <p className={styles.word}>{words.quoted(order.note)}</p>}
    </>
  );
}
