import { cautionInWords, looseTailInWords } from '../../../contract/index.js';
import type { SetUpSheet } from '../../../core/winding/index.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import styles from './set-up.module.css';

/** What may hurt, before anything that a hand could act on. */
export function CautionsBox({ sheet }: { readonly sheet: Pick<SetUpSheet, 'cautions' | 'looseTail'> }) {
  const words = useWords(SET_UP_WORDS);
  return (
    <section aria-labelledby="cautions" className={styles.cautions}>
      <h2 id="cautions">{words.cautions}</h2>
      <ul>
        {sheet.cautions.map((caution) => {
          const { title, sentence } = cautionInWords(caution);
          return (
            <li key={caution}>
              <strong>{title}</strong> {sentence}{' '}
              {caution === 'wire-whip' && sheet.looseTail && looseTailInWords(sheet.looseTail)}
            </li>
          );
        })}
      </ul>
    </section>
  );
}
