import { type FaultWords, orderFaultWords } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';
import type { REQUESTS_WORDS } from '../../words/requests.js';

type Words = Pick<(typeof REQUESTS_WORDS)['en'], 'fields' | 'waits'>;
export type FormField = keyof Words['fields'];

/** A fault in words, and the names that may have been meant: each of them mends it. */
export interface FieldFault extends FaultWords {
  readonly nearest?: readonly string[];
}

/** Faults by the field in which they are mended; those of no field stand under `whole`. */
export type FieldFaults = Readonly<Partial<Record<FormField | 'whole', FieldFault>>>;

export const NO_FAULTS: FieldFaults = {};

/** What is wrong with the form, in words, where it is to be mended. */
export const faultsByField = (faults: readonly OrderFault[], words: Words): FieldFaults =>
  Object.fromEntries(faults.map((fault) => [fieldOf(fault, words), wordsOf(fault, words)]));

/** Nothing wanted can only mean here that the tuning is empty. */
const fieldOf = ({ column, code }: OrderFault, { fields }: Words): FormField | 'whole' => {
  if (code === 'order.nothing-wanted') return 'tuning';
  return column !== undefined && column in fields ? (column as FormField) : 'whole';
};

function wordsOf(fault: OrderFault, words: Words): FieldFault {
  if (fault.code === 'order.nothing-wanted')
    return { what: words.waits.noTuning, mend: words.waits.noTuningMend };
  const field = fieldOf(fault, words);
  if (field === 'whole') return orderFaultWords(fault);
  // The names stand beside the field to be touched: they need not be said as well.
  const { nearest, ...facts } = fault.facts;
  const said = orderFaultWords({ ...fault, facts, column: `“${words.fields[field]}”` });
  return { ...said, nearest: Array.isArray(nearest) ? nearest.map(String) : [] };
}
