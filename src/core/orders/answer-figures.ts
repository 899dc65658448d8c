import { type ChosenSet, targetsFor } from '../sets/index.js';
import type { RequestAnswer } from './answer-request.js';
import type { PlayerRequest } from './order.js';

/** What a string of an answer does in its place. */
export interface AnswerFigures {
  /** 1 is the treble. */
  readonly position: number;
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  readonly tensionN: number;
  readonly wishedTensionN: number;
  /** Left out where the wire's strength is not known. */
  readonly stressShare?: number;
  /** To bend a whole tone at the 12th fret, N; left out where no hand reaches. */
  readonly bendForceN?: number;
  /** What the set that is liked does there, carried over to this instrument; left out where none is told. */
  readonly liked?: LikedHere;
}

export interface LikedHere {
  readonly tensionN: number;
  readonly bendForceN?: number;
}

/** Every string of a set that answers a request, treble first: pull, bend and strength, beside what is wished and what is liked. */
export function answerFigures(
  { strings }: ChosenSet,
  answer: RequestAnswer,
  request: PlayerRequest,
): readonly AnswerFigures[] {
  const liked = likedHere(answer, request);
  return strings.map(({ position, tensionN, wishedTensionN, stressShare, bendForceN }, at) => {
    const { speakingLengthM, frequencyHz } = answer.targets.positions[at]!;
    const likedThere = liked?.[at];
    return {
      position,
      speakingLengthM,
      frequencyHz,
      tensionN,
      wishedTensionN,
      ...(stressShare === undefined ? {} : { stressShare }),
      ...(bendForceN === undefined ? {} : { bendForceN }),
      ...(likedThere ? { liked: likedThere } : {}),
    };
  });
}

/**
 * The feel of the set that is liked, as each string of this instrument would have it with nothing else wished: what an answer
 * is felt to differ from, whatever it was aimed at.
 */
export function likedHere(
  { liked }: Pick<RequestAnswer, 'liked'>,
  { instrument, tuning }: Pick<PlayerRequest, 'instrument' | 'tuning'>,
): readonly LikedHere[] | undefined {
  if (!liked) return undefined;
  const carried = targetsFor({ instrument, tuning, wish: { target: 'feel' }, liked });
  if (!carried.ok) return undefined;
  return carried.value.positions.map(({ targetTensionN, targetBendForceN }) => ({
    tensionN: targetTensionN,
    ...(targetBendForceN === undefined ? {} : { bendForceN: targetBendForceN }),
  }));
}
