import { formatDecimal, formatFraction } from '../../core/units/index.js';
import type { SetUpSheet, WhirlCheck } from '../../core/winding/index.js';
import { countInWords, listInWords } from './lists.js';
import { forceInWords } from './set-points.js';

/** Why the first strings are measured the way they are. */
export const firstOffInWords = (why: SetUpSheet['firstOff']['why']): string => FIRST_OFF[why];

/** Why so many strings and places, and when to stop, in one line. */
export function protocolInWords({ strings, spreads, toleranceM, protocol }: SetUpSheet['firstOff']): string {
  const { stringsEach, places, stopBeyondM, letGoChance, stopChance, isEnough } = protocol;
  const each = strings > stringsEach ? ' of each position' : '';
  const size = `${countInWords(stringsEach, 'string')}${each} at ${countInWords(places, 'place')}`;
  const because = `strings differ by ${microns(spreads.betweenM)}${spreads.isOwn ? ' in this shop' : ''}, places by ${microns(spreads.withinM)}, readings by ${microns(spreads.micrometerM)}; tolerance ±${microns(toleranceM)} µm`;
  const odds = isEnough
    ? `lets 1 bad string in 4 go ${percent(letGoChance)} of the time, stops a centred process ${percent(stopChance)}`
    : `even so many let 1 bad string in 4 go ${percent(letGoChance)} of the time`;
  return `${size}: ${because}; ${odds}. Stop beyond ${microns(stopBeyondM)} µm off in the mean.`;
}

const microns = (lengthM: number): string => formatDecimal(lengthM * 1e6, 1);
const percent = (chance: number): string => (chance < 0.01 ? 'under 1 %' : formatFraction(chance));

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
