import { type EndPull, judgePull, type PullOutcome } from './end-pull.js';
import type { EndSheet } from './end-sheet.js';

/** How the ball or the eye sits in its end. */
export type Seat = 'straight' | 'crooked' | 'loose';

/** What was looked at of one end; what was not is left out. */
export interface EndCheck {
  readonly lengthM?: number;
  readonly twists?: number;
  readonly tailM?: number;
  readonly seat?: Seat;
  readonly pull?: { readonly forceN: number; readonly came: PullOutcome };
}

export type CheckedThing = 'length' | 'twists' | 'tail' | 'seat' | 'pull';

/** What the sheet says to one thing that was looked at. */
export interface EndFinding {
  readonly thing: CheckedThing;
  readonly verdict: 'good' | 'failed' | 'short';
}

/** In the order in which a hand takes them: the pull last, since it may spoil the piece. */
export const CHECKED_IN_ORDER: readonly CheckedThing[] = ['length', 'twists', 'tail', 'seat', 'pull'];

/** Each thing that was looked at, against the sheet. A pull let go too early says nothing: `short`. */
export function judgeEndCheck(check: EndCheck, sheet: EndSheet): readonly EndFinding[] {
  const { lengthM, twists, tailM, seat, pull } = check;
  const found: EndFinding[] = [];
  const say = (thing: CheckedThing, isGood: boolean) =>
    found.push({ thing, verdict: isGood ? 'good' : 'failed' });
  if (lengthM !== undefined) {
    const offM = Math.abs(lengthM - sheet.cut.lengthOverAllM);
    say('length', offM <= sheet.lengthEitherWayM + ROUNDING_M);
  }
  if (twists !== undefined) say('twists', twists >= sheet.twists.least && twists <= sheet.twists.most);
  if (tailM !== undefined) say('tail', tailM <= sheet.tail.mostM + ROUNDING_M);
  if (seat !== undefined) say('seat', seat === 'straight');
  if (pull && sheet.pull) {
    const { leastBreakingN, share } = sheet.pull;
    const judged: EndPull = { ...pull, leastBreakingN };
    found.push({ thing: 'pull', verdict: judgePull(judged, share) });
  }
  return found;
}

const ROUNDING_M = 1e-9;
