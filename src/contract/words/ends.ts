import { formatForce, formatFraction, formatMillimetres, formatTrimmed } from '../../core/units/index.js';
import type {
  CheckedThing,
  EndSheet,
  ImpossibleReading,
  JointStrength,
  PiecesToPull,
  PullOutcome,
  PullTest,
} from '../../core/winding/index.js';
import { countInWords } from './lists.js';
import { forceInWords } from './set-points.js';

/** `7 full turns (6 to 8)`. */
export const twistsInWords = ({ twists: { wanted, least, most } }: EndSheet): string =>
  `${wanted} full turns (${least} to ${most})`;

/** Where the number of turns comes from; it claims no more than it has. */
export const twistsWhyInWords = ({ twists: { decidedBy }, pullLeftShare }: EndSheet): string =>
  `${TWISTS_WHY[decidedBy]} Our own rule: common practice, no source; your own pull tests stand above it. By friction alone ${pullLeftShare < 0.001 ? 'less than 0.1 %' : formatFraction(pullLeftShare, 1)} of the pull would be left in the tail.`;

const TWISTS_WHY: Readonly<Record<EndSheet['twists']['decidedBy'], string>> = {
  neck: 'As many touching turns as fill the neck.',
  friction: 'The fewest that hold by friction; the neck is a little longer for it.',
  'most-bends': 'As many as the wire is to be bent for; the neck would hold more.',
};

/** What makes up the piece that is cut. */
export const cutInWords = ({ cut }: EndSheet): string =>
  `${mm(cut.lengthOverAllM)} over all, ${mm(cut.endM)} for the end (it needs ${mm(cut.endNeedsM)}), ${mm(cut.tailM)} held and cut off`;

/** The tail behind the last turn. */
export const tailInWords = ({ tail }: EndSheet): string =>
  `cut it to ${millimetres(tail.wantedM)} mm; ${millimetres(tail.mostM)} mm at most`;

export const lengthWantedInWords = ({ cut, lengthEitherWayM }: EndSheet): string =>
  `${mm(cut.lengthOverAllM)} from the end to the tip, ${mm(lengthEitherWayM)} either way`;

/** How far to pull, and why so far. */
export const pullInWords = (pull: PullTest | undefined): string =>
  pull
    ? `to ${forceInWords(pull.proofN)} and hold: ${formatFraction(pull.share)} of the least at which the wire breaks (${formatForce(pull.leastBreakingN, 'N')}, by ${STRENGTH_FROM[pull.strengthFrom]}). There its elastic limit begins, so what holds may still be used.`
    : 'no strength of this wire is known, so there is no force to pull to. Pull some until they break, and write down where.';

const STRENGTH_FROM: Readonly<Record<PullTest['strengthFrom'], string>> = {
  certificate: 'its certificate',
  standard: 'its standard',
};

/** How hard a broken wire would hit, so that the caution is believed. */
export const whipInWords = ({ whipMPerS, proofN }: PullTest): string =>
  `If it breaks at ${formatForce(proofN, 'N')}, the loose end can fly at ${Math.round(whipMPerS)} m/s (${Math.round(whipMPerS * 3.6)} km/h).`;

/** How many ends to pull, and why. */
export function toPullInWords({ pieces, why, ...shown }: PiecesToPull): string {
  const { goodInARow, goodNeeded, confidence, coverage } = shown;
  const pull = `Pull ${countInWords(pieces, 'end')} of this run.`;
  const aim = `${goodNeeded} good ones in a row show, with ${formatFraction(confidence)} confidence, that at least ${formatFraction(coverage)} hold`;
  if (why === 'no-record') return `${pull} Once ${aim}, one is enough.`;
  if (why === 'shown') return `${pull} ${goodInARow} held in a row: ${aim}.`;
  if (why === 'one-gave-way')
    return `${pull} One gave way lately; ${goodInARow} held since. Look at the hook and the wire before you go on.`;
  return `${pull} ${goodInARow} held in a row so far; ${aim}.`;
}

/** What the pull tests say, sentence by sentence; never more than they do. */
export function jointInWords(joint: JointStrength): readonly string[] {
  const { tried, good, holds, atLeast, efficiency } = joint;
  if (!holds || !atLeast) return ['No end of this kind was pulled yet.'];
  const sure = (confidence: number) => `with ${formatFraction(confidence)} confidence`;
  return [
    `${good} of ${countInWords(tried, 'end')} held the proof force. Of all such ends between ${down(holds.low)} and ${up(holds.high)} hold it (exact limits, ${formatFraction(holds.confidence)} confidence).`,
    atLeast.isEnough
      ? `At least ${down(atLeast.coverage)} of such ends carry ${down(atLeast.share)} of the wire’s least strength or more, ${sure(atLeast.confidence)}: no distribution is assumed.`
      : `So far it is only sure, ${sure(atLeast.confidence)}, that at least ${down(atLeast.coverage)} of such ends carry ${down(atLeast.share)} of the wire’s least strength or more. More pulls would say more.`,
    efficiency
      ? `The middle end gives way at ${formatFraction(efficiency.middle)} of the wire’s least strength, between ${down(efficiency.low)} and ${up(efficiency.high)} with a chance of ${formatFraction(efficiency.credible)} (${countInWords(efficiency.gaveWay, 'end')} gave way; the others count as stronger than they were pulled).`
      : 'Where they give way is not known: too few were pulled until they did.',
  ];
}

/** How a pull came out. */
export const pullOutcomeInWords = (came: PullOutcome): string => OUTCOMES[came];

const OUTCOMES: Readonly<Record<PullOutcome, string>> = {
  held: 'held',
  'at-twist': 'broke at the end',
  'in-length': 'broke along the wire',
  slipped: 'slipped out of its twist',
};

/** What was typed, and what it can be. */
export function impossibleInWords({ thing, value, least, most }: ImpossibleReading) {
  const { name, write } = THINGS[thing];
  return {
    what: `${name} of ${write(value)} cannot be.`,
    mend: `It can be from ${write(least)} to ${write(most)}. Nothing was written: look again.`,
  };
}

/** A limit is never rounded to the better side. */
const down = (share: number): string => formatFraction(Math.floor(share * 1000) / 1000, 1);
const up = (share: number): string => formatFraction(Math.ceil(share * 1000) / 1000, 1);

const mm = (lengthM: number): string => `${formatMillimetres(lengthM, 0)} mm`;
const millimetres = (lengthM: number): string => formatTrimmed(lengthM * 1000, 1);

const inMillimetres = (lengthM: number): string => `${millimetres(lengthM)} mm`;

const THINGS: Readonly<
  Record<CheckedThing, { readonly name: string; readonly write: (value: number) => string }>
> = {
  length: { name: 'A length', write: inMillimetres },
  twists: { name: 'A twist', write: (turns) => `${formatTrimmed(turns, 1)} turns` },
  tail: { name: 'A tail', write: inMillimetres },
  seat: { name: 'A seat', write: String },
  pull: { name: 'A pull', write: (forceN) => formatForce(forceN, 'N') },
};
