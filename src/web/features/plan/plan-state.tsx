import { useState } from 'react';
import type { PlanView } from '../../../contract/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { StateMark } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import styles from './plan.module.css';

/** Whether the plan is in force, and how it comes to be. */
export function PlanState({ view: { day, settled } }: { readonly view: PlanView }) {
  const words = useWords(PLAN_WORDS);
  const { moment } = useFigures();
  const may = useMay();
  return (
    <section aria-label={words.what} className={styles.state}>
      <div>
        {settled ? (
          <StateMark tone="done">{words.inForce}</StateMark>
        ) : (
          <StateMark tone="waits">{words.draft}</StateMark>
        )}
        <p>{settled ? words.settledAt(moment(settled.settledAt)) : words.draftMore}</p>
        {settled && settled.lotsSince > 0 && <p className="care">{words.lotsSince(settled.lotsSince)}</p>}
        {settled?.note && <p className="quiet">{settled.note}</p>}
      </div>
      {may('plan.freeze') && <Settle date={day.date} isAnew={settled !== undefined} />}
    </section>
  );
}

/** To settle a plan needs no second thought; to settle it anew does, since runs are given up. */
function Settle({ date, isAnew }: { readonly date: string; readonly isAnew: boolean }) {
  const words = useWords(PLAN_WORDS);
  const tell = useTell();
  const [asking, setAsking] = useState(false);
  const freeze = useDo('freeze-plan');
  const settle = async () => {
    const done = await freeze.run({ id: freshId(), date });
    setAsking(false);
    if (done.ok) tell({ text: words.settled(done.value.runs.length) });
  };
  return (
    <div className={styles.settle}>
      {isAnew ? (
        <Button onClick={() => setAsking(true)}>{words.settleAnew}</Button>
      ) : (
        <Button kind="main" busy={freeze.busy} onClick={settle}>
          {words.settle}
        </Button>
      )}
      <ProblemBox problem={freeze.problem} />
      <Dialog
        title={words.settleTitle}
        open={asking}
        onClose={() => setAsking(false)}
        actions={
          <Button kind="grave" busy={freeze.busy} onClick={settle}>
            {words.settleAnew}
          </Button>
        }
      >
        <p>{words.settleMore}</p>
      </Dialog>
    </div>
  );
}
