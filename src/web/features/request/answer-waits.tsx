import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import type { FieldFaults } from './form-faults.js';
import styles from './request-part.module.css';

interface AnswerWaitsProps {
  readonly faults: FieldFaults;
  /** Those of what was typed; the others only tell what is still needed. */
  readonly wrong: FieldFaults;
}

/** Where the sets will stand: what is still needed, or what is wrong. */
export function AnswerWaits({ faults, wrong }: AnswerWaitsProps) {
  const { waits } = useWords(REQUESTS_WORDS);
  return (
    <div role="status" className={styles.waits}>
      <h2>{waits.title}</h2>
      <p className="quiet">{waits.lead}</p>
      {Object.entries(faults).map(([field, { what, mend }]) => (
        <p key={what}>
          {/* How to mend what was typed stands where it was typed. */}
          {field in wrong ? <span className="care">{what}</span> : `${what} ${mend}`}
        </p>
      ))}
    </div>
  );
}
