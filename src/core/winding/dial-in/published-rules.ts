/**
 * Rules in print for taking an offset out of a process, all of the form: after string t move the process by
 * -K(t) times its error. The shop is advised by none of them; ours is held against them.
 */
export type PublishedRule =
  /** Every error taken out whole. */
  | { readonly kind: 'full' }
  /** K = 1/t: F. E. Grubbs, Industrial Quality Control (1954), reprinted J. Quality Technology 15 (1983) 186. */
  | { readonly kind: 'harmonic' }
  /** K = 1/(t + r), r = variance of a string over that of the offset: del Castillo, Pan & Colosimo, JQT 35 (2003). */
  | { readonly kind: 'extended'; readonly varianceRatio: number }
  /** K for ever the same: what an EWMA controller with this weight does to a process of known response. */
  | { readonly kind: 'fixed'; readonly gain: number };

/** Share of the error of string `t`, counted from 1, that is to be taken out. */
export function ruleGain(rule: PublishedRule, t: number): number {
  switch (rule.kind) {
    case 'full':
      return 1;
    case 'harmonic':
      return 1 / t;
    case 'extended':
      return 1 / (t + rule.varianceRatio);
    case 'fixed':
      return rule.gain;
  }
}
