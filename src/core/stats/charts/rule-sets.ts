import { rulesRunLength, type ZoneRule } from './rule-chain.js';
import { NELSON_RULES, WESTERN_ELECTRIC_RULES } from './run-rules.js';

/**
 * Sets of rules that a chart may stand on, from calm to quick. What each is worth is reckoned, not listed:
 * `rulesRunLength` says how many points false alarms lie apart and how soon a shift shows.
 */
export const RULE_SETS = {
  /** One point beyond three sigmas. */
  calm: [NELSON_RULES[0]],
  /** And nine in a row to one side: what a small shop can answer for (217 points apart). */
  usual: [NELSON_RULES[0], NELSON_RULES[1]],
  /** The four of Western Electric: a shift of one sigma shows in 9 points rather than 44, an alarm in 92 is false. */
  quick: WESTERN_ELECTRIC_RULES,
} as const satisfies Readonly<Record<string, readonly ZoneRule[]>>;

export type RuleSet = keyof typeof RULE_SETS;

/** Chance that a point of a steady process, from known mean and sigma, sets off the rules: 1 over how far apart. */
export const falseAlarmRate = (set: RuleSet): number => 1 / rulesRunLength(RULE_SETS[set], 0);
