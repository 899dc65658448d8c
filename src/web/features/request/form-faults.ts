import { type FaultWords, orderFaultWords } from '../../../contract/index.js';
import type { OrderFault } from '../../../core/orders/index.js';

/** Headings of an orders file by the labels that they bear on the page. */
export const LABELS = {
  instrument: 'Instrument',
  scale: 'Scale length',
  tuning: 'Tuning, low to high',
  material: 'Material of wound strings',
  end: 'Ends',
  likes: 'Set that is liked',
  likesTuning: 'Liked in tuning',
  likesScale: 'Liked at scale length',
  wishes: 'More wishes',
} as const;

export type FormField = keyof typeof LABELS;

/** Faults by the field in which they are mended; those of no field stand under `whole`. */
export type FieldFaults = Readonly<Partial<Record<FormField | 'whole', FaultWords>>>;

/** What is wrong with the form, in words, where it is to be mended. */
export const faultsByField = (faults: readonly OrderFault[]): FieldFaults =>
  Object.fromEntries(faults.map((fault) => [fieldOf(fault), wordsOf(fault)]));

/** Nothing wanted can only mean here that the tuning is empty. */
const fieldOf = ({ column, code }: OrderFault): FormField | 'whole' => {
  if (code === 'order.nothing-wanted') return 'tuning';
  return column !== undefined && column in LABELS ? (column as FormField) : 'whole';
};

function wordsOf(fault: OrderFault): FaultWords {
  if (fault.code === 'order.nothing-wanted')
    return { what: 'No tuning is given.', mend: 'Write the notes from low to high, such as D A D F# A D.' };
  const field = fieldOf(fault);
  return orderFaultWords(field === 'whole' ? fault : { ...fault, column: `“${LABELS[field]}”` });
}
