import type { PlanView, ProblemDetails } from '../../../contract/index.js';
import type { LotOrder } from '../../../core/day/index.js';
import { useDo } from '../../api/use-do.js';
import { useTell } from '../../parts/notices.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { isSamePlace } from './carry.js';
import type { Carried, Hand } from './use-hand.js';

interface PutDown {
  readonly putDown: (carried: Carried) => void;
  readonly busy: boolean;
  readonly problem: ProblemDetails | undefined;
}

/** Puts a run down: the shop works its times out anew, and one may take it back. Where it stood before, nothing is done. */
export function usePutDown({ settled, machineIds }: PlanView, hand: Hand | undefined): PutDown {
  const words = useWords(PLAN_WORDS);
  const tell = useTell();
  const { run, busy, problem } = useDo('rearrange-plan');
  const lanesOf = (order: LotOrder) =>
    order.map(({ machineId, lotIds }) => ({ machineId: machineIds[machineId] ?? '', lotIds: [...lotIds] }));

  const put = async ({ carry, order }: Carried, planId: string, expectedVersion: number) => {
    const before = hand?.arranger.orderNow ?? [];
    const done = await run({ planId, expectedVersion, lanes: lanesOf(order) });
    if (!done.ok) return;
    const { version } = done.value.plan;
    const undo = async () => {
      const back = await run({ planId, expectedVersion: version, lanes: lanesOf(before) });
      tell(back.ok ? { text: words.movedBack(carry.lotId) } : { text: back.fault.detail, kind: 'care' });
    };
    tell({ text: words.moved(carry.lotId, carry.machineId), undo });
  };

  return {
    busy,
    problem,
    putDown: (carried) => {
      if (busy || !settled || !hand) return;
      if (isSamePlace(carried.carry, carried.from)) hand.leave();
      else if (carried.outcome) void put(carried, settled.id, settled.version);
      // Where the machine cannot make it, the panel says why; it stays in hand.
      else hand.hold(carried.carry);
    },
  };
}
