import { dateInWords } from '../../contract/index.js';
import type { Day } from '../../core/day/index.js';
import { useDay } from '../api/use-day.js';
import { CostsPart } from '../features/costs/costs-part.js';
import { DaySummary } from '../features/day/day-summary.js';
import { PlanPart } from '../features/lanes/plan-part.js';
import { FaultsPart } from '../features/orders/faults-part.js';
import { OrdersPart } from '../features/orders/orders-part.js';
import { BinsPart } from '../features/wire/bins-part.js';
import { WirePart } from '../features/wire/wire-part.js';
import { Asked } from '../parts/asked.js';
import { RoomTitle } from '../parts/room-title.js';
import styles from './day-page.module.css';

/** The day's work: what was ordered, which machine makes what when, which wire to pull, what it costs. */
export function DayPage() {
  return (
    <Asked question={useDay()} what="the day">
      {(day) => <DayRoom day={day} />}
    </Asked>
  );
}

function DayRoom({ day }: { readonly day: Day }) {
  return (
    <div className={styles.day}>
      <div className={styles.head}>
        <RoomTitle title={dateInWords(day.date)} />
        <DaySummary day={day} />
      </div>
      <PlanPart day={day} />
      <OrdersPart day={day} />
      <FaultsPart faults={day.faults} />
      <WirePart day={day} />
      <BinsPart day={day} />
      <CostsPart day={day} />
    </div>
  );
}
