import type { Day, DayRun } from '../../../core/day/index.js';
import styles from './run-panel.module.css';
import { runWords } from './run-words.js';

/** What stands in the run that was last pointed at or walked to. */
export function RunPanel({ day, run }: { readonly day: Day; readonly run: DayRun | undefined }) {
  if (!run) {
    return (
      <p className={styles.panel}>
        <span className="quiet">
          Point at a run, or tab to the lanes and use the arrow keys; Enter opens its set-up sheet.
        </span>
      </p>
    );
  }
  const { string, quantity, times, promised, why } = runWords(run, day);
  return (
    <p className={styles.panel} data-testid="run-panel">
      <strong>
        {run.lotId}: {string}
      </strong>{' '}
      {quantity}; {times}; {promised}. <em>{why}</em>
    </p>
  );
}
