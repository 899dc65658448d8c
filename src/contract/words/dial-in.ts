import { formatFraction, formatMillimetres, formatThou, formatTrimmed } from '../../core/units/index.js';
import type { DialInAdvice, DialInReason, KnobMove, PitchAdvice } from '../../core/winding/index.js';
import { counted } from './amounts.js';

/** What a winder is told: one sentence to act on, and one line of why. */
export interface DialInWords {
  readonly what: string;
  readonly why: string;
}

/** Advice for one position. `unit` is what its knob counts in (`N`), or nothing where it counts in numbers. */
export function dialInInWords({ decision, why, odds }: DialInAdvice, unit = ''): DialInWords {
  const at = (setting: number): string => `${formatTrimmed(setting, 3)}${unit && ` ${unit}`}`;
  const because = `${reasonInWords(why, at)} ${oddsInWords(odds)}`.trim();
  switch (decision.kind) {
    case 'start':
      return {
        what: `Set ${moveInWords(decision.move, at)} and wind the first string.`,
        why: reasonInWords(why, at),
      };
    case 'run':
      return { what: 'Let it run.', why: because };
    case 'measure-one-more':
      return { what: 'Leave it. Wind one more string and measure it.', why: because };
    case 'measure-again':
      return { what: 'Measure this string again.', why: reasonInWords(why, at) };
    case 'stop':
      return { what: 'Stop. Find out what is wrong.', why: reasonInWords(why, at) };
    case 'adjust':
      return {
        what: `Set ${moveInWords(decision.move, at)}${decision.next === 'run' ? ', then let it run' : ' and wind one more string'}.`,
        why: because,
      };
  }
}

/** The same for the traverse, from what was seen of the turns. */
export function pitchAdviceInWords(advice: PitchAdvice): DialInWords {
  switch (advice.kind) {
    case 'keep':
      return { what: 'Leave the traverse.', why: 'The turns lie even.' };
    case 'move':
      return {
        what: `Set the traverse to ${formatMillimetres(advice.toM, 4)} mm a turn.`,
        why:
          advice.seen === 'gaps'
            ? 'Gaps between turns: the traverse runs ahead of the wire.'
            : 'Turns overlap: the traverse lags behind the wire.',
      };
    case 'look-again':
      return {
        what: 'Look at the turns again.',
        why: `Gaps were seen at ${formatMillimetres(advice.gapsAtM, 4)} mm, overlaps at ${formatMillimetres(advice.overlapsAtM, 4)} mm: both cannot be.`,
      };
    case 'no-finer':
      return {
        what: `Set the traverse to ${formatMillimetres(advice.toM, 4)} mm a turn and leave it.`,
        why: 'The next step down overlaps: a small gap is better than turns that climb.',
      };
    case 'end-of-traverse':
      return {
        what: 'Stop. The traverse goes no further.',
        why: `${advice.seen === 'gaps' ? 'Gaps' : 'Overlaps'} are still seen at the end of its range.`,
      };
  }
}

const moveInWords = ({ to, past }: KnobMove, at: (setting: number) => string): string =>
  past === undefined || past === to ? at(to) : `${at(to)}, coming up from ${at(past)}`;

function reasonInWords(why: DialInReason, at: (setting: number) => string): string {
  switch (why.kind) {
    case 'no-past-runs':
      return 'No past run to lean on: this is reckoned from the recipe alone.';
    case 'from-past-runs':
      return why.same > 0
        ? `From ${counted(why.same, 'past run')} of this family on this machine.`
        : `From ${counted(why.near, 'past run')} of its kin; none of this family on this machine.`;
    case 'sure-enough':
      return 'It is centred as well as need be.';
    case 'within-noise':
      return `What is left is less than strings differ by themselves (${sizeInWords(why.betweenM)}): moving now would chase chance.`;
    case 'error-seen':
      return `Moving is worth about ${counted(Math.max(1, Math.round(why.savedStrings)), 'string')}.`;
    case 'not-sure-yet':
      return 'Too little is known yet.';
    case 'finer-than-knob':
      return 'The knob has no finer step.';
    case 'end-of-knob':
      return `It would need ${at(why.wanted)}, beyond the end of the knob.`;
    case 'unsettled':
      return `${counted(why.strings, 'string')} have not settled it: something changes from string to string.`;
    case 'doubtful':
      return why.doubt.kind === 'odd-place'
        ? `Place ${why.doubt.place + 1} reads ${errorInWords(why.doubt.errorM)}, the others about ${errorInWords(why.doubt.othersM)}.`
        : `It reads ${errorInWords(why.doubt.errorM)}, where about ${errorInWords(why.doubt.expected.value)} was expected.`;
  }
}

function oddsInWords({ sure, capable }: DialInAdvice['odds']): string {
  const chance = `${formatFraction(sure)} sure that the run will be good.`;
  return capable
    ? chance
    : `${chance} This machine’s strings differ too much for the tolerance, however it is set.`;
}

const errorInWords = (errorM: number): string =>
  `${sizeInWords(Math.abs(errorM))} too ${errorM < 0 ? 'thin' : 'thick'}`;

const sizeInWords = (lengthM: number): string =>
  `${formatThou(lengthM, 2)} thou (${formatMillimetres(lengthM, 4)} mm)`;
