import type { KeyboardEvent } from 'react';
import { type CarryStep, carryStep } from './carry.js';
import { type Lane, middlesOf } from './lanes-of.js';
import type { Carried, Hand } from './use-hand.js';
import type { LaneWalk } from './use-lane-walk.js';

interface HandKeys {
  readonly lanes: readonly Lane[];
  readonly hand: Hand | undefined;
  readonly onPutDown: (carried: Carried) => void;
  readonly walk: LaneWalk;
}

const STEPS: Readonly<Record<string, CarryStep>> = {
  ArrowLeft: 'earlier',
  ArrowRight: 'later',
  ArrowUp: 'machine-above',
  ArrowDown: 'machine-below',
};

/** Space takes a run up and puts it down, arrows move it, Esc leaves it; with empty hands arrows walk. */
export function useHandKeys({ lanes, hand, onPutDown, walk }: HandKeys): (event: KeyboardEvent) => void {
  return (event) => {
    // A figure beside the lanes has its own keys.
    if ((event.target as Element).closest('button')) return;
    const carried = hand?.carried;
    if (!hand || !carried) {
      const { entryLotId } = walk;
      if (event.key !== ' ' || entryLotId === undefined || !hand?.canMove(entryLotId))
        return walk.onKeyDown(event);
      event.preventDefault();
      return hand.takeUp(entryLotId);
    }
    const step = STEPS[event.key];
    const isDown = event.key === ' ' || event.key === 'Enter';
    if (step === undefined && !isDown && event.key !== 'Escape') return;
    event.preventDefault();
    if (step) hand.hold(carryStep(hand.arranger.orderNow, carried.carry, step, middlesOf(lanes)));
    else if (isDown) onPutDown(carried);
    else hand.leave();
  };
}
