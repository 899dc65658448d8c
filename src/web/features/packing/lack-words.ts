import { stringKeyInWords } from '../../../contract/index.js';
import type { PACKING_WORDS } from '../../words/packing.js';
import type { OrderDue } from './orders-due.js';

/** So many kinds are named; of more the number is told. */
const NAMED = 4;

/** What an order still waits for, in a line. */
export function lackInWords(lacks: OrderDue['lacks'], words: (typeof PACKING_WORDS)['en']): string {
  const named = lacks.slice(0, NAMED).map(({ stringKey, count }) => {
    const { short, material } = stringKeyInWords(stringKey);
    return words.lackOne(count, [short, material].filter(Boolean).join(', '));
  });
  return words.lacks(named, lacks.length - named.length);
}
