import { NativeSelect } from '@mantine/core';
import {
  clockInWords,
  listInWords,
  type PlanView,
  type ProblemDetails,
  stringKeyInWords,
  unableInWords,
} from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { Button } from '../../parts/button.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { carryStep } from './carry.js';
import { EffectsPart } from './effects-part.js';
import styles from './hand-panel.module.css';
import type { PlanWords } from './run-words.js';
import type { Carried, Hand } from './use-hand.js';

interface HandPanelProps {
  readonly view: PlanView;
  /** As it would be with the lot put down. */
  readonly day: Day;
  readonly hand: Hand;
  readonly carried: Carried;
  readonly busy: boolean;
  readonly problem: ProblemDetails | undefined;
  readonly onPutDown: () => void;
}

/** What is in hand, what would follow if it were put down here, and buttons for those who do not drag. */
export function HandPanel({ view, day, hand, carried, busy, problem, onPutDown }: HandPanelProps) {
  const words = useWords(PLAN_WORDS);
  const { carry, outcome } = carried;
  const run = day.plan.runs.find(({ lotId }) => lotId === carry.lotId);
  const string = run ? stringKeyInWords(run.stringKey).short : '';
  const step = (name: 'earlier' | 'later') => () =>
    hand.hold(carryStep(hand.arranger.orderNow, carry, name, () => undefined));
  return (
    <section aria-label={words.inHand(carry.lotId, string)} className={styles.panel} data-testid="hand-panel">
      <p className={styles.title}>{words.inHand(carry.lotId, string)}</p>
      <p role="status">{sentenceOf(view, day, carried, words)}</p>
      <ProblemBox problem={problem} />
      <div className={styles.doings}>
        <Button onClick={step('earlier')}>{words.earlier}</Button>
        <Button onClick={step('later')}>{words.later}</Button>
        <MachineChoice hand={hand} carried={carried} />
        <Button kind="main" busy={busy} disabled={!outcome} onClick={onPutDown}>
          {words.putDown}
        </Button>
        <Button onClick={hand.leave}>{words.leave}</Button>
        <p className="quiet small">{words.keys}</p>
      </div>
      {outcome && <EffectsPart effects={outcome.effects} day={day} />}
    </section>
  );
}

function MachineChoice({ hand, carried: { carry } }: { readonly hand: Hand; readonly carried: Carried }) {
  const words = useWords(PLAN_WORDS);
  const { orderNow, unable } = hand.arranger;
  return (
    <NativeSelect
      label={words.onMachine}
      className={styles.machine}
      value={carry.machineId}
      data={orderNow.map(({ machineId }) => ({
        value: machineId,
        label: unable(carry.lotId, machineId).length > 0 ? words.cannot(machineId) : machineId,
      }))}
      onChange={({ currentTarget: { value: machineId } }) => {
        const lotIds = orderNow.find((lane) => lane.machineId === machineId)?.lotIds ?? [];
        hand.hold({ ...carry, machineId, place: lotIds.filter((lotId) => lotId !== carry.lotId).length });
      }}
    />
  );
}

/** All of it as sentences, for eyes and ears alike. */
function sentenceOf(
  { orders }: PlanView,
  day: Day,
  { carry, unable, outcome }: Carried,
  words: PlanWords,
): string {
  const machine = carry.machineId;
  if (!outcome) return words.unable(machine, listInWords(unable.map(unableInWords)));
  const run = outcome.arrangement.runs.find(({ lotId }) => lotId === carry.lotId);
  const { moved, becomeLate, saved } = outcome.effects;
  const others = moved.filter(({ lotId }) => lotId !== carry.lotId).length;
  const numbers = (ids: readonly string[]) => listInWords(ids.map((id) => orders[id]?.number ?? id));
  const clock = (time: Day['plan']['runs'][number]['to']) => clockInWords(time, day.date);
  return [
    run && words.stands(machine, clock(run.setUpFrom), clock(run.to)),
    others === 0 ? words.sameTimes : words.otherRuns(others),
    becomeLate.length > 0 && words.becomeLate(numbers(becomeLate)),
    saved.length > 0 && words.savedOrders(numbers(saved)),
    becomeLate.length + saved.length === 0 && words.noneLate,
  ]
    .filter(Boolean)
    .join(' ');
}
