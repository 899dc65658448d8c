import type { Need } from '../../../contract/index.js';

/** Needs of one kind and urgency. */
export interface NeedGroup {
  readonly kind: Need['kind'];
  readonly needs: readonly Need[];
}

export interface UrgencyGroup {
  readonly urgency: Need['urgency'];
  readonly count: number;
  readonly groups: readonly NeedGroup[];
}

/** By urgency, and in each by kind, in the order in which they come; urgencies that have none are left out. */
export function groupNeeds(needs: readonly Need[]): readonly UrgencyGroup[] {
  return (['now', 'soon', 'in-time'] as const).flatMap((urgency) => {
    const own = needs.filter((need) => need.urgency === urgency);
    const kinds = [...new Set(own.map(({ kind }) => kind))];
    const groups = kinds.map((kind) => ({ kind, needs: own.filter((need) => need.kind === kind) }));
    return own.length === 0 ? [] : [{ urgency, count: own.length, groups }];
  });
}

/** What a need is known by in a list. */
export function needKey(need: Need): string {
  switch (need.kind) {
    case 'order-late':
    case 'order-due':
      return need.orderId;
    case 'run-paused':
      return need.runId;
    case 'lot-on-hold':
    case 'lot-in-check':
      return need.lotId;
    case 'wire-low':
      return need.wireId;
    case 'dry-room-out':
    case 'dry-room-silent':
      return need.room;
    case 'request-waiting':
      return need.requestId;
    case 'complaint-open':
      return need.complaintId;
    case 'clock-behind':
      return need.kind;
  }
}
