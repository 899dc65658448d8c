import type { Knob } from '../dial-in/knob.js';

/** How a sort of machine behaves: invented figures of the size seen in winding, no source. Sizes in m. */
export interface MachineCharacter {
  readonly kind: SimulatedKind;
  readonly positions: 1 | 2;
  /** The knob as the shop has it on record. */
  readonly knob: Knob;
  readonly toleranceM: number;
  /** Offsets that families, machines, positions, runs and a position's spool bring, one standard deviation. */
  readonly offsetM: {
    readonly family: number;
    readonly machine: number;
    readonly position: number;
    readonly run: number;
    readonly spool: number;
  };
  /** True response over that on record: its middle, and its spread from machine to machine and run to run. */
  readonly response: { readonly middle: number; readonly machine: number; readonly run: number };
  readonly betweenM: { readonly least: number; readonly most: number };
  readonly withinM: number;
  readonly micrometerM: number;
  /** What the hand that measures adds to all readings of a run. */
  readonly operatorM: number;
  /** By how much the process drifts from one string to the next, always the same way. */
  readonly driftMPerString: number;
  /** What of backlash and dead-band is truly there, as multiples of those on record. */
  readonly trueLostMotion: { readonly least: number; readonly most: number };
  /** Strings in a hundred that go astray, by how many times the usual spread; and readings misread. */
  readonly astray: { readonly share: number; readonly times: number };
  readonly misread: { readonly share: number; readonly byM: number };
  /** Chance that from one string to the next the wire changes, and by how much the process jumps then. */
  readonly jump: { readonly share: number; readonly byM: number };
}

export type SimulatedKind =
  | 'new-servo'
  | 'servo-two-positions'
  | 'old-gearbox'
  | 'worn-gearbox'
  | 'coarse-dial'
  | 'gearbox-two-positions'
  | 'wrong-response'
  | 'strings-astray'
  | 'restless-wire';

const MICROMETRE = 1e-6;

const NEW_SERVO: MachineCharacter = {
  kind: 'new-servo',
  positions: 1,
  knob: {
    least: 0,
    most: 60,
    step: 0.05,
    deadBand: 0,
    backlash: 0,
    responseMPerUnit: -4 * MICROMETRE,
    roughness: 0.03,
  },
  toleranceM: 12.7 * MICROMETRE,
  offsetM: {
    family: 10 * MICROMETRE,
    machine: 7 * MICROMETRE,
    position: 4 * MICROMETRE,
    run: 4.5 * MICROMETRE,
    spool: 2 * MICROMETRE,
  },
  response: { middle: 1, machine: 0.2, run: 0.08 },
  betweenM: { least: 2.4 * MICROMETRE, most: 4 * MICROMETRE },
  withinM: 1.8 * MICROMETRE,
  micrometerM: 1 * MICROMETRE,
  operatorM: 0.6 * MICROMETRE,
  driftMPerString: 0,
  trueLostMotion: { least: 0.5, most: 1.5 },
  astray: { share: 0, times: 1 },
  misread: { share: 0, byM: 0 },
  jump: { share: 0, byM: 0 },
};

const OLD_GEARBOX: MachineCharacter = {
  ...NEW_SERVO,
  kind: 'old-gearbox',
  knob: { ...NEW_SERVO.knob, step: 0.25, deadBand: 0.4, backlash: 0.8, roughness: 0.1 },
  betweenM: { least: 2.8 * MICROMETRE, most: 4.4 * MICROMETRE },
  response: { middle: 1, machine: 0.25, run: 0.1 },
};

/** The sorts of machine that can be practised on and that rules are tried on. */
export const SIMULATED_MACHINES: Readonly<Record<SimulatedKind, MachineCharacter>> = {
  'new-servo': NEW_SERVO,
  'servo-two-positions': { ...NEW_SERVO, kind: 'servo-two-positions', positions: 2 },
  'old-gearbox': OLD_GEARBOX,
  'worn-gearbox': {
    ...OLD_GEARBOX,
    kind: 'worn-gearbox',
    knob: { ...OLD_GEARBOX.knob, deadBand: 0.5, backlash: 1.2 },
    driftMPerString: 0.03 * MICROMETRE,
    trueLostMotion: { least: 1, most: 2.5 },
  },
  'coarse-dial': {
    ...NEW_SERVO,
    kind: 'coarse-dial',
    knob: { ...NEW_SERVO.knob, step: 1, roughness: 0.05 },
  },
  'gearbox-two-positions': { ...OLD_GEARBOX, kind: 'gearbox-two-positions', positions: 2 },
  'wrong-response': {
    ...NEW_SERVO,
    kind: 'wrong-response',
    response: { middle: 1, machine: 0.5, run: 0.15 },
  },
  'strings-astray': {
    ...NEW_SERVO,
    kind: 'strings-astray',
    astray: { share: 0.06, times: 4 },
    misread: { share: 0.03, byM: 25 * MICROMETRE },
  },
  'restless-wire': {
    ...NEW_SERVO,
    kind: 'restless-wire',
    jump: { share: 0.08, byM: 5 * MICROMETRE },
  },
};
