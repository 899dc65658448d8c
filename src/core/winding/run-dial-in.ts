import type { Recipe } from '../recipes/index.js';
import { familyKey, USUAL_TOLERANCE_M } from '../recipes/index.js';
import { PRIOR_SEAT, type SeatModel, seatFamilyOf, seatOnMachine, stringEstimates } from '../string/index.js';
import type { DialIn, DialInStep } from './dial-in/dial-in.js';
import { USUAL_AIM } from './dial-in/dial-in-aim.js';
import { firstBelief } from './dial-in/first-belief.js';
import type { PastDialIn } from './dial-in/past-dial-in.js';
import { rememberDialIn } from './dial-in/remember-dial-in.js';
import type { WindingMachine } from './machine.js';
import { machineKnob } from './machine-knob.js';

/** A trial string as it was written down. */
export interface TriedString {
  /** 0 or 1. */
  readonly position: number;
  /** What the knob stood at; strings from before settings were kept have none. */
  readonly setting?: number;
  readonly setBy?: 'advice' | 'override';
  /** Mean diameter at each place, m: as first measured, and as measured again. */
  readonly looksM: readonly (readonly number[])[];
}

/** A run to be dialled in on a machine. */
export interface RunAtMachine {
  readonly machine: WindingMachine;
  readonly recipe: Recipe;
  readonly quantity: number;
  readonly seat?: SeatModel;
}

/** The dial-in of a run as far as its strings go, upon what past ones taught. */
export function dialInOfRun(
  run: RunAtMachine,
  strings: readonly TriedString[],
  past: readonly PastDialIn[],
): DialIn {
  const { machine, recipe } = run;
  const { knob, reckonedSetting } = machineKnob(machine, recipe.construction);
  const first = firstBelief({
    machineId: machine.id,
    family: dialInFamily(recipe),
    knob,
    toleranceM: USUAL_TOLERANCE_M,
    reckonedSettings: Array.from({ length: machine.positions }, () => reckonedSetting),
    past,
  });
  const stringsToMake = Math.max(1, Math.ceil(run.quantity / machine.positions));
  const aim = { ...USUAL_AIM, toleranceM: USUAL_TOLERANCE_M, stringsToMake };
  return { knob, aim, first, steps: stepsOf(strings, wantedDiameterM(run)) };
}

/** What a run that is over leaves to later ones; nothing where no setting was kept with a measured string. */
export function pastOfRun(run: RunAtMachine, strings: readonly TriedString[]): PastDialIn | undefined {
  const dialIn = dialInOfRun(run, strings, []);
  if (!dialIn.steps.some(({ kind }) => kind === 'string')) return undefined;
  return rememberDialIn(dialIn, { machineId: run.machine.id, family: dialInFamily(run.recipe) });
}

/** Strings that sit alike are dialled in alike. */
export const dialInFamily = ({ construction }: Recipe): string => familyKey(seatFamilyOf(construction));

/** The mean diameter that the recipe should have on this machine, m: what a set-up sheet expects. */
export function wantedDiameterM({ machine, recipe, seat = PRIOR_SEAT }: RunAtMachine): number {
  const reckoned = stringEstimates(
    recipe.construction,
    { speakingLengthM: 0.65, frequencyHz: 100 },
    seatOnMachine(seat, machine.id),
  );
  return reckoned.ok ? reckoned.value.meanDiameterM.value : recipe.gaugeThou * METRES_A_THOU;
}

const METRES_A_THOU = 25.4e-6;

/**
 * What was done, step by step. A string that keeps the setting of the one before had none turned; an override is
 * a wish even where it leaves the knob alone. Strings before the first setting of their position say nothing.
 */
function stepsOf(strings: readonly TriedString[], wantedM: number): readonly DialInStep[] {
  const standing = new Map<number, number>();
  return strings.flatMap(({ position, setting, setBy, looksM }): readonly DialInStep[] => {
    const steps: DialInStep[] = [];
    const isWish = setBy === 'override';
    if (setting !== undefined && (isWish || standing.get(position) !== setting)) {
      standing.set(position, setting);
      steps.push({ kind: 'set', position, setting, chosenBy: isWish ? 'winder' : 'advice' });
    }
    if (!standing.has(position)) return steps;
    const [firstM, ...againM] = looksM.map((look) => look.map((diameterM) => diameterM - wantedM));
    if (firstM?.length) steps.push({ kind: 'string', position, errorsM: firstM });
    for (const errorsM of againM) steps.push({ kind: 'again', position, errorsM });
    return steps;
  });
}
