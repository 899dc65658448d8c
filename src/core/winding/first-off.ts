import { USUAL_TOLERANCE_M } from '../recipes/index.js';
import type { Construction } from '../string/index.js';
import { type FirstOffProtocol, firstOffProtocol } from './first-off-protocol.js';
import {
  type FirstOffClass,
  type FirstOffSpreads,
  firstOffClassOf,
  firstOffSpreads,
  type OwnSpread,
} from './first-off-spreads.js';

/** How the first strings of a run are measured before the rest is made. */
export interface FirstOff {
  /** Of all positions together. */
  readonly strings: number;
  /** Along the wound length (of a plain string, the whole), from the end. */
  readonly placesFromEndM: readonly number[];
  /** Turns of the string in the micrometer, at every place. Report least, most and mean. */
  readonly rotationsDeg: readonly number[];
  readonly why: 'hex-corners-and-flats' | 'round-ovality';
  readonly kind: FirstOffClass;
  readonly toleranceM: number;
  readonly spreads: FirstOffSpreads;
  readonly protocol: FirstOffProtocol;
}

/**
 * Strings and places as the tolerance and the errors of measurement ask (`firstOffProtocol`), at two rotations: a hexagon
 * repeats every 60 degrees, so 0 and 30 show its corners and its flats, and their spread is the core's shape, no fault.
 * Round wire is read twice at right angles for ovality. The rotations are common practice, no source.
 */
export function firstOffPlan(string: {
  readonly construction: Construction;
  readonly positions: 1 | 2;
  readonly fromM: number;
  readonly lengthM: number;
  readonly measureFromEndsM: number;
  readonly ownSpread?: OwnSpread;
}): FirstOff {
  const { construction, positions, fromM, lengthM } = string;
  const kind = firstOffClassOf(construction);
  const spreads = firstOffSpreads(kind, string.ownSpread);
  const protocol = firstOffProtocol({ spreads, toleranceM: USUAL_TOLERANCE_M, positions });
  const insetM = Math.min(string.measureFromEndsM, lengthM / 4);
  const core = construction.kind === 'plain' ? construction.wire : construction.core;
  const hex = core.shape === 'hex';
  return {
    strings: protocol.stringsEach * positions,
    placesFromEndM: spreadOver(protocol.places, fromM + insetM, fromM + lengthM - insetM),
    rotationsDeg: hex ? [0, 30] : [0, 90],
    why: hex ? 'hex-corners-and-flats' : 'round-ovality',
    kind,
    toleranceM: USUAL_TOLERANCE_M,
    spreads,
    protocol,
  };
}

const spreadOver = (places: number, firstM: number, lastM: number): readonly number[] =>
  Array.from({ length: places }, (_, at) => firstM + ((lastM - firstM) * at) / (places - 1));
