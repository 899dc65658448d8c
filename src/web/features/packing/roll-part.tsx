import { Link, useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { calendarDate, daysBetween } from '../../../core/foundation/index.js';
import { useReading } from '../../api/use-records.js';
import { Button, buttonClass } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { ScanBox } from '../../parts/scan-box.js';
import { useSound } from '../../parts/sound.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import { packCalled } from './judge-scan.js';
import { lackInWords } from './lack-words.js';
import { OpenPacks } from './open-packs.js';
import { type OrderDue, ordersDue } from './orders-due.js';
import type { Packing } from './packing-roll.js';
import styles from './roll-part.module.css';
import { SendOrder } from './send-order.js';
import { useOpenPacks } from './use-open-packs.js';
import { walkFor } from './walk.js';
import { WalkPart } from './walk-part.js';

/** The open orders by due date, what each waits for, and the walk for those that are chosen. */
export function RollPart({ packing }: { readonly packing: Packing }) {
  const words = useWords(PACKING_WORDS);
  const due = ordersDue(packing);
  const [shown, setShown] = useState<Shown>('all');
  const [chosen, setChosen] = useState<ReadonlyMap<string, boolean>>(new Map());
  if (due.length === 0) return <Empty what={words.empty} />;
  // Whoever fetches for an order that waits must say so: its strings would lie about until the others are made.
  const onWalk = due.filter(
    ({ order, takes, standing }) =>
      takes.length > 0 && (chosen.get(order.id) ?? standing === 'can-be-packed'),
  );
  const listed = due.filter(({ standing }) => shown === 'all' || standing === shown);
  const count = (of: Shown) => due.filter(({ standing }) => of === 'all' || standing === of).length;
  return (
    <>
      <RollScan packing={packing} />
      <div className={styles.beside}>
        <section aria-labelledby="roll" className={styles.part}>
          <h2 id="roll">{words.roll}</h2>
          <fieldset className={styles.shown}>
            <legend className="unseen">{words.show}</legend>
            {SHOWN.map((each) => (
              <Button key={each} aria-pressed={shown === each} onClick={() => setShown(each)}>
                {words.shown[each]} {count(each)}
              </Button>
            ))}
          </fieldset>
          <ol className={styles.orders}>
            {listed.map((each) => (
              <OrderOnRoll
                key={each.order.id}
                due={each}
                isOnWalk={onWalk.includes(each)}
                onTurn={(wanted) => setChosen((before) => new Map([...before, [each.order.id, wanted]]))}
              />
            ))}
          </ol>
        </section>
        <WalkPart stops={walkFor(onWalk, packing.bins)} />
      </div>
    </>
  );
}

type Shown = 'all' | OrderDue['standing'];
const SHOWN: readonly Shown[] = ['all', 'can-be-packed', 'waits', 'to-send'];

/** A label or an order's number opens what it names; an order that nobody began to pack is begun. */
function RollScan({ packing }: { readonly packing: Packing }) {
  const words = useWords(PACKING_WORDS);
  const { accepted, refused } = useSound();
  const navigate = useNavigate();
  const [unknown, setUnknown] = useState<string>();
  const begin = useOpenPacks();
  const open = (text: string) => {
    const order = packing.orders.find(({ body }) => body.number.toLowerCase() === text.toLowerCase());
    const pack =
      packCalled(text, packing) ??
      packing.packs.find(({ state, body }) => state === 'open' && body.orderId === order?.id) ??
      packing.packs.find(({ body }) => body.orderId === order?.id);
    setUnknown(pack || order ? undefined : text);
    if (!pack && !order) return refused();
    accepted();
    if (pack) void navigate({ to: '/packing', search: { pack: pack.id } });
    else if (order) void begin.open(order);
  };
  return (
    <div className={styles.scan}>
      <ScanBox label={words.scan} hint={words.scanOnRoll} onScan={open} />
      {unknown !== undefined && (
        <p role="alert" className="care">
          {words.scanUnknownOnRoll(unknown)}
        </p>
      )}
      <ProblemBox problem={begin.problem} />
    </div>
  );
}

interface OrderOnRollProps {
  readonly due: OrderDue;
  readonly isOnWalk: boolean;
  readonly onTurn: (isOnWalk: boolean) => void;
}

const TONES: Readonly<Record<OrderDue['standing'], StateTone>> = {
  'to-send': 'done',
  'can-be-packed': 'goes',
  waits: 'waits',
};

/** An order may have dozens of lines; so many sets are named where orders stand one below the other. */
const SETS_NAMED = 2;

function OrderOnRoll({ due, isOnWalk, onTurn }: OrderOnRollProps) {
  const words = useWords(PACKING_WORDS);
  const { order, standing, sets, sealed, sent, takes, lacks } = due;
  const { number, player, note, lines } = order.body;
  const packed = sealed + sent;
  return (
    <li className={styles.order}>
      <div className={styles.what}>
        <p className={styles.name}>
          <strong>{number}</strong> {player}
        </p>
        <p>
          <DueOn due={order.body.due} /> · {packed > 0 ? words.packedSets(packed, sets) : words.sets(sets)}
        </p>
        <p className="quiet">
          {words.ofSets(
            lines
              .slice(0, SETS_NAMED)
              .map(({ setName, quantity, kind }) => words.setOf(setName, quantity, kind === 'stock')),
            Math.max(0, lines.length - SETS_NAMED),
          )}
        </p>
        <p>
          <StateMark tone={TONES[standing]}>{words.standing[standing]}</StateMark>
        </p>
        {standing === 'waits' && <p className="quiet">{lackInWords(lacks, words)}</p>}
        {note !== '' && <p>{words.note(note)}</p>}
      </div>
      <div className={styles.doing}>
        {takes.length > 0 && (
          <label className={styles.tick}>
            <input
              type="checkbox"
              checked={isOnWalk}
              onChange={(event) => onTurn(event.currentTarget.checked)}
              aria-label={words.onWalk(number)}
            />
            {words.onWalkShort}
          </label>
        )}
        <WayIn due={due} />
      </div>
    </li>
  );
}

/** The one thing to do with an order now. */
function WayIn({ due }: { readonly due: OrderDue }) {
  const words = useWords(PACKING_WORDS);
  const { order, packs, standing, sets } = due;
  const open = packs.find(({ state }) => state === 'open');
  if (standing === 'to-send')
    return (
      <>
        <ToPack id={packs[0]!.id} kind="plain" name={words.lookNamed(order.body.number)}>
          {words.look}
        </ToPack>
        <SendOrder due={due} />
      </>
    );
  if (open)
    return (
      <ToPack
        id={open.id}
        kind={standing === 'waits' ? 'plain' : 'main'}
        name={words.goOnNamed(order.body.number)}
      >
        {words.goOn}
      </ToPack>
    );
  const rest = packs.length > 0 ? sets - packs.length : 0;
  return <OpenPacks order={order} rest={rest} kind={standing === 'waits' ? 'plain' : 'main'} />;
}

interface ToPackProps {
  readonly id: string;
  readonly kind: 'main' | 'plain';
  readonly name: string;
  readonly children: string;
}

const ToPack = ({ id, kind, name, children }: ToPackProps) => (
  <Link to="/packing" search={{ pack: id }} className={buttonClass(kind, 'floor')} aria-label={name}>
    {children}
  </Link>
);

/** When it is due; what is late is told by words and by weight. */
function DueOn({ due }: { readonly due: string }) {
  const words = useWords(PACKING_WORDS);
  const { date } = useFigures();
  const { data: now } = useReading('now', {});
  const day = calendarDate(due);
  const late = day && now ? daysBetween(day, now.today) : 0;
  if (late > 0)
    return (
      <span className="care">
        {words.due(date(due))} · {words.overdue(late)}
      </span>
    );
  return <>{now?.today === due ? <strong>{words.dueToday}</strong> : words.due(date(due))}</>;
}
