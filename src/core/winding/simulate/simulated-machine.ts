import { seededChance } from '../../foundation/index.js';
import { normalDraw } from '../../stats/index.js';
import type { MachineCharacter } from './machine-character.js';
import { aboutDraw, betweenDraw } from './normal-chance.js';

/** One machine with what is its own for years, drawn once: none of it is told to whoever works at it. */
export interface SimulatedMachine {
  readonly character: MachineCharacter;
  readonly seed: number;
  readonly offsetM: number;
  readonly positionOffsetsM: readonly number[];
  readonly responseShare: number;
  readonly positionResponseShares: readonly number[];
  readonly betweenM: number;
  readonly lostMotionTimes: number;
  readonly driftSign: number;
  /** How much more or less its wire varies from run to run than is usual. */
  readonly runTimes: number;
}

/** A machine of a character. The same seed gives the same machine. */
export function simulatedMachine(character: MachineCharacter, seed: number): SimulatedMachine {
  const chance = seededChance(seed);
  const places = Array.from({ length: character.positions });
  return {
    character,
    seed,
    offsetM: character.offsetM.machine * normalDraw(chance),
    positionOffsetsM: places.map(() => character.offsetM.position * normalDraw(chance)),
    responseShare: aboutDraw(chance, character.response.middle, character.response.machine),
    positionResponseShares: places.map(() => aboutDraw(chance, 1, 0.05)),
    betweenM: betweenDraw(chance, character.betweenM.least, character.betweenM.most),
    lostMotionTimes: betweenDraw(chance, character.trueLostMotion.least, character.trueLostMotion.most),
    driftSign: chance.pick([-1, 1]),
    runTimes: aboutDraw(chance, 1, 0.3),
  };
}

/** What a family of strings brings to every machine, m: how far the reckoning is off for it. */
export const familyOffsetM = (character: MachineCharacter, seed: number): number =>
  character.offsetM.family * normalDraw(seededChance(seed));
