import { getRouteApi, Link } from '@tanstack/react-router';
import { ordersDue } from '../features/packing/orders-due.js';
import { PackPart } from '../features/packing/pack-part.js';
import styles from '../features/packing/packing.module.css';
import type { Packing } from '../features/packing/packing-roll.js';
import { RollPart } from '../features/packing/roll-part.js';
import { usePacking } from '../features/packing/use-packing.js';
import { Asked } from '../parts/asked.js';
import { buttonClass } from '../parts/button.js';
import { RoomTitle } from '../parts/room-title.js';
import { useWords } from '../words/language.js';
import { PACKING_WORDS } from '../words/packing.js';

const route = getRouteApi('/packing');

/** The packer's room: the roll, or one pack of it. */
export function PackingPage() {
  const words = useWords(PACKING_WORDS);
  const { pack: packId } = route.useSearch();
  const { question, packing } = usePacking();
  return (
    <Asked question={question} what={words.what}>
      {(asked) => <Room packing={packing ?? asked} packId={packId} />}
    </Asked>
  );
}

interface RoomProps {
  readonly packing: Packing;
  readonly packId: string | undefined;
}

function Room({ packing, packId }: RoomProps) {
  const words = useWords(PACKING_WORDS);
  if (packId === undefined)
    return (
      <div className={styles.room}>
        <RoomTitle title={words.title} />
        <RollPart packing={packing} />
      </div>
    );
  const pack = packing.packs.find(({ id }) => id === packId);
  const due = ordersDue(packing).find(({ order }) => order.id === pack?.body.orderId);
  if (!pack || !due) return <Gone />;
  return (
    <div className={styles.room}>
      <PackPart key={pack.id} pack={pack} due={due} packing={packing} />
    </div>
  );
}

function Gone() {
  const words = useWords(PACKING_WORDS);
  return (
    <div className={styles.room}>
      <RoomTitle title={words.goneTitle} />
      <p>{words.gone}</p>
      <p>
        <Link to="/packing" search={{}} className={buttonClass('main', 'floor')}>
          {words.backToRoll}
        </Link>
      </p>
    </div>
  );
}
