import { Pagination, SegmentedControl, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useMemo } from 'react';
import { counted, dateInWords, daysInWords, lateInWords, warningInWords } from '../../../contract/index.js';
import type { Day, DayOrder } from '../../../core/day/index.js';
import { formatMoney } from '../../../core/units/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { machineNames, orderKindInWords, readyInWords } from './order-words.js';
import styles from './orders-part.module.css';
import { usePickedOrders } from './use-picked-orders.js';

/** The orders of the day: whose, what, due when, ready when, late why, at what cost. */
export function OrdersPart({ day }: { readonly day: Day }) {
  const { wish, wishFor, found, shown, page, pages, turnTo } = usePickedOrders(day);
  const columns = useMemo(() => columnsOf(day), [day]);
  return (
    <section aria-labelledby="orders" className={styles.part}>
      <h2 id="orders">Orders</h2>
      <div className={styles.wishes}>
        <TextInput
          label="Find"
          placeholder="player, set, order, date"
          value={wish.text}
          onChange={(event) => wishFor({ text: event.currentTarget.value })}
        />
        <SegmentedControl
          aria-label="Which orders"
          data={[
            { value: 'all', label: 'All' },
            { value: 'late', label: 'Late' },
            { value: 'to-tell', label: 'With a word to the player' },
          ]}
          value={wish.only}
          onChange={(only) => wishFor({ only: only as typeof wish.only })}
        />
        <p role="status" className={styles.count}>
          {counted(found, 'order')}
          {found < day.orders.length && ` of ${day.orders.length}`}
        </p>
      </div>
      {found === 0 ? (
        <p className="quiet">No order is like that.</p>
      ) : (
        <SheetTable caption="Orders" columns={columns} rows={shown} rowKey={({ line }) => line} />
      )}
      {pages > 1 && (
        <nav aria-label="Pages of orders" className={styles.pages}>
          <Pagination
            total={pages}
            value={page}
            onChange={turnTo}
            getControlProps={(control) => ({ 'aria-label': `${control} page` })}
            getItemProps={(number) => ({ 'aria-label': `Page ${number}` })}
          />
        </nav>
      )}
    </section>
  );
}

function columnsOf(day: Day): readonly SheetColumn<DayOrder>[] {
  const machineName = machineNames(day);
  return [
    { heading: 'Order', names: true, cell: ({ orderId }) => orderId },
    { heading: 'Player', cell: ({ player }) => player },
    { heading: 'Set', wide: true, cell: (order) => <WantedSet order={order} machineName={machineName} /> },
    { heading: 'Sets', figures: true, cell: ({ quantity }) => quantity },
    { heading: 'Due', whole: true, cell: ({ due }) => dateInWords(due) },
    { heading: 'Ready', cell: (order) => <Ready order={order} day={day} /> },
    {
      heading: 'Late',
      whole: true,
      cell: ({ daysLate }) =>
        daysLate > 0 ? (
          <span className="care">{daysInWords(daysLate)} late</span>
        ) : (
          <span className="quiet">in time</span>
        ),
    },
    { heading: 'Cost', figures: true, cell: ({ costMinor }) => formatMoney(costMinor, day.shop) },
  ];
}

function Ready({ order, day }: { readonly order: DayOrder; readonly day: Day }) {
  const words = readyInWords(order, day);
  return order.readyAt === 'now' ? words : <span className={styles.date}>{words}</span>;
}

interface WantedSetProps {
  readonly order: DayOrder;
  readonly machineName: (machineId: string) => string;
}

/** The set, and under it all that is to be said about the order. */
function WantedSet({ order, machineName }: WantedSetProps) {
  return (
    <>
      <Link to="/sets/$id" params={{ id: `line-${order.line}` }}>
        {order.setName}
      </Link>{' '}
      <span className="quiet">{orderKindInWords(order.kind)}</span>
      {order.lateBecause && (
        <p className={styles.late}>Late: {lateInWords(order.lateBecause, machineName)}</p>
      )}
      {order.warnings.map((warning) => (
        <p key={JSON.stringify(warning)} className={styles.word}>
          {warningInWords(warning)}
        </p>
      ))}
      {order.note && <p className={styles.word}>“{order.note}”</p>}
    </>
  );
}
