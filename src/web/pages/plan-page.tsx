import { getRouteApi } from '@tanstack/react-router';
import type { PlanView } from '../../contract/index.js';
import { useReading } from '../api/use-records.js';
import { CostsPart } from '../features/costs/costs-part.js';
import { DaySummary } from '../features/day/day-summary.js';
import { PlanPart } from '../features/lanes/plan-part.js';
import { FaultsPart } from '../features/orders/faults-part.js';
import { OrdersPart } from '../features/orders/orders-part.js';
import { DayChoice } from '../features/plan/day-choice.js';
import { PapersPart } from '../features/plan/papers-part.js';
import { PlanState } from '../features/plan/plan-state.js';
import { BinsPart } from '../features/wire/bins-part.js';
import { WirePart } from '../features/wire/wire-part.js';
import { Asked } from '../parts/asked.js';
import { RoomTitle } from '../parts/room-title.js';
import { useFigures } from '../sight/figures.js';
import { useWords } from '../words/language.js';
import { PLAN_WORDS } from '../words/plan.js';
import styles from './plan-page.module.css';

const route = getRouteApi('/plan');

/** A day's plan: which machine makes what when, what is late, which wire to pull, what it costs. */
export function PlanPage() {
  const words = useWords(PLAN_WORDS);
  const { date } = route.useSearch();
  return (
    <Asked question={useReading('plan-view', date === undefined ? {} : { date })} what={words.what}>
      {(view) => <PlanRoom view={view} />}
    </Asked>
  );
}

function PlanRoom({ view }: { readonly view: PlanView }) {
  const words = useWords(PLAN_WORDS);
  const figures = useFigures();
  const { day } = view;
  return (
    <div className={styles.day}>
      <div className={styles.head}>
        <RoomTitle title={words.title(figures.date(day.date))} />
        <DayChoice date={day.date} />
        <PapersPart date={day.date} />
      </div>
      <PlanState view={view} />
      <DaySummary day={day} />
      <PlanPart key={day.date} view={view} />
      <OrdersPart view={view} />
      <FaultsPart faults={day.faults} />
      <WirePart day={day} />
      <BinsPart day={day} />
      <CostsPart day={day} />
    </div>
  );
}
