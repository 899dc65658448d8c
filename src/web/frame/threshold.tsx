import type { ReactNode } from 'react';
import styles from './threshold.module.css';

/** The page before anyone is signed in: the name of the house and one sheet of paper. */
export const Threshold = ({ children }: { readonly children: ReactNode }) => (
  <main id="room" className={styles.threshold}>
    <p className={styles.name}>
      <span className={styles.mark} aria-hidden="true" />
      Tautwork
    </p>
    <div className={styles.sheet}>{children}</div>
  </main>
);
