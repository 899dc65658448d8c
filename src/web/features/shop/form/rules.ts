import { metresFromThou } from '../../../../core/units/index.js';
import type { AmountRule } from '../../../parts/read-amount.js';

/** A bare figure between two others. */
export const figure = (least: number, most: number, whole = false): AmountRule => ({
  units: { '': 1 },
  bare: '',
  least,
  most,
  ...(whole ? { whole } : {}),
});

/** A length that is usually said in millimetres. */
export const millimetres = (least: number, most: number): AmountRule => ({
  units: { mm: 0.001, in: 0.0254, m: 1 },
  bare: 'mm',
  least: least / 1000,
  most: most / 1000,
});

/** A diameter of wire, usually said in thousandths of an inch. */
export const thou = (least: number, most: number): AmountRule => ({
  units: { thou: metresFromThou(1), mm: 0.001, in: 0.0254 },
  bare: 'thou',
  least: metresFromThou(least),
  most: metresFromThou(most),
});

/** A share that is said in per cent. */
export const percent = (least: number, most: number): AmountRule => ({
  units: { '%': 0.01 },
  bare: '%',
  least: least / 100,
  most: most / 100,
});
