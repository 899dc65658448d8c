import type { RecordOf } from '../../api/use-records.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SPOOL_WORDS } from '../../words/machine.js';

type Spool = RecordOf<'spool'>;

interface SpoolChoicesProps {
  readonly title: string;
  readonly none: string;
  readonly spools: readonly Spool[];
  readonly onChoose: (spool: Spool) => void;
}

/** Spools to touch, for those who have no scanner. */
export function SpoolChoices({ title, none, spools, onChoose }: SpoolChoicesProps) {
  return (
    <section aria-label={title} className={styles.choosing}>
      <h3>{title}</h3>
      {spools.length === 0 ? (
        <p>{none}</p>
      ) : (
        <ul className={styles.choices}>
          {spools.map((spool) => (
            <li key={spool.id}>
              <Button size="floor" onClick={() => onChoose(spool)}>
                <SpoolLines spool={spool} />
              </Button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** A spool as it is known again: its name, its lot, its last weighing. */
export function SpoolLines({ spool: { body } }: { readonly spool: Spool }) {
  const words = useWords(SPOOL_WORDS);
  const figures = useFigures();
  const { name, lot, weighed } = body;
  return (
    <span className={styles.lines}>
      {name}
      <small>
        {lot}
        {weighed &&
          `, ${words.weighed(figures.weight(weighed.grossKg), figures.date(weighed.at.slice(0, 10)))}`}
      </small>
    </span>
  );
}
