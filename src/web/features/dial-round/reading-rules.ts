import type { DialQuantity } from '../../../core/winding/index.js';
import type { AmountRule } from '../../parts/read-amount.js';

const NEWTON_UNITS = {
  N: 1,
  kg: 9.80665,
  kgf: 9.80665,
  g: 0.00980665,
  lbf: 4.4482216152605,
  lb: 4.4482216152605,
};
const LENGTH_UNITS = { mm: 0.001, cm: 0.01, in: 0.0254 };

/** What stands on the rule, or on the hanging scale. */
export const READ_RULES: Readonly<Record<DialQuantity, AmountRule>> = {
  traverse: { units: LENGTH_UNITS, bare: 'mm', least: 0, most: 5 },
  pull: { units: NEWTON_UNITS, bare: 'N', least: 0.001, most: 500 },
};

/** How far one reading may be off, one standard deviation. */
export const ERROR_RULES: Readonly<Record<DialQuantity, AmountRule>> = {
  traverse: { units: LENGTH_UNITS, bare: 'mm', least: 1e-6, most: 0.005 },
  pull: { units: NEWTON_UNITS, bare: 'N', least: 0.0001, most: 10 },
};

export const TURNS_RULE: AmountRule = { units: { '': 1 }, bare: '', least: 1, most: 100_000, whole: true };
