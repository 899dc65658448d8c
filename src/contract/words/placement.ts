import type { PlacementReason } from '../../core/planning/index.js';
import { listInWords } from './lists.js';
import { durationInWords } from './times.js';

/** Why a run stands where it does in the plan, as a sentence. */
export function placementInWords(reason: PlacementReason): string {
  switch (reason.kind) {
    case 'frozen':
      return 'Under way already; it stays where it is.';
    case 'due-first':
      return reason.dueMinute <= 0
        ? 'The orders that wait for it are due now.'
        : 'Of what can start here it is due first.';
    case 'same-set-up':
      return reason.keeps.length === 0
        ? 'It needs the smallest change from the run before.'
        : `It keeps the ${listInWords(reason.keeps)} of the run before, so less is changed.`;
    case 'released':
      return `It waits for its wire, ready ${durationInWords(reason.releaseMinute)} of work into the plan.`;
    case 'only-machine':
      return 'No other machine can make it.';
    case 'weighed':
      return `Set-up, work and due date weighed together put it before ${reason.aheadOf}, which is due earlier.`;
    case 'fills-bin':
      return 'It only tops up a bin; no order waits for it.';
    case 'by-hand':
      return 'It was put there by hand.';
  }
}
