import type { ReactNode } from 'react';
import { cautionInWords, looseTailInWords } from '../../../contract/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import styles from './set-up.module.css';

interface CautionsBoxProps {
  readonly sheet: Pick<SetUpSheet, 'cautions' | 'looseTail'>;
  /** Those that are new to the reader. */
  readonly marked?: SetUpSheet['cautions'];
  /** What can be done about them, below. */
  readonly children?: ReactNode;
}

/** What may hurt, before anything that a hand could act on. */
export function CautionsBox({ sheet, marked = [], children }: CautionsBoxProps) {
  const words = useWords(SET_UP_WORDS);
  return (
    <section aria-labelledby="cautions" className={styles.cautions}>
      <h2 id="cautions">{words.cautions}</h2>
      <ul>
        {sheet.cautions.map((caution) => {
          const { title, sentence } = cautionInWords(caution);
          return (
            <li key={caution}>
              {marked.includes(caution) && <strong className={styles.cautionNew}>{words.newCaution}</strong>}{' '}
              <strong>{title}</strong> {sentence}{' '}
              {caution === 'wire-whip' && sheet.looseTail && looseTailInWords(sheet.looseTail)}
            </li>
          );
        })}
      </ul>
      {children && <div className={styles.cautionsDoing}>{children}</div>}
    </section>
  );
}
