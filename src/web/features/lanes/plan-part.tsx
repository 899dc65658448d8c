import { SegmentedControl } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import type { PlanView } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { useShop } from '../../api/use-shop.js';
import { Button } from '../../parts/button.js';
import { Empty } from '../../parts/empty.js';
import { Picture } from '../../parts/picture.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { HandPanel } from './hand-panel.js';
import { type LaneScope, lanesOf } from './lanes-of.js';
import { LanesPicture } from './lanes-picture.js';
import { LanesTable } from './lanes-table.js';
import { RunPanel } from './run-panel.js';
import { dayInHand, type Hand, useHand } from './use-hand.js';
import { usePutDown } from './use-put-down.js';

/** The plan as lanes of machines over working time, or as a table of runs. Who may settle plans can move what nobody began. */
export function PlanPart({ view }: { readonly view: PlanView }) {
  const words = useWords(PLAN_WORDS);
  const may = useMay();
  const shop = useShop();
  const [scope, setScope] = useState<LaneScope>('day');
  const hand = useHand(view, shop.data, may('plan.freeze'));
  const { putDown, busy, problem } = usePutDown(view, hand);
  const carried = hand?.carried;
  const day = useMemo(() => dayInHand(view.day, carried), [view.day, carried]);
  const lanes = useMemo(() => lanesOf(day, scope), [day, scope]);
  const stateOf = (lotId: string) => view.settled?.runs[lotId]?.state;
  if (!lanes) {
    return (
      <section aria-labelledby="lanes">
        <h2 id="lanes">{words.lanes}</h2>
        <Empty what={words.noRuns}>
          <p>{words.noRunsMore}</p>
        </Empty>
      </section>
    );
  }
  return (
    <Picture
      title={words.lanes}
      beside={
        <SegmentedControl
          aria-label={words.howMuch}
          data={[
            { value: 'day', label: words.thisDay },
            { value: 'plan', label: words.wholePlan },
          ]}
          value={scope}
          onChange={(wanted) => setScope(wanted as LaneScope)}
        />
      }
      picture={
        <LanesPicture
          key={scope}
          day={day}
          lanes={lanes}
          scope={scope}
          stateOf={stateOf}
          hand={hand}
          onPutDown={putDown}
          panel={(lotId) =>
            hand && carried ? (
              <HandPanel
                {...{ view, day, hand, carried, busy, problem }}
                onPutDown={() => putDown(carried)}
              />
            ) : (
              <RunPanel
                day={day}
                run={day.plan.runs.find((run) => run.lotId === lotId)}
                hint={hand ? words.pointAtMovable : words.pointAtRun}
                beside={lotId !== undefined && <RunDoings view={view} hand={hand} lotId={lotId} />}
              />
            )
          }
        />
      }
      table={<LanesTable day={day} lanes={lanes.lanes} stateOf={stateOf} />}
    />
  );
}

interface RunDoingsProps {
  readonly view: PlanView;
  readonly hand: Hand | undefined;
  readonly lotId: string;
}

/** What can be done with a run that is pointed at: it is moved, or looked at as the floor has it. */
function RunDoings({ view, hand, lotId }: RunDoingsProps) {
  const words = useWords(PLAN_WORDS);
  const may = useMay();
  const run = view.settled?.runs[lotId];
  return (
    <>
      {hand?.canMove(lotId) && <Button onClick={() => hand.takeUp(lotId)}>{words.takeUp}</Button>}
      {run && may('run.read') && (
        <Link to="/runs/$id" params={{ id: run.id }} preload={false}>
          {words.openRun}
        </Link>
      )}
    </>
  );
}
