import type { Shop } from '../../../core/day/index.js';
import { AnswerPart } from './answer-part.js';
import { faultsByField } from './form-faults.js';
import { RequestFields } from './request-fields.js';
import styles from './request-part.module.css';
import { useFormAnswer } from './use-form-answer.js';

/** A player's wish on one side, the sets that answer it on the other. */
export function RequestPart({ shop }: { readonly shop: Shop }) {
  const { form, change, answer } = useFormAnswer(shop);
  const faults = answer.ok ? {} : faultsByField(answer.fault);
  return (
    <div className={styles.request}>
      <RequestFields shop={shop} form={form} faults={faults} change={change} />
      {answer.ok ? (
        <AnswerPart answer={answer.value} />
      ) : (
        <div role="status" className={styles.waits}>
          <h2>The answer waits</h2>
          {Object.values(faults).map(({ what, mend }) => (
            <p key={what}>
              <span className="care">{what}</span> {mend}
            </p>
          ))}
        </div>
      )}
    </div>
  );
}
