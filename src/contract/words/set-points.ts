import { formatDecimal, formatForce, formatFraction, formatTrimmed } from '../../core/units/index.js';
import type { LayerSetUp, LeanedOn, SetPoint } from '../../core/winding/index.js';
import { listInWords } from './lists.js';

/** A tension to set, as words that never claim more than is known. */
export function setPointInWords(point: SetPoint): string {
  switch (point.kind) {
    case 'from-record':
      return `${onScale(point.dial)}${forceInWords(point.value)}, likely ${between(point)}; from ${nearRuns(point.runs)}${leftToStart(point.startShare)}${besideStrength(point.shareOfBreaking)}.`;
    case 'no-record':
      return `a guess: no run of this shop is near. Begin cautiously at ${onScale(point.dial)}${forceInWords(point.start)}, likely ${between(point)}; upper limit ${forceInWords(point.upper)}, decided by ${BASES[point.upperWhy](point.bound)}${recalled(point.bound)}.`;
    case 'unknown':
      return 'no near run in this shop yet, and no strength of this wire in print to give a limit.';
  }
}

/** The past runs that a tension leans on, nearest first, in one sentence; empty where there are none. */
export function leanedOnInWords(point: SetPoint, most = 3): string {
  if (point.kind === 'unknown' || point.leanedOn.length === 0) return '';
  const named = point.leanedOn.slice(0, most).map(runInWords);
  const more = point.runs - named.length;
  const others = more > 0 ? [more === 1 ? '1 more' : `${more} more`] : [];
  return `Leans on ${listInWords([...named, ...others])}.`;
}

function runInWords({ name, date, machineId, share }: LeanedOn): string {
  const when = date === undefined || name?.includes(date) ? [] : [date];
  const which = [...when, machineId, formatFraction(share)].join(', ');
  return name === undefined ? `a run (${which})` : `${name} (${which})`;
}

type Known = Exclude<SetPoint, { kind: 'unknown' }>;

const between = ({ low, high }: Known): string => `${formatDecimal(low, 1)} to ${formatForce(high, 'N')}`;

const onScale = (dial: number | undefined): string =>
  dial === undefined ? '' : `${formatTrimmed(dial, 1)} on the machine’s scale, that is `;

const nearRuns = (runs: number): string => (runs === 1 ? '1 near run' : `${runs} near runs`);

/** Below a hundredth nobody needs to know. */
const leftToStart = (share: number): string =>
  share < 0.01 ? '' : `, ${formatFraction(share)} of it a cautious start`;

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
