import { moveTo, nearestSetting, type PublishedRule, ruleGain } from '../../src/core/winding/index.js';
import { RUN_STRINGS } from './our-rule.js';
import { PLACES, type Scene } from './scene.js';

/** Strings that a published rule is followed for: long after any sensible release. */
export const COURSE_STRINGS = 20;

/** What followed from a rule in print at one position, string by string, had it been let go after any of them. */
export interface Course {
  /** Mean error measured, as a share of the tolerance. */
  readonly seen: Float32Array;
  /** Strings out of tolerance so far. */
  readonly outBy: Uint8Array;
  /** Share of good strings in the run if let go after this string, before and after moving for it. */
  readonly goodBefore: Float32Array;
  readonly goodAfter: Float32Array;
}

/** Where a rule starts from, and the response it reckons with. */
export interface StartOfRule {
  readonly settings: readonly number[];
  readonly responsesMPerUnit: readonly number[];
}

/**
 * Follows a published rule at every position by itself. A move that the knob's steps cannot make is kept in mind and
 * made up for later, which Trietsch (J. Quality Technology 30 (1998) 75) shows to lose nothing. Lost
 * motion is taken up as it is for our rule.
 */
export function followPublished(scene: Scene, rule: PublishedRule, start: StartOfRule): readonly Course[] {
  const run = scene.begin();
  const { knob, toleranceM } = scene.character;
  const wishes = [...start.settings];
  const settings = wishes.map((wish) => nearestSetting(knob, wish));
  const courses = settings.map((setting, position): Course => {
    run.set(position, setting, moveTo(knob, setting, setting).past);
    return {
      seen: new Float32Array(COURSE_STRINGS),
      outBy: new Uint8Array(COURSE_STRINGS),
      goodBefore: new Float32Array(COURSE_STRINGS),
      goodAfter: new Float32Array(COURSE_STRINGS),
    };
  });
  for (let t = 1; t <= COURSE_STRINGS; t++) {
    run.wind();
    courses.forEach((course, position) => {
      const response = start.responsesMPerUnit[position]!;
      const errorM = run.measure(position, PLACES).reduce((sum, each) => sum + each, 0) / PLACES;
      const before = run.truth(position);
      course.seen[t - 1] = errorM / toleranceM;
      const isOut = Math.abs(before.stringErrorM) > toleranceM;
      course.outBy[t - 1] = (course.outBy[t - 2] ?? 0) + (isOut ? 1 : 0);
      course.goodBefore[t - 1] = before.goodShare(RUN_STRINGS);
      // What would have been seen at the wish: the unmade part of earlier moves is no error of the process.
      const atWishM = errorM + response * (wishes[position]! - settings[position]!);
      wishes[position] = wishes[position]! - (ruleGain(rule, t) * atWishM) / response;
      const to = nearestSetting(knob, wishes[position]!);
      if (to !== settings[position]) run.set(position, to, moveTo(knob, settings[position]!, to).past);
      settings[position] = to;
      course.goodAfter[t - 1] = run.truth(position).goodShare(RUN_STRINGS);
    });
  }
  return courses;
}
