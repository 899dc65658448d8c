import { type ReactNode, useId } from 'react';
import styles from './look.module.css';

/** A heading with what belongs to it. */
export function Part({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  const id = useId();
  return (
    <section aria-labelledby={id} className={styles.part}>
      <h2 id={id}>{title}</h2>
      {children}
    </section>
  );
}
