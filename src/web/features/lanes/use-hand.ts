import { useMemo, useState } from 'react';
import type { PlanView } from '../../../contract/index.js';
import {
  type Arrangement,
  type ArrangementEffects,
  type Arranger,
  arrangementEffects,
  arranger,
  type Day,
  type Shop,
} from '../../../core/day/index.js';
import { invariant } from '../../../core/foundation/index.js';
import type { UnableReason } from '../../../core/winding/index.js';
import { type Carry, isSamePlace, orderWith, standsAt } from './carry.js';

/** The hand over the lanes: what it may take up, what it holds, and what would follow if it were put down there. */
export interface Hand {
  readonly arranger: Arranger;
  readonly canMove: (lotId: string) => boolean;
  readonly carried: Carried | undefined;
  /** What it would be to hold a lot at a place. */
  readonly at: (carry: Carry) => Carried | undefined;
  readonly takeUp: (lotId: string) => void;
  readonly hold: (carry: Carry) => void;
  readonly leave: () => void;
}

export interface Carried {
  readonly carry: Carry;
  readonly from: Carry;
  readonly order: Arranger['orderNow'];
  /** Why the machine cannot make it; empty where it can. */
  readonly unable: readonly UnableReason[];
  /** Left out where the machine cannot make it. */
  readonly outcome?: Outcome;
}

export interface Outcome {
  readonly arrangement: Arrangement;
  readonly effects: ArrangementEffects;
}

/** A hand for whoever may move runs of a plan that is in force; undefined where nothing of it can be moved. */
export function useHand(view: PlanView, shop: Shop | undefined, isAllowed: boolean): Hand | undefined {
  const movable = view.settled?.movable;
  const plan = `${view.settled?.id} ${view.settled?.version}`;
  const [held, setHeld] = useState<{ readonly carry: Carry; readonly plan: string }>();
  const arranging = useMemo(
    () => (shop && movable && isAllowed ? arranger({ shop, ...movable }) : undefined),
    [shop, movable, isAllowed],
  );
  // What was taken from a plan that somebody changed meanwhile is no longer in hand.
  const carry = held?.plan === plan ? held.carry : undefined;
  const carried = useMemo(
    () => (arranging && carry && movable ? carriedAt(arranging, carry, movable.lots) : undefined),
    [arranging, carry, movable],
  );
  if (!arranging) return undefined;
  const hold = (next: Carry) => {
    if (!isSamePlace(next, carry)) setHeld({ carry: next, plan });
  };
  return {
    arranger: arranging,
    canMove: (lotId) => standsAt(arranging.orderNow, lotId) !== undefined,
    carried,
    at: (place) => carriedAt(arranging, place, movable?.lots ?? []),
    takeUp: (lotId) => {
      const from = standsAt(arranging.orderNow, lotId);
      if (from) hold(from);
    },
    hold,
    leave: () => setHeld(undefined),
  };
}

function carriedAt(
  { orderNow, unable, arrange }: Arranger,
  carry: Carry,
  lots: Parameters<typeof arrangementEffects>[2],
): Carried | undefined {
  const from = standsAt(orderNow, carry.lotId);
  if (!from) return undefined;
  const reasons = unable(carry.lotId, carry.machineId);
  const order = orderWith(orderNow, carry);
  if (reasons.length > 0) return { carry, from, order, unable: reasons };
  const before = arrange(orderNow);
  const after = arrange(order);
  invariant(before.ok && after.ok, 'lots go only where a machine is able');
  const effects = arrangementEffects(before.value, after.value, lots);
  return { carry, from, order, unable: [], outcome: { arrangement: after.value, effects } };
}

/** The day as it would be with what is in hand put down. */
export function dayInHand(day: Day, carried: Carried | undefined): Day {
  const arranged = carried?.outcome?.arrangement.runs;
  if (!arranged) return day;
  const moved = new Set(arranged.map(({ lotId }) => lotId));
  const runs = [...day.plan.runs.filter(({ lotId }) => !moved.has(lotId)), ...arranged];
  return { ...day, plan: { ...day.plan, runs } };
}
