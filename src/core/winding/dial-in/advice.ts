import { processResponse } from './belief.js';
import type { DialIn } from './dial-in.js';
import { centreWindow } from './dial-in-aim.js';
import type { DialInAdvice, DialInDecision, DialInOdds, DialInReason } from './dial-in-decision.js';
import type { FirstBelief } from './first-belief.js';
import { moveTo, nearestSetting, sameSetting } from './knob.js';
import { centredSetting, errorAt, positionBelief } from './position-belief.js';
import { type Standing, standing } from './standing.js';
import { lostInRun, type Option, type Situation, sureness, weighOptions, windowOf } from './weigh-options.js';

/** Places at which the next string is expected to be measured. */
const USUAL_PLACES = 3;

/** Advice for every position of a dial-in. The same steps always give the same advice. */
export function dialInAdvice(dialIn: DialIn): readonly DialInAdvice[] {
  const now = standing(dialIn);
  return now.positions.map((_, position) => adviceAt(dialIn, now, position));
}

function adviceAt(dialIn: DialIn, now: Standing, position: number): DialInAdvice {
  const { setting, doubtful, strings } = now.positions[position]!;
  const { knob, aim, first } = dialIn;
  const belief = positionBelief(now.belief, position);
  const situation: Situation = {
    belief,
    setting: setting ?? nearestSetting(knob, centredSetting(belief)),
    noise: now.noise,
    knob,
    aim,
    places: USUAL_PLACES,
  };
  const odds = (at: Pick<Option, 'setting' | 'error' | 'sure'>): DialInOdds => ({
    ...oddsOf(situation, at),
    response: processResponse(now.belief, position),
    strings,
  });
  const here = odds(asItStands(situation));
  if (setting === undefined) {
    const move = moveTo(knob, situation.setting, situation.setting);
    return { position, decision: { kind: 'start', move }, why: whyThere(first), odds: here };
  }
  if (doubtful) {
    const why: DialInReason = { kind: 'doubtful', doubt: doubtful.doubt };
    return { position, decision: { kind: 'measure-again' }, why, odds: here };
  }
  if (strings === 0) {
    return { position, decision: { kind: 'measure-one-more' }, why: { kind: 'not-sure-yet' }, odds: here };
  }
  const options = weighOptions(situation);
  const best = options[0]!;
  const hopeless = hopelessness(situation, best, strings);
  if (hopeless) return { position, decision: { kind: 'stop' }, why: hopeless, odds: here };
  return {
    position,
    decision: decisionFor(best, situation),
    why: reasonFor(best, options, situation),
    odds: odds(best),
  };
}

/** A process that a dozen strings have not settled is not one that this rule knows. Our own choice. */
const MOST_STRINGS = 12;
/** A process is surely out of its window beyond so many standard deviations. */
const SURELY = 2;

/** Why going on would be in vain. */
function hopelessness(situation: Situation, best: Option, strings: number): DialInReason | undefined {
  const { belief, setting, knob } = situation;
  const error = errorAt(belief, setting);
  const wanted = centredSetting(belief);
  const atTheEnd = sameSetting(knob, nearestSetting(knob, wanted), setting) && !isWithin(knob, wanted);
  if (atTheEnd && Math.abs(error.value) - SURELY * error.u > windowOf(situation))
    return { kind: 'end-of-knob', wanted };
  if (strings >= MOST_STRINGS && best.next === 'string') return { kind: 'unsettled', strings };
  return undefined;
}

const isWithin = ({ least, most, step }: Situation['knob'], wanted: number): boolean =>
  wanted >= least - step / 2 && wanted <= most + step / 2;

function decisionFor({ setting, next }: Option, { knob, setting: from }: Situation): DialInDecision {
  if (!sameSetting(knob, from, setting)) return { kind: 'adjust', move: moveTo(knob, from, setting), next };
  return next === 'run' ? { kind: 'run' } : { kind: 'measure-one-more' };
}

function reasonFor(best: Option, options: readonly Option[], situation: Situation): DialInReason {
  const { knob, setting, belief, noise } = situation;
  const wanted = centredSetting(belief);
  if (!isWithin(knob, wanted) && best.next === 'string') return { kind: 'end-of-knob', wanted };
  if (!sameSetting(knob, best.setting, setting)) {
    const staying = options.find((each) => sameSetting(knob, each.setting, setting))!;
    return { kind: 'error-seen', savedStrings: staying.expectedScrap - best.expectedScrap };
  }
  const error = errorAt(belief, setting);
  if (Math.abs(error.value) > noise.betweenM / 2 && sameSetting(knob, nearestSetting(knob, wanted), setting))
    return { kind: 'finer-than-knob' };
  if (best.next === 'run') return { kind: 'sure-enough' };
  return Math.abs(error.value) < noise.betweenM
    ? { kind: 'within-noise', betweenM: noise.betweenM }
    : { kind: 'not-sure-yet' };
}

const whyThere = ({ runs }: FirstBelief): DialInReason =>
  runs.near === 0 ? { kind: 'no-past-runs' } : { kind: 'from-past-runs', ...runs };

function asItStands(situation: Situation): Pick<Option, 'setting' | 'error' | 'sure'> {
  const error = errorAt(situation.belief, situation.setting);
  return { setting: situation.setting, error, sure: sureness(error, windowOf(situation)) };
}

const oddsOf = (
  situation: Situation,
  { setting, error, sure }: Pick<Option, 'setting' | 'error' | 'sure'>,
): Pick<DialInOdds, 'setting' | 'error' | 'sure' | 'lostStrings' | 'capable'> => ({
  setting,
  error,
  sure,
  lostStrings: lostInRun(situation, error),
  capable: centreWindow(situation.aim, situation.noise.betweenM).capable,
});
