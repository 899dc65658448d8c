import { formatFraction } from '../../core/units/index.js';
import type { SetUpSheet, WhirlCheck } from '../../core/winding/index.js';
import { listInWords } from './lists.js';
import { forceInWords } from './set-points.js';

/** Why the first strings are measured the way they are. */
export const firstOffInWords = (why: SetUpSheet['firstOff']['why']): string => FIRST_OFF[why];

/** What keeps the core from whirling, and how near it comes; goes on from `Whirl:`. */
export function whirlInWords(whirl: WhirlCheck): string {
  const { spindleRpm, keepOutShare, leastCoreTensionN, leastCoreTensionDampedN, dampersAtM } = whirl;
  const held = dampersAtM.length === 0 ? '' : ` with ${dampersInWords(dampersAtM)}`;
  const least = `at ${Math.round(spindleRpm)} rpm the core needs at least ${forceInWords(leastCoreTensionN)}${held} to stay ${formatFraction(keepOutShare)} clear, or ${forceInWords(leastCoreTensionDampedN)} with ${dampersAtM.length === 0 ? 'a damper' : 'one more'} ${Math.round(whirl.damperBestAtM * 1000)} mm from the head.`;
  const nearest = `It comes nearest ${Math.round(whirl.nearestAtM * 1000)} mm from the start of the wrap`;
  if (whirl.assumed === 'least-needed') return `${least} ${nearest}.`;
  return `${least} ${nearest}; at ${ASSUMED[whirl.assumed]} it begins at ${Math.round(whirl.lowestRpm)} rpm.`;
}

const dampersInWords = (dampersAtM: readonly number[]): string =>
  `${dampersAtM.length === 1 ? 'its damper' : 'its dampers'} at ${listInWords(dampersAtM.map((atM) => String(Math.round(atM * 1000))))} mm`;

const FIRST_OFF: Readonly<Record<SetUpSheet['firstOff']['why'], string>> = {
  'hex-corners-and-flats':
    'A hexagon repeats every 60°: the two turns show its corners and its flats. Their difference is the core’s shape, not a fault.',
  'round-ovality': 'Two readings at right angles show whether the string is oval.',
};

const ASSUMED: Readonly<Record<Exclude<WhirlCheck['assumed'], 'least-needed'>, string>> = {
  record: 'the tension on record',
  'strength-bound': 'the upper limit of tension',
};
