import { Link } from '@tanstack/react-router';
import type { ReactNode } from 'react';
import type { Day, DayRun } from '../../../core/day/index.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import styles from './run-panel.module.css';
import { runWords } from './run-words.js';

interface RunPanelProps {
  readonly day: Day;
  readonly run: DayRun | undefined;
  /** What can be done where no run is pointed at. */
  readonly hint: string;
  /** What can be done with the run. */
  readonly beside?: ReactNode;
}

/** What stands in the run that was last pointed at or walked to. */
export function RunPanel({ day, run, hint, beside }: RunPanelProps) {
  const words = useWords(PLAN_WORDS);
  if (!run) {
    return (
      <p className={styles.panel}>
        <span className="quiet">{hint}</span>
      </p>
    );
  }
  const { string, quantity, times, promised, why } = runWords(run, day, words);
  const { lotId } = run;
  return (
    <div className={styles.panel}>
      <p data-testid="run-panel">
        <strong>{`${lotId}: ${string}`}</strong> {`${quantity}; ${times}; ${promised}.`} <em>{why}</em>
      </p>
      <div className={styles.doings}>
        {beside}
        <Link to="/plan/$lotId" params={{ lotId }} search={{ date: day.date }} preload={false}>
          {words.openSheet}
        </Link>
      </div>
    </div>
  );
}
