import { Link } from '@tanstack/react-router';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import { OpenPacks } from './open-packs.js';
import styles from './order-packs.module.css';
import type { OrderDue } from './orders-due.js';

interface OrderPacksProps {
  readonly due: OrderDue;
  /** The pack that is looked at. */
  readonly packId: string;
}

/** So many before and after the one that is looked at: an order may have dozens. */
const BESIDE = 1;

/** The sets of an order side by side, to go from one to the next. */
export function OrderPacks({ due, packId }: OrderPacksProps) {
  const words = useWords(PACKING_WORDS);
  const { order, packs, sets, sealed, sent } = due;
  const rest = sets - packs.length;
  if (packs.length < 2 && rest === 0) return null;
  const here = packs.findIndex(({ id }) => id === packId);
  const first = Math.max(0, Math.min(here - BESIDE, packs.length - 2 * BESIDE - 1));
  const near = packs.slice(first, first + 2 * BESIDE + 1);
  return (
    <nav aria-label={words.packsOfOrder} className={styles.packs}>
      {near.map(({ id, state, body }, at) => (
        <Link
          key={id}
          to="/packing"
          search={{ pack: id }}
          className={styles.pack}
          aria-current={id === packId ? 'page' : undefined}
        >
          <strong>{words.packShort(first + at + 1, body.setName)}</strong>
          <span>{words.packStates(state, body.picked.length, body.wanted.length)}</span>
        </Link>
      ))}
      {packs.length > near.length && <p className={styles.all}>{words.packedSets(sealed + sent, sets)}</p>}
      {rest > 0 && <OpenPacks order={order} rest={rest} />}
    </nav>
  );
}
