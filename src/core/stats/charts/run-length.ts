import type { Chance } from '../../foundation/index.js';
import { normalBelow } from '../distributions/normal.js';
import { normalDraw } from '../distributions/normal-draw.js';
import { patternEnds, type RunRule } from './run-rules.js';

/** Mean number of points until one lies beyond `width` sigmas, the mean `shift` sigmas off: 1 over the chance. */
export const singlesRunLength = (width: number, shift: number): number =>
  1 / (normalBelow(-width - shift) + normalBelow(shift - width));

const LONGEST = 100_000;

/** Points until the first signal of any of the rules, drawn once; for rules that a chain of zones cannot follow. */
export function drawnRunLength(rules: readonly RunRule[], shift: number, chance: Chance): number {
  const memory = Math.max(...rules.map((rule) => ('of' in rule ? rule.of : rule.length)));
  const recent: number[] = [];
  for (let count = 1; count < LONGEST; count++) {
    recent.push(shift + normalDraw(chance));
    if (recent.length > memory) recent.shift();
    if (rules.some((rule) => patternEnds(recent, rule).includes(recent.length - 1))) return count;
  }
  return LONGEST;
}
