import { formatForce, formatFraction } from '../../core/units/index.js';
import type { LayerSetUp, SetPoint } from '../../core/winding/index.js';

/** A tension to set, as words that never claim more than is known. */
export function setPointInWords(point: SetPoint): string {
  switch (point.kind) {
    case 'from-record':
      return `${forceInWords(point.value)}, from ${point.runs === 1 ? '1 run' : `${point.runs} runs`} recorded in this shop${besideStrength(point.shareOfBreaking)}.`;
    case 'no-record':
      return `no record in this shop yet; upper limit ${forceInWords(point.upper)}, decided by ${BASES[point.upperWhy](point.bound)}${recalled(point.bound)}.`;
    case 'unknown':
      return 'no record in this shop yet, and no strength of this wire in print to give a limit.';
  }
}

/** `72.1 N (16.21 lbf)`. */
export const forceInWords = (forceN: number): string =>
  `${formatForce(forceN, 'N')} (${formatForce(forceN, 'lbf')})`;

/** What keeps the spindle from turning faster, in a word or two. */
export const speedLimitInWords = (limit: LayerSetUp['rpmLimitedBy']): string => SPEED_LIMITS[limit];

function besideStrength(shareOfBreaking: number | undefined): string {
  if (shareOfBreaking === undefined) return '';
  if (shareOfBreaking > 1)
    return '. That is more than the strength table says the wire bears: check the record';
  return ` (${formatFraction(shareOfBreaking)} of the wire’s least breaking load)`;
}

const recalled = ({ standing }: NoRecord['bound']): string =>
  standing === 'memory' ? ' (its strength is recalled, not read in print)' : '';

type NoRecord = Extract<SetPoint, { kind: 'no-record' }>;

const BASES: Readonly<Record<NoRecord['upperWhy'], (bound: NoRecord['bound']) => string>> = {
  'core-elastic-limit': ({ share }) =>
    `the elastic limit of the core (${formatFraction(share)} of its least strength)`,
  'wrap-softest-temper-breaks': ({ temper }) =>
    `where this wire breaks in its softest temper on record${temper === undefined ? '' : ` (${temper})`}: stay well below`,
};

const SPEED_LIMITS: Readonly<Record<LayerSetUp['rpmLimitedBy'], string>> = {
  machine: 'the machine',
  'wire-speed': 'wire speed',
  whirl: 'whirl',
  record: 'our record',
};
