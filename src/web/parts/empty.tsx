import type { ReactNode } from 'react';
import styles from './empty.module.css';

/** Where nothing is yet: what would stand here, and how to begin. */
export function Empty({ what, children }: { readonly what: string; readonly children?: ReactNode }) {
  return (
    <div className={styles.empty}>
      <span className={styles.string} aria-hidden="true" />
      <p>{what}</p>
      {children}
    </div>
  );
}
