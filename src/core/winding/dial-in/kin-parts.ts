import type { Matrix } from '../../numeric/index.js';
import type { PastDialIn } from './past-dial-in.js';
import { meanOf } from './pooled-spread.js';
import { type KinSpreads, STARTING_SPREADS } from './starting-spreads.js';

/** One unknown of one position of one run: its offset, or what its response is beyond the reckoned one. */
export interface Unknown {
  readonly run: number;
  readonly machineId: string;
  readonly family: string;
  readonly position: number;
}

/** A past string: error beyond what the reckoned response accounts for, at a travel from the reckoned setting. */
export interface PastSeen extends Unknown {
  readonly restM: number;
  /** Travel times reckoned response, m. */
  readonly reachM: number;
  readonly places: number;
}

export function pastSeen(past: readonly PastDialIn[]): readonly PastSeen[] {
  return past.flatMap(({ machineId, family, responseMPerUnit, positions }, run) =>
    positions.flatMap(({ reckonedSetting, strings }, position) =>
      strings.map(({ setting, errorsM }) => {
        const reachM = responseMPerUnit * (setting - reckonedSetting);
        const restM = meanOf(errorsM) - reachM;
        return { run, machineId, family, position, restM, reachM, places: errorsM.length };
      }),
    ),
  );
}

/** How much larger than the starting values the lasting parts, the passing parts and the noise are. */
export interface PartSizes {
  readonly lasting: number;
  readonly passing: number;
  readonly noise: number;
}

/** Covariance of unknowns, split into what lasts from run to run and what passes with the run. */
export interface Shared {
  readonly lasting: number;
  readonly passing: number;
}

export const offsetShared = (one: Unknown, other: Unknown): Shared =>
  shared(STARTING_SPREADS.offset, one, other);

/** Of responses, as a share of the reckoned one squared. */
export function responseShared(one: Unknown, other: Unknown): number {
  const { lasting, passing } = shared(STARTING_SPREADS.response, one, other);
  return lasting + passing;
}

/** The squares of the parts that two unknowns have in common. */
function shared(spreads: KinSpreads, one: Unknown, other: Unknown): Shared {
  const machine = one.machineId === other.machineId;
  const place = one.position === other.position;
  const lasting =
    (one.family === other.family ? spreads.family ** 2 : 0) +
    (machine ? spreads.machine ** 2 : 0) +
    (machine && place ? spreads.position ** 2 : 0);
  const passing = one.run === other.run ? spreads.run ** 2 + (place ? spreads.own ** 2 : 0) : 0;
  return { lasting, passing };
}

/** Covariance of past strings in parts, lower triangles, m^2: what is the same for all sizes is reckoned once. */
export interface SeenParts {
  readonly lasting: Matrix;
  readonly passing: Matrix;
  readonly response: Matrix;
}

export function seenParts(seen: readonly PastSeen[], toleranceM: number): SeenParts {
  const scale = toleranceM ** 2;
  const triangle = (of: (one: PastSeen, other: PastSeen) => number): Matrix =>
    seen.map((one, row) => seen.slice(0, row + 1).map((other) => of(one, other)));
  return {
    lasting: triangle((one, other) => scale * offsetShared(one, other).lasting),
    passing: triangle((one, other) => scale * offsetShared(one, other).passing),
    response: triangle((one, other) => one.reachM * other.reachM * responseShared(one, other)),
  };
}
