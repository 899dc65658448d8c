import { type FaultWords, orderFaultWords } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';
import type { REQUESTS_WORDS } from '../../words/requests.js';

type Words = Pick<(typeof REQUESTS_WORDS)['en'], 'fields' | 'waits'>;
export type FormField = keyof Words['fields'];

/** Faults by the field in which they are mended; those of no field stand under `whole`. */
export type FieldFaults = Readonly<Partial<Record<FormField | 'whole', FaultWords>>>;

export const NO_FAULTS: FieldFaults = {};

/** What is wrong with the form, in words, where it is to be mended. */
export const faultsByField = (faults: readonly OrderFault[], words: Words): FieldFaults =>
  Object.fromEntries(faults.map((fault) => [fieldOf(fault, words), wordsOf(fault, words)]));

/** Nothing wanted can only mean here that the tuning is empty. */
const fieldOf = ({ column, code }: OrderFault, { fields }: Words): FormField | 'whole' => {
  if (code === 'order.nothing-wanted') return 'tuning';
  return column !== undefined && column in fields ? (column as FormField) : 'whole';
};

function wordsOf(fault: OrderFault, words: Words): FaultWords {
  if (fault.code === 'order.nothing-wanted')
    return { what: words.waits.noTuning, mend: words.waits.noTuningMend };
  const field = fieldOf(fault, words);
  return orderFaultWords(field === 'whole' ? fault : { ...fault, column: `“${words.fields[field]}”` });
}
