import { isDialTableUsable } from './dial-for-pitch.js';
import {
  type PitchAdvice,
  type PitchLook,
  type PitchRange,
  pitchAdvice,
  type TurnsSeen,
} from './dial-in/traverse-pitch.js';
import type { WindingMachine } from './machine.js';

/**
 * Where to put the traverse after all strings that were looked at, the first wound at the pitch of the sheet and each
 * later one at what was advised after the one before. Nothing before the first look.
 */
export function turnsAdvice(
  sheetPitchM: number,
  seen: readonly TurnsSeen[],
  range: PitchRange,
): PitchAdvice | undefined {
  const looks: PitchLook[] = [];
  let pitchM = sheetPitchM;
  let advice: PitchAdvice | undefined;
  for (const each of seen) {
    looks.push({ pitchM, seen: each });
    advice = pitchAdvice(looks, range);
    if (advice.kind === 'move' || advice.kind === 'no-finer') pitchM = advice.toM;
  }
  return advice;
}

/** What the traverse of a machine can be put to; of a gearbox, between the ends of its dial in its mean step. */
export function pitchRangeOf(machine: WindingMachine): PitchRange | undefined {
  if (machine.drive === 'servo') {
    const { pitchM, pitchStepM } = machine;
    return { leastM: pitchM.least, mostM: pitchM.most, stepM: pitchStepM };
  }
  if (!isDialTableUsable(machine)) return undefined;
  const { dialTable, dialStep } = machine;
  const [first, last] = [dialTable[0]!, dialTable.at(-1)!];
  const leastM = Math.min(first.traversePerTurnM, last.traversePerTurnM);
  const mostM = Math.max(first.traversePerTurnM, last.traversePerTurnM);
  return { leastM, mostM, stepM: ((mostM - leastM) * dialStep) / (last.dial - first.dial) };
}
