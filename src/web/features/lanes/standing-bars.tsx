import { clockInWords, stringKeyInWords } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { LANE } from './lane-measures.js';
import type { StandingBar } from './lanes-of.js';
import styles from './lanes-picture.module.css';

interface StandingBarsProps {
  readonly standing: readonly StandingBar[];
  readonly day: Day;
  readonly perMinute: number;
}

/** Runs in hand from before, which the plan stands behind. */
export function StandingBars({ standing, day, perMinute }: StandingBarsProps) {
  const words = useWords(PLAN_WORDS);
  return standing.map(({ run, fromAt, toAt }) => {
    const { short } = stringKeyInWords(run.stringKey);
    const told = words.standing(run.name, short, clockInWords(run.to, day.date));
    return (
      // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of a drawing is not interactive
      <g key={run.runId} role="img" aria-label={told}>
        <title>{told}</title>
        <rect
          x={fromAt * perMinute}
          y={LANE.barTop + 4}
          width={Math.max(3, (toAt - fromAt) * perMinute)}
          height={LANE.barHeight - 8}
          className={styles.standing}
        />
      </g>
    );
  });
}
