import type { Estimate } from '../../numeric/index.js';
import { normalBetween } from '../../stats/index.js';
import { centreWindow, type DialInAim, goodShareAt } from './dial-in-aim.js';
import { type Knob, moveVariance, nearestSetting, sameSetting } from './knob.js';
import {
  afterMove,
  afterNextString,
  centredSetting,
  errorAt,
  type PositionBelief,
} from './position-belief.js';
import { meanReadingVariance, type StringNoise } from './string-noise.js';

/** A setting, and whether to run there at once or to wind another trial string first. */
export interface Option {
  readonly setting: number;
  readonly next: 'run' | 'string';
  /** Strings that this is expected to cost: trial strings, and strings of the run lost to its not being centred. */
  readonly expectedScrap: number;
  /** Error of the process there, m, and how sure it is that the run would be good enough. */
  readonly error: Estimate;
  readonly sure: number;
}

/** A position whose knob stands at `setting`. */
export interface Situation {
  readonly belief: PositionBelief;
  readonly setting: number;
  readonly noise: StringNoise;
  readonly knob: Knob;
  readonly aim: DialInAim;
  /** Places at which a trial string is measured. */
  readonly places: number;
}

/**
 * All options at a position, cheapest first; running only where it is sure enough. What a trial string is worth is
 * reckoned by looking one string ahead: it costs itself, and is followed by the best setting that it may point to.
 */
export function weighOptions(situation: Situation): readonly Option[] {
  const { belief, setting, knob } = situation;
  const window = windowOf(situation);
  const options = settingsToTry(belief, setting, knob).flatMap((to) => {
    const moved = movedTo(situation, belief, to);
    const error = errorAt(moved, to);
    const sure = sureness(error, window);
    const move = moveCost(situation, to);
    const trial: Option = {
      setting: to,
      next: 'string',
      error,
      sure,
      expectedScrap: move + trialCost(situation, moved, to, window),
    };
    if (sure < situation.aim.sure) return [trial];
    return [trial, { ...trial, next: 'run', expectedScrap: move + lostInRun(situation, error) } as const];
  });
  return options.sort((one, other) => one.expectedScrap - other.expectedScrap);
}

/** Chance that a run at this error is good enough. */
export const sureness = (error: Estimate, windowM: number): number => normalBetween(-windowM, windowM, error);

export const windowOf = ({ aim, noise }: Pick<Situation, 'aim' | 'noise'>): number =>
  centreWindow(aim, noise.betweenM).withinM;

/** Strings of the run expected to be lost because its centre is not where it should be. */
export function lostInRun({ aim, noise }: Pick<Situation, 'aim' | 'noise'>, error: Estimate): number {
  const atBest = goodShareAt(aim, { value: 0, u: noise.betweenM });
  const expected = goodShareAt(aim, { value: error.value, u: Math.hypot(error.u, noise.betweenM) });
  return aim.stringsToMake * Math.max(0, atBest - expected);
}

/** Shares of the full correction that are tried: less than all of it pays where the response is unsure. */
const SHARES = [1, 0.85, 0.7];

function settingsToTry(belief: PositionBelief, setting: number, knob: Knob): readonly number[] {
  const full = centredSetting(belief) - setting;
  const tried = [setting];
  for (const share of SHARES) {
    const to = nearestSetting(knob, setting + share * full);
    if (!tried.some((one) => sameSetting(knob, one, to))) tried.push(to);
  }
  return tried;
}

const movedTo = ({ knob, setting }: Situation, belief: PositionBelief, to: number): PositionBelief =>
  afterMove(belief, moveVariance(knob, belief.response, to - setting));

const moveCost = ({ aim, knob, setting }: Situation, to: number): number =>
  sameSetting(knob, setting, to) ? 0 : aim.moveWorthStrings;

function trialCost(situation: Situation, belief: PositionBelief, at: number, windowM: number): number {
  const readingVariance = meanReadingVariance(situation.noise, situation.places);
  const next = afterNextString(belief, at, readingVariance);
  return (
    1 +
    next.reduce(
      (sum, { chance, belief: learned }) =>
        sum + chance * bestAfter({ ...situation, setting: at }, learned, windowM),
      0,
    )
  );
}

/** Where it still would not be sure enough, at least one more string is due. */
function bestAfter(situation: Situation, belief: PositionBelief, windowM: number): number {
  const { knob, setting, aim } = situation;
  const cost = (to: number): number => {
    const error = errorAt(movedTo(situation, belief, to), to);
    const more = sureness(error, windowM) < aim.sure ? 1 : 0;
    return moveCost(situation, to) + more + lostInRun(situation, error);
  };
  const to = nearestSetting(knob, centredSetting(belief));
  return sameSetting(knob, to, setting) ? cost(setting) : Math.min(cost(setting), cost(to));
}
