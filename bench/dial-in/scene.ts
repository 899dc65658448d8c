import { seededChance } from '../../src/core/foundation/index.js';
import {
  type FirstBelief,
  familyOffsetM,
  firstBelief,
  type MachineCharacter,
  moveTo,
  nearestSetting,
  type PastDialIn,
  type SimulatedMachine,
  type SimulatedRun,
  simulatedMachine,
  simulatedRun,
} from '../../src/core/winding/index.js';

/** Places at which every string is measured, by every rule. */
export const PLACES = 3;
const MACHINE_ID = 'machine';
const FAMILY = 'family';
/** Strings wound in each past run: the shop set them up by the harmonic rule, before it had another. */
const PAST_STRINGS = 4;

/** A run to be dialled in, as often as there are rules, each time the same. */
export interface Scene {
  readonly character: MachineCharacter;
  readonly past: readonly PastDialIn[];
  readonly first: FirstBelief;
  /** Where an old hand begins: where the last run of the family ended, else where the reckoning says. */
  readonly usualStart: readonly number[];
  begin(): SimulatedRun;
}

/** Draws a machine, a family, its past runs and a run to come. */
export function drawScene(character: MachineCharacter, pastRuns: number, seed: number): Scene {
  const chance = seededChance(seed);
  const draw = (): number => chance.whole(0, 2 ** 31);
  const machine = simulatedMachine(character, draw());
  const familyM = familyOffsetM(character, draw());
  const past: PastDialIn[] = [];
  let start: readonly number[] | undefined;
  for (let run = 0; run < pastRuns; run++) {
    const made = pastDialIn(machine, { familyOffsetM: familyM, seed: draw() }, start);
    past.push(made.record);
    start = made.ended;
  }
  const runSeed = draw();
  const begin = (): SimulatedRun => simulatedRun(machine, { familyOffsetM: familyM, seed: runSeed });
  const { knob, toleranceM } = character;
  const { reckonedSettings } = begin();
  return {
    character,
    past,
    usualStart: start ?? reckonedSettings,
    first: firstBelief({ machineId: MACHINE_ID, family: FAMILY, knob, toleranceM, reckonedSettings, past }),
    begin,
  };
}

function pastDialIn(
  machine: SimulatedMachine,
  drawn: { readonly familyOffsetM: number; readonly seed: number },
  start: readonly number[] | undefined,
): { readonly record: PastDialIn; readonly ended: readonly number[] } {
  const { knob } = machine.character;
  const run = simulatedRun(machine, drawn);
  const settings = [...(start ?? run.reckonedSettings)];
  const strings = settings.map((): { setting: number; errorsM: readonly number[] }[] => []);
  settings.forEach((setting, position) => {
    run.set(position, setting, moveTo(knob, setting, setting).past);
  });
  for (let t = 1; t <= PAST_STRINGS; t++) {
    run.wind();
    settings.forEach((setting, position) => {
      const errorsM = run.measure(position, PLACES);
      strings[position]!.push({ setting, errorsM });
      const errorM = errorsM.reduce((sum, each) => sum + each, 0) / PLACES;
      const to = nearestSetting(knob, setting - errorM / t / knob.responseMPerUnit);
      run.set(position, to, moveTo(knob, setting, to).past);
      settings[position] = to;
    });
  }
  return {
    ended: settings,
    record: {
      machineId: MACHINE_ID,
      family: FAMILY,
      responseMPerUnit: knob.responseMPerUnit,
      positions: settings.map((_, position) => ({
        reckonedSetting: run.reckonedSettings[position]!,
        strings: strings[position]!,
        overrideErrorsM: [],
      })),
    },
  };
}
