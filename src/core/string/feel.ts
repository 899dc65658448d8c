import { type Bend, bend } from './bend.js';
import { type Action, actionFromTwelfthFret, frettingErrorCents } from './fretting.js';
import { centsPerMmPulled } from './pulled-through.js';
import { pushAside } from './side-push.js';
import type { StretchedString } from './stretched.js';
import { temperatureCentsPerK } from './temperature.js';

/** What a hand feels of one string, as numbers to compare with another's. */
export interface Feel {
  readonly tensionN: number;
  /** Force at the 12th fret (mid-string, open) that pushes the string 1 mm aside. */
  readonly sideForceN: number;
  /** Bending up at the fret asked for; undefined where that note is out of a hand's reach. */
  readonly bend: Bend | undefined;
  /** Pitch change per millimetre of wire drawn through by tuner or vibrato arm. */
  readonly centsPerMmPulled: number;
  /** How sharp the note at the fret asked for comes out at that action with no set-back. */
  readonly frettingRiseCents: number;
  /** Negative: warming flattens. */
  readonly centsPerK: number;
}

export interface FeelConditions {
  /** Where the string is bent and fretted; the 12th where left out. */
  readonly fret?: number;
  /** How far up it is bent; a whole tone where left out. */
  readonly bendCents?: number;
  readonly action?: Action;
  /** 0, the largest effect, where left out. */
  readonly frameExpansionPerK?: number;
}

const ONE_MILLIMETRE_M = 0.001;
const WHOLE_TONE_CENTS = 200;
/** A middling steel-string action: 0.5 mm at the nut, 2 mm at the 12th fret (engineering judgement, no source). */
const MIDDLING_ACTION = actionFromTwelfthFret(0.0005, 0.002);

/** The feel of a tuned string, each figure by the function of the same name in this room. */
export function feel(string: StretchedString, conditions: FeelConditions = {}): Feel {
  const { fret = 12, bendCents = WHOLE_TONE_CENTS, action = MIDDLING_ACTION } = conditions;
  const middleM = string.speakingLengthM / 2;
  return {
    tensionN: string.tensionN,
    sideForceN: pushAside(string, {
      distanceToNutM: middleM,
      distanceToSaddleM: middleM,
      pushM: ONE_MILLIMETRE_M,
    }).forceN,
    bend: bend(string, { fret, cents: bendCents }),
    centsPerMmPulled: centsPerMmPulled(string),
    frettingRiseCents: frettingErrorCents(string, { fret, action, setBack: { saddleM: 0, nutM: 0 } }),
    centsPerK: temperatureCentsPerK(string, conditions.frameExpansionPerK),
  };
}
