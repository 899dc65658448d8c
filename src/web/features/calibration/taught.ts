import type { Estimate } from '../../../core/numeric/index.js';

/** What strings said of one unknown, to be put in words. */
export interface Taught {
  /** Where it lies against what was believed; `as-believed` where the move is small beside the doubt there was. */
  readonly direction: 'less' | 'as-believed' | 'more';
  /** How many times as well it is known as before. */
  readonly sharper: number;
  /** False where strings said next to nothing of it. */
  readonly isLearned: boolean;
}

/** A move of a quarter of the former standard uncertainty is worth a word. */
const WORTH_A_WORD = 0.25;
/** Below that a person should not read anything into it. */
const LEARNED_FROM = 1.15;

export function taughtOf({ before, now }: { readonly before: Estimate; readonly now: Estimate }): Taught {
  const sharper = now.u === 0 ? 1 : before.u / now.u;
  const moved = before.u === 0 ? 0 : (now.value - before.value) / before.u;
  const direction = Math.abs(moved) < WORTH_A_WORD ? 'as-believed' : moved > 0 ? 'more' : 'less';
  return { direction, sharper, isLearned: sharper >= LEARNED_FROM };
}
