import type { ReactNode } from 'react';
import styles from './facts.module.css';

export interface Fact {
  readonly name: string;
  readonly value: ReactNode;
  /** In smaller words under the value. */
  readonly under?: ReactNode;
  /** Marks what needs care; the words must say so too. */
  readonly care?: boolean;
}

/** Named figures in a row. */
export function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className={styles.facts}>
      {facts.map(({ name, value, under, care }) => (
        <div key={name} className={styles.fact}>
          <dt>{name}</dt>
          <dd className={care ? styles.care : undefined}>
            {value}
            {under && <span className={styles.under}>{under}</span>}
          </dd>
        </div>
      ))}
    </dl>
  );
}
