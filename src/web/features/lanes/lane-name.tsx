import type { MachineDay } from '../../../core/day/index.js';
import { formatFraction } from '../../../core/units/index.js';
import { LANE } from './lane-measures.js';
import styles from './lanes-picture.module.css';

/** Whose lane it is, and how full its day. */
export function LaneName({ machine }: { readonly machine: MachineDay }) {
  return (
    <div className={styles.machine} style={{ height: LANE.height }}>
      <strong>{machine.name}</strong>
      <span>
        {machine.stringsToday} strings, {formatFraction(machine.busyShareToday)} busy
      </span>
    </div>
  );
}
