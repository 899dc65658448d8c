import type { RecordOf } from '../../api/use-records.js';
import type { AmountRule } from '../../parts/read-amount.js';

/** The last weighing may have been wrong too; grams for kilograms are a thousand times off. */
const OVER_LAST = 1.5;
/** Where nothing is known of it: the heaviest that a hand lifts onto a machine. */
const HEAVIEST_KG = 60;

/**
 * What a spool that was wound from may weigh, kg: more than nothing, and not much more than the last time. So grams that are taken
 * for kilograms are seen.
 */
export const grossRule = ({ body }: RecordOf<'spool'>): AmountRule => ({
  units: { kg: 1, g: 0.001 },
  bare: 'kg',
  least: Math.max(0.001, body.tareKg),
  most: body.weighed ? body.weighed.grossKg * OVER_LAST : HEAVIEST_KG,
});
