import {
  type DialIn,
  type DialInAdvice,
  type DialInStep,
  dialInAdvice,
  type FirstBelief,
  familyOffsetM,
  firstBelief,
  type MachineCharacter,
  SIMULATED_MACHINES,
  type SimulatedKind,
  simulatedMachine,
  simulatedRun,
  USUAL_AIM,
} from '../../../core/winding/index.js';
import { advisedSetting, type Dialled, mayRun } from '../dial-in/next-string.js';

/** Which machine is practised on, and what is drawn of it. */
export interface PracticeRun {
  readonly kind: SimulatedKind;
  readonly seed: number;
}

/** What the person at the machine did. */
export type Deed =
  | ({ readonly kind: 'string'; readonly position: number } & Dialled & { readonly past?: number })
  | { readonly kind: 'again'; readonly position: number }
  /** The knob turned for the last time before the run is let go. */
  | ({ readonly kind: 'set'; readonly position: number } & Dialled & { readonly past?: number });

export interface PractisedString {
  readonly position: number;
  readonly setting: number;
  readonly setBy: Dialled['setBy'];
  readonly errorsM: readonly number[];
}

/** How a practice stands after all that was done. */
export interface Practised {
  readonly character: MachineCharacter;
  readonly advices: readonly DialInAdvice[];
  readonly strings: readonly PractisedString[];
  readonly standsAt: readonly (number | undefined)[];
  /** Share of the run that would be good at each position, were it let go now. */
  readonly goodShares: readonly number[];
}

const PLACES = 3;

/** Everything from the start again: the same deeds on the same machine always come to the same, so any of them can be undone. */
export function practised({ kind, seed }: PracticeRun, deeds: readonly Deed[]): Practised {
  const character = SIMULATED_MACHINES[kind];
  const run = simulatedRun(simulatedMachine(character, seed), {
    familyOffsetM: familyOffsetM(character, seed + 1),
    seed: seed + 2,
  });
  const steps: DialInStep[] = [];
  const strings: PractisedString[] = [];
  const standsAt: (number | undefined)[] = run.reckonedSettings.map(() => undefined);
  for (const deed of deeds) {
    const { position } = deed;
    if (deed.kind === 'again') {
      const errorsM = run.measure(position, PLACES);
      steps.push({ kind: 'again', position, errorsM });
      const last = strings.findLastIndex((string) => string.position === position);
      if (last >= 0) strings[last] = { ...strings[last]!, errorsM };
      continue;
    }
    const { setting, setBy, past } = deed;
    if (standsAt[position] !== setting || setBy === 'override') {
      if (standsAt[position] !== setting) run.set(position, setting, past);
      standsAt[position] = setting;
      steps.push({ kind: 'set', position, setting, chosenBy: setBy === 'override' ? 'winder' : 'advice' });
    }
    if (deed.kind === 'set') continue;
    run.wind();
    const errorsM = run.measure(position, PLACES);
    steps.push({ kind: 'string', position, errorsM });
    strings.push({ position, setting, setBy, errorsM });
  }
  return {
    character,
    advices: dialInAdvice({ ...unknownTo(character, run.reckonedSettings), steps }),
    strings,
    standsAt,
    goodShares: standsAt.map((_, position) => run.truth(position).goodShare(RUN_STRINGS)),
  };
}

const RUN_STRINGS = USUAL_AIM.stringsToMake;

/** Nobody has dialled this machine in before. */
function unknownTo(character: MachineCharacter, reckonedSettings: readonly number[]): Omit<DialIn, 'steps'> {
  const { kind: machineId, knob, toleranceM } = character;
  const first: FirstBelief = firstBelief({
    machineId,
    family: 'practice',
    knob,
    toleranceM,
    reckonedSettings,
    past: [],
  });
  return { knob, aim: { ...USUAL_AIM, toleranceM }, first };
}

/** What the advice would have a person do next; nothing more once every position may run or is to be stopped. */
export function advisedDeed({ advices, standsAt }: Practised): Deed | undefined {
  const open = advices.find((advice) => !mayRun(advice) && advice.decision.kind !== 'stop');
  if (!open) return undefined;
  const { position, decision } = open;
  if (decision.kind === 'measure-again') return { kind: 'again', position };
  return { kind: 'string', ...dialledByAdvice(open, standsAt[position]) };
}

/** The last turn of the knob at each position that wants one before the run goes. */
export const lastTurns = ({ advices, standsAt }: Practised): readonly Deed[] =>
  advices
    .filter(({ decision }) => decision.kind === 'adjust' && decision.next === 'run')
    .map((advice) => ({ kind: 'set', ...dialledByAdvice(advice, standsAt[advice.position]) }));

function dialledByAdvice(advice: DialInAdvice, standsAt: number | undefined) {
  const { position, decision } = advice;
  const past = 'move' in decision ? decision.move.past : undefined;
  const dialled: Dialled = { setting: advisedSetting(advice, standsAt), setBy: 'advice' };
  return { position, ...dialled, ...(past === undefined ? {} : { past }) };
}

export interface ByAdvice {
  readonly strings: number;
  readonly isStopped: boolean;
  readonly goodShares: readonly number[];
}

/** The same machine and run by someone who does what the advice says, and nothing else. */
export function byAdvice(run: PracticeRun): ByAdvice {
  const deeds: Deed[] = [];
  for (;;) {
    const now = practised(run, deeds);
    const next = advisedDeed(now);
    if (!next) {
      const isStopped = now.advices.some(({ decision }) => decision.kind === 'stop');
      const { goodShares } = practised(run, [...deeds, ...lastTurns(now)]);
      return { strings: now.strings.length, isStopped, goodShares };
    }
    deeds.push(next);
  }
}
