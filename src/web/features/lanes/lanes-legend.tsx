import { useId } from 'react';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import styles from './lanes-picture.module.css';

/** What the marks of the lanes mean. */
export function LanesLegend() {
  const id = useId();
  const { legend } = useWords(PLAN_WORDS);
  return (
    <ul className={styles.legend}>
      <li>
        <svg viewBox="0 0 26 16" aria-hidden="true">
          <defs>
            <pattern id={id} width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
              <path d="M0 0v6" className={styles.hatch} />
            </pattern>
          </defs>
          <rect x="1" y="1" width="24" height="14" fill={`url(#${id})`} />
          <rect x="1" y="1" width="24" height="14" className={styles.outline} />
        </svg>
        {legend.setUp}
      </li>
      <li>
        <svg viewBox="0 0 26 16" aria-hidden="true">
          <rect x="1" y="1" width="24" height="14" className={styles.run} />
          <rect x="1" y="1" width="24" height="14" className={styles.outline} />
        </svg>
        {legend.running}
      </li>
      <li data-promise="none" className={styles.bar}>
        <svg viewBox="0 0 26 16" aria-hidden="true">
          <rect x="1" y="1" width="24" height="14" className={styles.run} />
          <rect x="1" y="1" width="24" height="14" className={styles.outline} />
        </svg>
        {legend.bin}
      </li>
      <li>
        <svg viewBox="0 0 26 16" aria-hidden="true">
          <path d="M13 1l7 7l-7 7l-7 -7z" className={styles.lozenge} />
        </svg>
        {legend.due}
      </li>
      <li>
        <svg viewBox="0 0 26 16" aria-hidden="true">
          <path d="M20 16v-15h-14l4 5l-4 5h14z" className={styles.flag} />
        </svg>
        {legend.late}
      </li>
      <li>
        <svg viewBox="0 0 26 16" aria-hidden="true">
          <rect x="1" y="3" width="24" height="10" className={styles.standing} />
        </svg>
        {legend.standing}
      </li>
    </ul>
  );
}
