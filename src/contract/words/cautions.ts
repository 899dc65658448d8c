import type { Caution } from '../../core/winding/index.js';

/** A caution as people read it: what the danger is, and what to do about it. */
export interface CautionWords {
  readonly title: string;
  readonly sentence: string;
}

/** The words of a caution; the same on the terminal, on the screen and on paper. */
export const cautionInWords = (caution: Caution): CautionWords => WORDS[caution];

/** How hard a loose tail would hit, to stand beside the cautions so that they are believed. */
export const looseTailInWords = (tail: { readonly tailM: number; readonly speedMPerS: number }): string =>
  `A loose tail of ${Math.round(tail.tailM * 1000)} mm flies at ${Math.round(tail.speedMPerS)} m/s (${Math.round(tail.speedMPerS * 3.6)} km/h).`;

const WORDS: Readonly<Record<Caution, CautionWords>> = {
  'rotating-spindle': {
    title: 'Turning spindle',
    sentence: 'Close the guard first. Tie back hair, sleeves and cords. No gloves at a turning spindle.',
  },
  'lock-out': {
    title: 'Lock out',
    sentence: 'Before you reach in: stop the machine, lock its switch and see that it stands still.',
  },
  'wire-whip': {
    title: 'Wire under tension',
    sentence: 'It can break and whip. Wear eye protection and keep your face out of its line.',
  },
  'sharp-ends': {
    title: 'Sharp ends',
    sentence: 'Hold the tail while you cut, and put cut-offs into the closed bin at once.',
  },
  'flatten-round-core': {
    title: 'Round core',
    sentence: 'Flatten it under both ends of the wrap before winding, or the wrap will turn on it.',
  },
  'nickel-skin': {
    title: 'Nickel',
    sentence: 'It can start a skin allergy. Cover broken skin and wash your hands before you eat.',
  },
  'metal-dust': {
    title: 'Metal dust',
    sentence: 'Draw it off or wipe it up damp. Never blow it away with compressed air.',
  },
  'turning-hook': {
    title: 'Turning hook',
    sentence: 'Take your fingers off ball and wire before it turns. No gloves at a turning hook.',
  },
  'pull-test': {
    title: 'Pulling ends',
    sentence:
      'Eye protection on, screen between you and the wire, nobody in its line. Pull slowly; cut no wire that is pulled.',
  },
  'local-rules': {
    title: 'Rules',
    sentence: 'Follow local rules and licensed practice; they stand above this sheet.',
  },
};
