import { MATERIAL_NAMES } from '../../core/recipes/index.js';
import type { StringSpec } from '../../core/sets/index.js';
import {
  formatDecimal,
  formatFraction,
  formatGauge,
  formatMillimetres,
  type Pitch,
  pitchName,
  STANDARD_REFERENCE_HZ,
} from '../../core/units/index.js';
import type { BodyOf } from '../records/record-kinds.js';
import { countInWords, listInWords } from './lists.js';
import { forceInWords } from './set-points.js';
import { endInWords, gaugesInWords } from './strings.js';
import { warningInWords } from './warnings.js';

type Body = BodyOf<'request'>;
type Answer = NonNullable<Body['answer']>;
type Figures = Answer['figures'][number];

/** What is told to a player of the set that answers the request: for paper and for a page alike. */
export interface PlayerCard {
  readonly player: string;
  /** `10 13 17 26 36 46` */
  readonly gauges: string;
  /** What the set is made of, for which instrument, in which tuning. */
  readonly about: string;
  /** Treble first. */
  readonly strings: readonly CardString[];
  /** What all strings together do to the neck, with the usual caution. */
  readonly neck: readonly string[];
  /** What to mind when the strings are put on. */
  readonly mind: readonly string[];
  /** How the figures are known. */
  readonly known: string;
}

export interface CardString {
  readonly position: number;
  readonly note: string;
  readonly spec: StringSpec;
  readonly speakingLengthM: number;
  readonly tensionN: number;
  readonly wishedTensionN: number;
  /** Left out where nothing is told of what is liked now. */
  readonly likedTensionN?: number;
  /** How it will feel beside what is liked now; empty where that is not told. */
  readonly feel: string;
}

/** A force in words, in whatever units the reader sees. */
type InWords = (forceN: number) => string;

/** The card of an answered request; undefined of one that nobody has answered. */
export function playerCard(
  { player, quantity, request, answer }: Body,
  pull: InWords = forceInWords,
): PlayerCard | undefined {
  if (!answer) return undefined;
  const strings = answer.strings.flatMap(({ spec }, at): CardString[] => {
    const figures = answer.figures[at];
    const pitch = request.tuning.pitches[at];
    return figures && pitch ? [cardString(spec, figures, pitch)] : [];
  });
  return {
    player,
    gauges: gaugesInWords(strings.map(({ spec }) => spec)),
    about: `${countInWords(quantity, 'set')} of ${madeOf(strings)}, for ${instrumentInWords(request)}, tuned ${tuningInWords(request)}.`,
    strings,
    neck: neckInWords(answer, strings.length, pull),
    mind: mindInWords(answer),
    known:
      'Pulls and bends are worked out from the weight of each string, its sounding length and its note, not measured on your instrument. The mark through a bar is the pull that was wished for.',
  };
}

const cardString = (spec: StringSpec, figures: Figures, pitch: Pitch): CardString => ({
  position: figures.position,
  note: pitchName(pitch),
  spec,
  speakingLengthM: figures.speakingLengthM,
  tensionN: figures.tensionN,
  wishedTensionN: figures.wishedTensionN,
  ...(figures.liked ? { likedTensionN: figures.liked.tensionN } : {}),
  feel: feelInWords(figures),
});

function madeOf(strings: readonly CardString[]): string {
  const materials = (kind: StringSpec['kind']) => [
    ...new Set(
      strings.filter(({ spec }) => spec.kind === kind).map(({ spec }) => MATERIAL_NAMES[spec.material]),
    ),
  ];
  const wound = materials('wound');
  const plain = materials('plain');
  const made = [
    ...(wound.length > 0 ? [`strings wound in ${listInWords(wound)}`] : []),
    ...(plain.length > 0 ? [`plain strings of ${listInWords(plain)}`] : []),
  ];
  const [first] = strings;
  return first ? `${listInWords(made)}, ${endInWords(first.spec.end)}s` : listInWords(made);
}

function instrumentInWords({ instrument }: Pick<Body['request'], 'instrument'>): string {
  const lengths = [...new Set(instrument.scaleLengthsM.map((lengthM) => formatMillimetres(lengthM, 0)))];
  const scale = lengths.length === 1 ? lengths[0] : `${lengths[0]} to ${lengths.at(-1)}`;
  return `${instrument.name} (${scale} mm from nut to saddle)`;
}

/** Low to high, as players write a tuning. */
export function tuningInWords({ tuning }: Pick<Body['request'], 'tuning'>): string {
  const notes = tuning.pitches.toReversed().map(pitchName).join(' ');
  if (tuning.referenceHz === STANDARD_REFERENCE_HZ) return notes;
  return `${notes} at A4 = ${formatDecimal(tuning.referenceHz, 1)} Hz`;
}

/** A change that is smaller goes unfelt. Our own limit, no source. */
const UNFELT_SHARE = 0.02;

/** How a string's pull and bend stand beside what is liked. */
export function feelInWords({
  tensionN,
  bendForceN,
  liked,
}: Pick<Figures, 'tensionN' | 'bendForceN' | 'liked'>): string {
  if (!liked) return '';
  const pull = tensionN / liked.tensionN - 1;
  const bend =
    bendForceN === undefined || liked.bendForceN === undefined
      ? undefined
      : bendForceN / liked.bendForceN - 1;
  const isPullFelt = Math.abs(pull) >= UNFELT_SHARE;
  const isBendFelt = bend !== undefined && Math.abs(bend) >= UNFELT_SHARE;
  if (!isPullFelt && !isBendFelt) return 'as now';
  const parts = [
    isPullFelt ? `pulls ${changed(pull)}` : 'pulls as now',
    ...(bend === undefined ? [] : [isBendFelt ? `takes ${changed(bend)} to bend` : 'bends as now']),
  ];
  return parts.join(', ');
}

const changed = (share: number): string =>
  `${formatFraction(Math.abs(share))} ${share > 0 ? 'more' : 'less'}`;

/** A neck that bears so much more or less than it did wants to be looked at. Our own limit, no source. */
const NECK_MOVES_SHARE = 0.05;

function neckInWords(
  { totalTensionN, likedTensionN }: Pick<Answer, 'totalTensionN' | 'likedTensionN'>,
  count: number,
  pull: InWords,
): readonly string[] {
  const together = `All ${count} strings together pull ${pull(totalTensionN)}`;
  const builder = 'What the builder of the instrument says of strings and pull stands above this card.';
  if (likedTensionN === undefined)
    return [
      `${together}. What the neck bears now was not told: ask whoever set it up whether it may bear that.`,
      builder,
    ];
  const change = totalTensionN / likedTensionN - 1;
  const against = `against ${pull(likedTensionN)} of the strings that you like now`;
  if (Math.abs(change) < NECK_MOVES_SHARE)
    return [`${together}, ${against}: the neck bears about what it bears now.`, builder];
  return [
    `${together}, ${against}: ${changed(change)}.`,
    change > 0
      ? 'The neck is not set for that. Have it looked at by somebody who sets necks, tune up step by step, and slacken at once if anything moves that should not.'
      : 'The neck will straighten and strings may buzz: have it looked at by somebody who sets necks.',
    builder,
  ];
}

/** Pull at which nobody should lean over a string belongs to every set; the rest to this one. */
const mindInWords = ({ warnings }: Answer): readonly string[] => [
  'Tune up slowly, with your eyes away from the string: one that breaks flies.',
  ...warnings.filter(({ code }) => code !== 'neck-load').map(warningInWords),
];

/** `46 wound`, or `10 plain`. */
export const cardGauge = ({ gaugeThou, kind }: StringSpec): string => `${formatGauge(gaugeThou)} ${kind}`;
