import { getRouteApi, Link } from '@tanstack/react-router';
import { dateInWords, gaugesInWords, materialInWords, warningInWords } from '../../contract/index.js';
import type { DayOrder, Shop } from '../../core/day/index.js';
import type { StringSpec } from '../../core/sets/index.js';
import { useDay } from '../api/use-day.js';
import { useShop } from '../api/use-shop.js';
import { orderKindInWords } from '../features/orders/order-words.js';
import { SetPart, UnmadeWords } from '../features/set/set-part.js';
import { StrungPart } from '../features/set/strung-part.js';
import { strungOrder } from '../features/set/strung-set.js';
import { Asked } from '../parts/asked.js';
import { Lost } from '../parts/lost.js';
import { RoomTitle } from '../parts/room-title.js';
import styles from './set-page.module.css';

const route = getRouteApi('/sets/$id');

/** A stock set by its id, or the set of an order by its line: `line-12`. */
export function SetPage() {
  const { id } = route.useParams();
  const line = /^line-(\d+)$/.exec(id)?.[1];
  return (
    <Asked question={useShop()} what="the set">
      {(shop) =>
        line === undefined ? (
          <StockSet key={id} id={id} shop={shop} />
        ) : (
          <OrderedSet key={id} line={Number(line)} shop={shop} />
        )
      }
    </Asked>
  );
}

function StockSet({ id, shop }: { readonly id: string; readonly shop: Shop }) {
  const set = shop.sets.find((each) => each.id === id);
  if (!set) return <Lost what={`The shop has no set ${id}.`} />;
  return (
    <div className={styles.set}>
      <SetHead title={set.name} specs={set.strings} about={`stock set, version ${set.version}`} />
      <SetPart specs={set.strings} shop={shop} />
    </div>
  );
}

function OrderedSet({ line, shop }: { readonly line: number; readonly shop: Shop }) {
  return (
    <Asked question={useDay()} what="the order">
      {(day) => {
        const order = day.orders.find((each) => each.line === line);
        return order ? (
          <OrderedRoom order={order} shop={shop} />
        ) : (
          <Lost what={`No order stands on line ${line}.`} />
        );
      }}
    </Asked>
  );
}

function OrderedRoom({ order, shop }: { readonly order: DayOrder; readonly shop: Shop }) {
  const specs = order.strings.map(({ spec }) => spec);
  const strung = strungOrder(order, shop);
  return (
    <div className={styles.set}>
      <SetHead
        title={order.setName}
        specs={specs}
        about={`${orderKindInWords(order.kind)} of ${order.player}, order ${order.orderId}, due ${dateInWords(order.due)}`}
      />
      {order.warnings.map((warning) => (
        <p key={JSON.stringify(warning)} className={styles.warning}>
          {warningInWords(warning)}
        </p>
      ))}
      {strung === undefined && <SetPart specs={specs} shop={shop} />}
      {strung?.ok && <StrungPart strung={strung.value} />}
      {strung && !strung.ok && <UnmadeWords unmade={strung.fault} />}
    </div>
  );
}

interface SetHeadProps {
  readonly title: string;
  readonly specs: readonly StringSpec[];
  readonly about: string;
}

function SetHead({ title, specs, about }: SetHeadProps) {
  const materials = [...new Set(specs.map(({ material }) => materialInWords(material)))];
  return (
    <header className={styles.head}>
      <div>
        <RoomTitle title={title} />
        <p className={styles.gauges}>{gaugesInWords(specs)}</p>
        <p className="quiet">
          {about}; {materials.join(' and ')}
        </p>
      </div>
      <Link to="/sets">All sets</Link>
    </header>
  );
}
