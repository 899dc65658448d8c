import { type MachineCharacter, type PublishedRule, USUAL_AIM } from '../../src/core/winding/index.js';
import { type Distribution, distributionOf } from './distribution.js';
import { dialInByOurRule, type Outcome, RUN_STRINGS } from './our-rule.js';
import { type Course, followPublished, type StartOfRule } from './published-course.js';
import { goodShareOf, RELEASES, type Release, releasedAfter } from './release.js';
import { drawScene, type Scene } from './scene.js';

/** What a rule came to over many dial-ins. */
export interface RuleResult {
  readonly name: string;
  /** Strings wound until released, at each position of each dial-in. */
  readonly strings: Distribution;
  /** Of these, those out of tolerance, on average. */
  readonly outOfTolerance: number;
  /** Share of good strings in the run that follows: on average, and that which one run in twenty stays below. */
  readonly good: { readonly mean: number; readonly p05: number };
  readonly release?: Release;
}

export interface Comparison {
  readonly ours: RuleResult;
  /** What each published rule came to with every way of releasing it, in the order of `RELEASES`. */
  readonly published: readonly { readonly name: string; readonly results: readonly RuleResult[] }[];
  /** Runs set at once where they belong. */
  readonly perfectGood: Distribution;
  /** Mean of what our rule said of its sureness, and share of runs that were as good as that. */
  readonly saidSure: number;
  readonly wasGood: number;
  readonly moves: number;
}

const EWMA_WEIGHTS = [0.3, 0.5, 0.7, 0.85];

/** Every rule on the same dial-ins of a sort of machine. */
export function compareRules(
  character: MachineCharacter,
  { pastRuns, count, seed }: { readonly pastRuns: number; readonly count: number; readonly seed: number },
): Comparison {
  const rules = rulesFor(character);
  const courses = rules.map((): Course[] => []);
  const outcomes: Outcome[] = [];
  const perfect: number[] = [];
  for (let index = 0; index < count; index++) {
    const scene = drawScene(character, pastRuns, seed + index);
    outcomes.push(...dialInByOurRule(scene));
    perfect.push(...perfectly(scene));
    rules.forEach(({ rule, start }, which) => {
      courses[which]!.push(...followPublished(scene, rule(scene), start(scene)));
    });
  }
  const over = (figure: (outcome: Outcome) => number): Distribution => distributionOf(outcomes.map(figure));
  return {
    ours: {
      name: 'ours',
      strings: over(({ strings }) => strings),
      outOfTolerance: over(({ outOfTolerance }) => outOfTolerance).mean,
      good: over(({ goodShare }) => goodShare),
    },
    published: rules.map(({ name }, which) => ({
      name,
      results: RELEASES.map((release) => resultOf(name, courses[which]!, release)),
    })),
    perfectGood: distributionOf(perfect),
    saidSure: over(({ saidSure }) => saidSure).mean,
    wasGood: over(({ goodShare }) => (goodShare >= USUAL_AIM.goodShare ? 1 : 0)).mean,
    moves: over(({ moves }) => moves).mean,
  };
}

/** Whether runs were as good as ours: as many good strings in all, and its worse ones no worse. */
export const isAsGood = ({ good }: RuleResult, ours: RuleResult): boolean =>
  good.mean >= ours.good.mean - MEAN_ALLOWED && good.p05 >= ours.good.p05 - WORST_ALLOWED;

/** What counts as equal: two strings in ten thousand of all, two in a thousand of the worst twentieth. */
const MEAN_ALLOWED = 2e-4;
const WORST_ALLOWED = 2e-3;

interface FollowedRule {
  readonly name: string;
  readonly rule: (scene: Scene) => PublishedRule;
  readonly start: (scene: Scene) => StartOfRule;
}

/** The rules, from where an old hand starts; and two that are given all our rule learned before the first string. */
function rulesFor(character: MachineCharacter): readonly FollowedRule[] {
  const byHand = (scene: Scene): StartOfRule => ({
    settings: scene.usualStart,
    responsesMPerUnit: scene.usualStart.map(() => character.knob.responseMPerUnit),
  });
  const learned = ({ first: { belief } }: Scene): StartOfRule => {
    const places = belief.referenceSettings.length;
    const responsesMPerUnit = belief.mean.slice(places);
    return {
      settings: belief.referenceSettings.map(
        (setting, position) => setting - belief.mean[position]! / responsesMPerUnit[position]!,
      ),
      responsesMPerUnit,
    };
  };
  const extended = ({ first: { belief, noise } }: Scene): PublishedRule => ({
    kind: 'extended',
    varianceRatio:
      (noise.betweenM ** 2 + (noise.withinM ** 2 + noise.micrometerM ** 2) / 3) / belief.covariance[0]![0]!,
  });
  return [
    { name: 'full', rule: () => ({ kind: 'full' }), start: byHand },
    { name: 'harmonic', rule: () => ({ kind: 'harmonic' }), start: byHand },
    ...EWMA_WEIGHTS.map((gain) => ({
      name: 'EWMA',
      rule: (): PublishedRule => ({ kind: 'fixed', gain }),
      start: byHand,
    })),
    { name: 'fixed 0.3', rule: () => ({ kind: 'fixed', gain: 0.3 }), start: byHand },
    { name: 'extended', rule: extended, start: byHand },
    { name: 'harmonic, our start', rule: () => ({ kind: 'harmonic' }), start: learned },
    { name: 'extended, our start', rule: extended, start: learned },
  ];
}

/** More than the lost motion of any machine. */
const LONG_RUN_UP = 6;

/** Runs set at once where they belong. */
function perfectly(scene: Scene): readonly number[] {
  const run = scene.begin();
  return run.reckonedSettings.map((_, position) => {
    const { bestSetting } = run.truth(position);
    run.set(position, bestSetting, bestSetting - LONG_RUN_UP);
    // The first move of a rough knob lands off its mark; the second is short.
    const landed = run.truth(position).bestSetting;
    run.set(position, landed, landed - LONG_RUN_UP);
    return run.truth(position).goodShare(RUN_STRINGS);
  });
}

function resultOf(name: string, courses: readonly Course[], release: Release): RuleResult {
  const strings = new Uint8Array(courses.length);
  const good = new Float64Array(courses.length);
  let out = 0;
  courses.forEach((course, index) => {
    const after = releasedAfter(course, release);
    strings[index] = after;
    good[index] = goodShareOf(course, release, after);
    out += course.outBy[after - 1]!;
  });
  return {
    name,
    release,
    strings: distributionOf(strings),
    outOfTolerance: out / courses.length,
    good: distributionOf(good),
  };
}
