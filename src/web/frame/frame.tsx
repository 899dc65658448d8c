import { Link, Outlet, useLocation } from '@tanstack/react-router';
import { useRef } from 'react';
import { useLive } from '../api/live.js';
import { isOfTheDesk, useMay, useMe, useSession } from '../api/session.js';
import { useReading } from '../api/use-records.js';
import { OutboxBar, OutboxProvider } from '../outbox/index.js';
import { NoticesProvider } from '../parts/notices.js';
import { EnteredContext } from '../parts/room-title.js';
import { FRAME_WORDS } from '../words/frame.js';
import { useWords } from '../words/language.js';
import { DESK, type Door, FLOOR, isFloor } from './doors.js';
import styles from './frame.module.css';
import { SearchBox } from './search-box.js';
import { SignInRoom } from './sign-in-room.js';
import { Threshold } from './threshold.js';

/** What stands round every room. Whoever is not signed in finds the way in instead of the room, at the same address. */
export function Frame() {
  const { pathname } = useLocation();
  const { standing } = useSession();
  const entered = useRef(false);
  // The one-time link is for those who cannot sign in yet.
  const isOpen = pathname === '/first-sign-in';
  return (
    <EnteredContext value={entered}>
      <NoticesProvider>
        {standing.kind === 'somebody' && !isOpen ? (
          <House />
        ) : (
          <Threshold>{isOpen ? <Outlet /> : <SignInRoom />}</Threshold>
        )}
      </NoticesProvider>
    </EnteredContext>
  );
}

function House() {
  const words = useWords(FRAME_WORDS);
  const { pathname } = useLocation();
  const { ended } = useSession();
  const line = useLive(ended);
  const onFloor = isFloor(pathname);
  return (
    <OutboxProvider isUp={line !== 'down'}>
      <div className={onFloor ? styles.floor : styles.desk}>
        <a className={styles.skip} href="#room">
          {words.skip}
        </a>
        <header className={styles.head}>
          <div className={styles.inside}>
            <Link to="/" className={styles.name}>
              <span className={styles.mark} aria-hidden="true" />
              Tautwork
            </Link>
            <ShopName />
            <div className={styles.choices}>
              {!onFloor && <SearchBox />}
              <Who />
            </div>
          </div>
          <div className={styles.inside}>
            <Doors />
          </div>
        </header>
        {onFloor ? <OutboxBar /> : line === 'down' && <LineDown />}
        <main id="room" className={styles.room}>
          <Outlet />
        </main>
        {!onFloor && (
          <footer className={styles.foot}>
            <div className={styles.inside}>
              <p>{words.foot}</p>
            </div>
          </footer>
        )}
      </div>
    </OutboxProvider>
  );
}

function ShopName() {
  const words = useWords(FRAME_WORDS);
  const now = useReading('now', {});
  return (
    <p className={styles.shop}>
      {now.data?.shop}
      {now.data?.invented && <span className={styles.invented}> {words.invented}</span>}
    </p>
  );
}

function Who() {
  const { person } = useMe();
  return (
    <Link to="/account" className={styles.door}>
      {person.name}
    </Link>
  );
}

/** Desk and floor side by side; first the one where the person's work is. */
function Doors() {
  const words = useWords(FRAME_WORDS);
  const me = useMe();
  const may = useMay();
  const ofTheDesk = isOfTheDesk(me);
  const open = (doors: readonly Door[]) =>
    doors.filter(({ to, permission }) => may(permission) && (ofTheDesk || to !== '/'));
  const parts = [
    { name: words.desk, doors: open(DESK) },
    { name: words.floor, doors: open(FLOOR) },
  ];
  return (ofTheDesk ? parts : parts.toReversed()).map(({ name, doors }) => (
    <nav key={name} aria-label={name} className={styles.doors}>
      {doors.map(({ to, words: door }) => (
        <Link key={to} to={to} activeOptions={{ exact: to === '/' }} className={styles.door}>
          {words.doors[door]}
        </Link>
      ))}
    </nav>
  ));
}

function LineDown() {
  const words = useWords(FRAME_WORDS);
  return (
    <p role="status" className={styles.line}>
      {words.lineDown}
    </p>
  );
}
