import { SegmentedControl, useMantineColorScheme } from '@mantine/core';
import { Link, Outlet } from '@tanstack/react-router';
import { useRef } from 'react';
import { useShop } from '../api/use-shop.js';
import { FORCE_UNITS, useForceUnit } from './force-unit.js';
import styles from './frame.module.css';
import { EnteredContext } from './room-title.js';

/** What stands round every room: name of the house, doors, and how one wishes to see it. */
export function Frame() {
  const shop = useShop();
  const entered = useRef(false);
  return (
    <>
      <a className={styles.skip} href="#room">
        Skip to the page
      </a>
      <header className={styles.head}>
        <div className={styles.inside}>
          <Link to="/" className={styles.name}>
            <span className={styles.mark} aria-hidden="true" />
            Tautwork
          </Link>
          <p className={styles.shop}>
            {shop.data?.name}
            {shop.data?.invented && <span className={styles.invented}> an invented workshop</span>}
          </p>
          <nav aria-label="Rooms" className={styles.doors}>
            <Door to="/" words="Day" />
            <Door to="/sets" words="Sets" />
            <Door to="/request" words="Request" />
          </nav>
          <div className={styles.choices}>
            <ForceUnitChoice />
            <SchemeChoice />
          </div>
        </div>
      </header>
      <main id="room" className={styles.room}>
        <EnteredContext value={entered}>
          <Outlet />
        </EnteredContext>
      </main>
      <footer className={styles.foot}>
        <div className={styles.inside}>
          <p>
            Figures are predicted from wire and geometry until strings of the shop have been measured. Follow
            local rules and licensed practice; they stand above what this page says.
          </p>
        </div>
      </footer>
    </>
  );
}

function Door({ to, words }: { readonly to: '/' | '/sets' | '/request'; readonly words: string }) {
  return (
    <Link to={to} activeOptions={{ exact: to === '/' }} className={styles.door}>
      {words}
    </Link>
  );
}

function ForceUnitChoice() {
  const { unit, choose } = useForceUnit();
  return (
    <SegmentedControl
      aria-label="Unit of pull"
      data={[...FORCE_UNITS]}
      value={unit}
      onChange={(wanted) => choose(wanted as (typeof FORCE_UNITS)[number])}
    />
  );
}

const SCHEMES = [
  { value: 'auto', label: 'System' },
  { value: 'light', label: 'Light' },
  { value: 'dark', label: 'Dark' },
] as const;

function SchemeChoice() {
  const { colorScheme, setColorScheme } = useMantineColorScheme({
    // Else a style element would be put into the page for a moment, which the server does not allow.
    keepTransitions: true,
  });
  return (
    <SegmentedControl
      aria-label="Light or dark"
      data={[...SCHEMES]}
      value={colorScheme}
      onChange={(scheme) => setColorScheme(scheme as typeof colorScheme)}
    />
  );
}
