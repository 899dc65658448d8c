import type { MachineDay } from '../../../core/day/index.js';
import { Explained } from '../../parts/explained.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { LANE } from './lane-measures.js';
import styles from './lanes-picture.module.css';

interface LaneNameProps {
  readonly machine: MachineDay;
  /** How many of its runs are drawn. */
  readonly runs: number;
}

/** Whose lane it is, and how full its day. */
export function LaneName({ machine, runs }: LaneNameProps) {
  const words = useWords(PLAN_WORDS);
  const { number, share } = useFigures();
  return (
    <div className={styles.machine} style={{ height: LANE.height }}>
      <strong>{machine.name}</strong>
      <span>
        {words.machineStrings(number(machine.stringsToday))}
        <Explained
          name={words.busyName(machine.name)}
          what={words.busyWhat}
          formula={words.busyFormula}
          inputs={[{ name: words.busyRuns, value: number(runs) }]}
          source={words.busySource}
        >
          {words.busy(share(machine.busyShareToday))}
        </Explained>
      </span>
    </div>
  );
}
