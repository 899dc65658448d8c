import { materialInWords } from '../../../contract/index.js';
import type { FieldWords } from '../../parts/fields-apart.js';
import type { ORDERS_WORDS } from '../../words/orders.js';
import type { LineForm, OrderForm } from './order-form.js';

type OrdersWords = (typeof ORDERS_WORDS)['en'];

/** An order field by field, as versions of it are laid side by side. */
export const orderFields = (
  { number, player, due, note, lines }: OrderForm,
  words: OrdersWords,
  date: (day: string) => string,
): readonly FieldWords[] =>
  [
    { name: words.fields.number, value: number },
    { name: words.fields.player, value: player },
    { name: words.fields.due, value: due === '' ? '' : date(due) },
    { name: words.fields.note, value: note },
    { name: words.fields.lines, value: lines.map((line) => lineInWords(line, words)).join('; ') },
  ].map(({ name, value }) => ({ name, value: value === '' ? words.nothing : value }));

const lineInWords = (line: LineForm, words: OrdersWords): string => {
  const set =
    line.kind === 'stock'
      ? line.setName
      : `${line.gauges}, ${materialInWords(line.material)}, ${words.ends[line.end]}`;
  return words.lineInWords(Number(line.quantity), set);
};
