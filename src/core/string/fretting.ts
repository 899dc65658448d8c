import { centsBetween } from '../units/index.js';
import type { StretchedString } from './stretched.js';

/** Heights of the string over the frets. */
export interface Action {
  /** String over the plane of the frets at the nut (b). */
  readonly nutHeightM: number;
  /** How much higher the saddle stands (c). */
  readonly saddleOverNutM: number;
  /** How far behind the fret the finger presses (d); 0 where left out. */
  readonly fingerBehindFretM?: number;
}

/** How far saddle and nut stand back from where the frets were reckoned from; positive lengthens the string. */
export interface SetBack {
  readonly saddleM: number;
  readonly nutM: number;
}

/** What fretting asks of a string. */
export type FrettedString = Pick<
  StretchedString,
  'kappa' | 'bendingParameter' | 'speakingLengthM' | 'stretchingLengthM'
>;

/** Action from what a player measures: at the nut, and under the string at the 12th fret (half way). */
export const actionFromTwelfthFret = (nutHeightM: number, twelfthFretHeightM: number): Action => ({
  nutHeightM,
  saddleOverNutM: 2 * (twelfthFretHeightM - nutHeightM),
});

/**
 * Cents by which the note of `fret` sounds sharp against equal temperament from the open string (Beausoleil
 * 2024, Sec. III): shorter than reckoned, stretched down to the fret, stiffer when short.
 * err = 1200 lg(L0/(g L_n)) + 600 lg(1 + e) + 600 lg(1 + kappa e) + 1200 lg(S(g b)/S(b)), lg to base 2,
 * g = 2^(n/12), e the lengthening by fretting over the wire that stretches (L0 where clamped), S(b) = 1 + b + (1 + pi²/2) b²
 * (pinned saddle, clamped nut or finger; b grows as g, its published form).
 */
export function frettingErrorCents(
  string: FrettedString,
  question: { readonly fret: number; readonly action: Action; readonly setBack: SetBack },
): number {
  const { action, setBack } = question;
  const scaleM = string.speakingLengthM;
  const g = 2 ** (question.fret / 12);
  const openM = Math.hypot(scaleM + setBack.saddleM + setBack.nutM, action.saddleOverNutM);
  const { soundingM, behindM } = frettedPath(scaleM, g, action, setBack);
  const beyondEndsM = string.stretchingLengthM - scaleM;
  const strain = (soundingM + behindM - openM) / (openM + beyondEndsM);
  return (
    centsBetween(g * soundingM, openM) +
    centsBetween(1, (1 + strain) * (1 + string.kappa * strain)) / 2 +
    centsBetween(stiffEnds(string.bendingParameter), stiffEnds(g * string.bendingParameter))
  );
}

/** The string's way from saddle to fret, and on over the finger to the nut. */
function frettedPath(scaleM: number, g: number, action: Action, setBack: SetBack) {
  const { nutHeightM, saddleOverNutM, fingerBehindFretM = 0 } = action;
  const fretToSaddleM = scaleM / g + setBack.saddleM;
  const saddleHeightM = nutHeightM + saddleOverNutM;
  const soundingM = Math.hypot(fretToSaddleM, saddleHeightM);
  // The finger presses the string on along the line it comes down, below the fret's crown.
  const dipM = (saddleHeightM * fingerBehindFretM) / fretToSaddleM;
  const behindM =
    (fingerBehindFretM * soundingM) / fretToSaddleM +
    Math.hypot(scaleM - scaleM / g + setBack.nutM - fingerBehindFretM, nutHeightM + dipM);
  return { soundingM, behindM };
}

const stiffEnds = (b: number): number => 1 + b + (1 + Math.PI ** 2 / 2) * b * b;
