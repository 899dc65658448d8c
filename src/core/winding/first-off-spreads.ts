import { USUAL_TOLERANCE_M } from '../recipes/index.js';
import type { Construction } from '../string/index.js';

/** Strings whose spreads are alike. */
export type FirstOffClass = 'plain' | 'round-core' | 'hex-core' | 'two-layers';

export const firstOffClassOf = (construction: Construction): FirstOffClass => {
  if (construction.kind === 'plain') return 'plain';
  if (construction.layers.length === 2) return 'two-layers';
  return construction.core.shape === 'hex' ? 'hex-core' : 'round-core';
};

/** Why readings of one setting differ: standard deviations, m. */
export interface FirstOffSpreads {
  /** Of the mean diameter from string to string. */
  readonly betweenM: number;
  /** From place to place along one string. */
  readonly withinM: number;
  /** Of micrometer and hand together, as a gauge study gives it. */
  readonly micrometerM: number;
  /** Whether the string-to-string spread is the shop's own. */
  readonly isOwn: boolean;
}

/** What a shop's own strings showed, as its last calibration settled it. */
export interface OwnSpread {
  /** String to string at one setting, the reading of the micrometer in it, m. */
  readonly stringM: number;
  /** Degrees of freedom by which it is known. */
  readonly degrees: number;
}

/**
 * As shares of the usual tolerance: round workshop figures as the dial-in starts with, a core of drawn wire evener, two
 * layers rougher. No source.
 */
const USUAL: Readonly<Record<FirstOffClass, readonly [between: number, within: number]>> = {
  plain: [0.08, 0.05],
  'round-core': [0.22, 0.12],
  'hex-core': [0.25, 0.12],
  'two-layers': [0.32, 0.16],
};
const MICROMETER = 0.08;
/** So many degrees of freedom of its own, and the shop's figure takes the place of the usual one. Our own choice. */
const LEAST_DEGREES = 20;

/** The shop's own spread of wound strings where enough were measured, else the usual one of their class. */
export function firstOffSpreads(kind: FirstOffClass, own: OwnSpread | undefined): FirstOffSpreads {
  const [between, within] = USUAL[kind];
  const usual = {
    betweenM: between * USUAL_TOLERANCE_M,
    withinM: within * USUAL_TOLERANCE_M,
    micrometerM: MICROMETER * USUAL_TOLERANCE_M,
    isOwn: false,
  };
  if (kind === 'plain' || !own || own.degrees < LEAST_DEGREES) return usual;
  // The calibration's strings are one- and two-layered together: two layers stay rougher by the usual ratio.
  const rougher = kind === 'two-layers' ? USUAL['two-layers'][0] / USUAL['hex-core'][0] : 1;
  return { ...usual, betweenM: own.stringM * rougher, isOwn: true };
}
