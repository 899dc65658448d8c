import { type Belief, learn, processError, processResponse, unsettle } from './belief.js';
import type { DialIn, DialInStep } from './dial-in.js';
import { type Doubt, doubtOf, settled } from './doubtful-string.js';
import { moveVariance } from './knob.js';
import { meanOf } from './pooled-spread.js';
import { learnRobustly } from './robust-learning.js';
import { meanReadingVariance, type StringNoise, scaledNoise } from './string-noise.js';

/** Where a dial-in stands after all its steps. */
export interface Standing {
  readonly belief: Belief;
  readonly noise: StringNoise;
  readonly positions: readonly PositionStanding[];
}

export interface PositionStanding {
  /** Undefined until the knob has been set. */
  readonly setting?: number;
  /** Strings wound so far. */
  readonly strings: number;
  /** The last string, where its readings are not believed yet. */
  readonly doubtful?: { readonly errorsM: readonly number[]; readonly doubt: Doubt };
}

/**
 * All steps taken in, in order. The spread from string to string is learned from the same strings, so they are gone
 * through twice: the second time with the spread that the first found.
 */
export function standing(dialIn: DialIn): Standing {
  const { noise, noiseStrings } = dialIn.first;
  const once = goThrough(dialIn, noise);
  const factor = Math.sqrt((noiseStrings + once.squares) / (noiseStrings + once.evidence));
  return goThrough(dialIn, scaledNoise(noise, factor));
}

/** Surprises beyond what was expected, weighed by how far they tell of the noise and not of the process. */
interface Course extends Standing {
  readonly squares: number;
  readonly evidence: number;
}

function goThrough(dialIn: DialIn, noise: StringNoise): Course {
  const start: Course = {
    belief: dialIn.first.belief,
    noise,
    positions: dialIn.first.belief.referenceSettings.map(() => ({ strings: 0 })),
    squares: 0,
    evidence: 0,
  };
  const lastWish = dialIn.steps.reduce<readonly number[]>(
    (last, step, index) =>
      step.kind === 'set' && step.chosenBy === 'winder' ? last.with(step.position, index) : last,
    start.positions.map(() => -1),
  );
  return dialIn.steps.reduce<Course>((at, step, index) => {
    if (step.kind === 'set') return afterSetting(dialIn, at, step, lastWish[step.position] === index);
    return step.kind === 'string' ? afterString(at, step) : afterSecondLook(at, step);
  }, start);
}

/**
 * A move is rough, so the process is less sure after it. A winder who sets against the advice says by that where
 * the error should be nought: a reading by eye, believed as far as such readings were right. Only the last counts.
 */
function afterSetting(
  { knob, first }: DialIn,
  at: Course,
  { position, setting, chosenBy }: Extract<DialInStep, { kind: 'set' }>,
  isLastWish: boolean,
): Course {
  const before = at.positions[position]!;
  const response = processResponse(at.belief, position).value;
  const by = before.setting === undefined ? 0 : setting - before.setting;
  let belief = unsettle(at.belief, position, moveVariance(knob, response, by));
  if (chosenBy === 'winder' && isLastWish) {
    belief = learn(belief, { position, setting, errorM: 0, varianceM2: first.overrideSpreadM ** 2 });
  }
  return withPosition({ ...at, belief }, position, { setting, strings: before.strings });
}

/** A string that is still in doubt when the next is wound is believed as it is. */
function afterString(at: Course, step: Extract<DialInStep, { kind: 'string' }>): Course {
  const { position, errorsM } = step;
  const { doubtful: earlier, ...before } = at.positions[position]!;
  const sure = earlier ? taken(at, position, earlier.errorsM) : at;
  const moved = { ...sure, belief: unsettle(sure.belief, position, at.noise.wanderM ** 2) };
  const wound = { ...before, strings: before.strings + 1 };
  const doubt = doubtOf(errorsM, expectedOf(moved, position), at.noise);
  return doubt
    ? withPosition(moved, position, { ...wound, doubtful: { errorsM, doubt } })
    : taken(withPosition(moved, position, wound), position, errorsM);
}

function afterSecondLook(at: Course, { position, errorsM }: Extract<DialInStep, { kind: 'again' }>): Course {
  const { doubtful, ...sure } = at.positions[position]!;
  if (!doubtful) return at;
  return taken(withPosition(at, position, sure), position, settled(doubtful.errorsM, errorsM, at.noise));
}

const expectedOf = ({ belief, positions }: Course, position: number) =>
  processError(belief, position, settingOf(belief, positions, position));

const settingOf = (belief: Belief, positions: readonly PositionStanding[], position: number): number =>
  positions[position]!.setting ?? belief.referenceSettings[position]!;

function taken(at: Course, position: number, errorsM: readonly number[]): Course {
  const errorM = meanOf(errorsM);
  const varianceM2 = meanReadingVariance(at.noise, errorsM.length);
  const expected = expectedOf(at, position);
  const share = varianceM2 / (varianceM2 + expected.u ** 2);
  const surprise = (errorM - expected.value) ** 2 / (varianceM2 + expected.u ** 2);
  const setting = settingOf(at.belief, at.positions, position);
  return {
    ...at,
    belief: learnRobustly(at.belief, { position, setting, errorM, varianceM2 }),
    squares: at.squares + share * Math.min(surprise, MOST_SURPRISE),
    evidence: at.evidence + share,
  };
}

/** One wild string says little of the spread of the others. */
const MOST_SURPRISE = 9;

const withPosition = (at: Course, position: number, now: PositionStanding): Course => ({
  ...at,
  positions: at.positions.with(position, now),
});
