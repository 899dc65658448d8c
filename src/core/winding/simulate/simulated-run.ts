import { type Chance, seededChance } from '../../foundation/index.js';
import { normalBetween, normalDraw } from '../../stats/index.js';
import { type Play, playFor, turned } from './knob-play.js';
import type { SimulatedMachine } from './simulated-machine.js';

/** A run set up on a simulated machine: it does what it is told, and hides why. Changes as it is worked. */
export interface SimulatedRun {
  readonly positions: number;
  /** Where each position would be set by reckoning alone. */
  readonly reckonedSettings: readonly number[];
  /** Turns a position's knob, over `past` where the move says so. */
  set(position: number, to: number, past?: number): void;
  /** Winds one string at every position, side by side. */
  wind(): void;
  /** The last string of a position in the micrometer: error of each of so many places, m. */
  measure(position: number, places: number): readonly number[];
  /** What no one at the machine can see: for judging rules, never for feeding them. */
  truth(position: number): RunTruth;
}

export interface RunTruth {
  /** Error of the last string's mean diameter, and of the process as it stands, m. */
  readonly stringErrorM: number;
  readonly processErrorM: number;
  /** Share of the next so many strings that will be within tolerance, if the knob is left alone. */
  goodShare(strings: number): number;
  /** Setting at which the process would have no error. */
  readonly bestSetting: number;
}

/** Starts a run; `seed` draws its wire and all that happens in it. */
export function simulatedRun(
  machine: SimulatedMachine,
  run: { readonly familyOffsetM: number; readonly seed: number },
): SimulatedRun {
  const { character } = machine;
  const { knob } = character;
  const drawn = drawRun(machine, run);
  const middle = (knob.least + knob.most) / 2;
  const plays: Play[] = drawn.offsetsM.map(() => playFor(knob, machine.lostMotionTimes, middle));
  const strings = drawn.offsetsM.map((): WoundString => ({ errorM: 0, placesM: [] }));
  const looks = seededChance(run.seed + 2);
  const windings = seededChance(run.seed + 1);
  let moved = 0;

  const errorOf = (position: number): number =>
    drawn.offsetsM[position]! + drawn.responses[position]! * (plays[position]!.stands - middle) + moved;

  return {
    positions: character.positions,
    reckonedSettings: drawn.offsetsM.map(() => middle),
    set(position, to, past) {
      const stood = plays[position]!;
      const readied = past === undefined ? stood : turned(stood, past);
      const landed = turned(readied, to);
      const offMark = knob.roughness * normalDraw(drawn.chance) * (landed.stands - stood.stands);
      plays[position] = { ...landed, stands: landed.stands + offMark };
    },
    wind() {
      moved += machine.driftSign * character.driftMPerString;
      if (windings.next() < character.jump.share) moved += character.jump.byM * normalDraw(windings);
      for (let position = 0; position < character.positions; position++) {
        strings[position] = woundString(machine, errorOf(position), windings);
      }
    },
    measure(position, places) {
      return looksAt(machine, strings[position]!, { places, operatorM: drawn.operatorM, chance: looks });
    },
    truth(position) {
      const processErrorM = errorOf(position);
      return {
        stringErrorM: strings[position]!.errorM,
        processErrorM,
        bestSetting:
          plays[position]!.stands - processErrorM / drawn.responses[position]! + plays[position]!.play / 2,
        goodShare: (count) => goodShareAhead(machine, processErrorM, count),
      };
    },
  };
}

interface WoundString {
  readonly errorM: number;
  /** How far each of its places is from its own mean, drawn as they are asked for. */
  readonly placesM: number[];
}

function drawRun(machine: SimulatedMachine, run: { readonly familyOffsetM: number; readonly seed: number }) {
  const { character, runTimes } = machine;
  const chance = seededChance(run.seed);
  const shared = run.familyOffsetM + machine.offsetM + character.offsetM.run * runTimes * normalDraw(chance);
  const response = machine.responseShare * Math.exp(character.response.run * normalDraw(chance));
  return {
    chance,
    operatorM: character.operatorM * normalDraw(chance),
    offsetsM: machine.positionOffsetsM.map(
      (own) => shared + own + character.offsetM.spool * normalDraw(chance),
    ),
    responses: machine.positionResponseShares.map((own) => character.knob.responseMPerUnit * response * own),
  };
}

function woundString(
  { character, betweenM }: SimulatedMachine,
  processM: number,
  chance: Chance,
): WoundString {
  const isAstray = chance.next() < character.astray.share;
  const spreadM = betweenM * (isAstray ? character.astray.times : 1);
  return { errorM: processM + spreadM * normalDraw(chance), placesM: [] };
}

function looksAt(
  { character }: SimulatedMachine,
  string: WoundString,
  look: { readonly places: number; readonly operatorM: number; readonly chance: Chance },
): readonly number[] {
  const { places, operatorM, chance } = look;
  while (string.placesM.length < places) string.placesM.push(character.withinM * normalDraw(chance));
  const slip = chance.next() < character.misread.share ? character.misread.byM * chance.pick([-1, 1]) : 0;
  return string.placesM
    .slice(0, places)
    .map((placeM) => string.errorM + placeM + operatorM + slip + character.micrometerM * normalDraw(chance));
}

/** Strings gone astray count; jumps of the wire still to come do not. */
function goodShareAhead(
  { character, betweenM, driftSign }: SimulatedMachine,
  errorM: number,
  count: number,
): number {
  const { toleranceM, astray, driftMPerString } = character;
  const looks = driftMPerString === 0 ? 1 : 5;
  let sum = 0;
  for (let look = 0; look < looks; look++) {
    const value = errorM + (driftSign * driftMPerString * count * (look + 0.5)) / looks;
    const usual = normalBetween(-toleranceM, toleranceM, { value, u: betweenM });
    const wild = normalBetween(-toleranceM, toleranceM, { value, u: betweenM * astray.times });
    sum += (1 - astray.share) * usual + astray.share * wild;
  }
  return sum / looks;
}
