import type { MachineDay } from '../../../core/day/index.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { LANE } from './lane-measures.js';
import styles from './lanes-picture.module.css';

/** Whose lane it is, and how full its day. */
export function LaneName({ machine }: { readonly machine: MachineDay }) {
  const words = useWords(PLAN_WORDS);
  const { number, share } = useFigures();
  return (
    <div className={styles.machine} style={{ height: LANE.height }}>
      <strong>{machine.name}</strong>
      <span>{words.machineDay(number(machine.stringsToday), share(machine.busyShareToday))}</span>
    </div>
  );
}
