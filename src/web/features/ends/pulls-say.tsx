import { jointInWords } from '../../../contract/index.js';
import type { JointStrength } from '../../../core/winding/index.js';
import styles from '../../parts/floor.module.css';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';

interface PullsSayProps {
  readonly joint: JointStrength;
  /** Of which ends. */
  readonly of: string;
}

/** What all pulls of a kind of end say together, in sentences that claim no more than they show. */
export function PullsSay({ joint, of }: PullsSayProps) {
  const words = useWords(ENDS_WORDS);
  return (
    <section aria-labelledby="pulls-say" className={styles.part}>
      <h3 id="pulls-say">{words.says}</h3>
      <p className="quiet">{of}</p>
      <ul>
        {jointInWords(joint).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {joint.tried > 0 && <p className="quiet">{words.source}</p>}
    </section>
  );
}
