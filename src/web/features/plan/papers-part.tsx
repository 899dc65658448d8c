import { PAPERS, type PaperName } from '../../../contract/index.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import styles from './plan.module.css';

/** What can be fetched of a day to be printed. */
export function PapersPart({ date }: { readonly date: string }) {
  const words = useWords(PLAN_WORDS);
  return (
    <nav aria-label={words.papers} className={styles.papers}>
      {(Object.keys(PAPERS) as PaperName[]).map((name) => (
        <a key={name} href={paperAddress(name, { date })} target="_blank" rel="noreferrer">
          {words.pdf(words.paperNames[name])}
        </a>
      ))}
    </nav>
  );
}

/** Where a paper is made; only what belongs to one lot where it is given. */
export const paperAddress = (
  name: PaperName,
  query: { readonly date: string; readonly lot?: string },
): string => `/api/v1/papers/${name}.pdf?${new URLSearchParams(query)}`;
