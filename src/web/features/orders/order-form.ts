import type { BodyOf, InputNamed } from '../../../contract/index.js';
import { calendarDate, fail, type Result, succeed } from '../../../core/foundation/index.js';
import { readGauges } from '../../../core/orders/index.js';
import { formatGauge } from '../../../core/units/index.js';

type OrderBody = BodyOf<'order'>;
type Wanted = InputNamed<'save-order'>['lines'][number]['wanted'];
type CustomSet = Extract<Wanted, { readonly kind: 'custom' }>;
export type Material = CustomSet['material'];
export type End = CustomSet['end'];

/** An order while it is typed: texts as typed. */
export interface OrderForm {
  readonly number: string;
  readonly player: string;
  readonly due: string;
  readonly note: string;
  readonly lines: readonly LineForm[];
}

export interface LineForm {
  readonly key: string;
  readonly kind: 'stock' | 'custom';
  readonly quantity: string;
  readonly setName: string;
  readonly gauges: string;
  readonly material: Material;
  readonly end: End;
  /** It answered a request, which an order cannot tell any more. */
  readonly wasRequest: boolean;
}

const BLANK_LINE: Omit<LineForm, 'key'> = {
  kind: 'stock',
  quantity: '1',
  setName: '',
  gauges: '',
  material: 'nickel-plated-steel',
  end: 'ball',
  wasRequest: false,
};

/** The form of an order as it is kept; a blank one where there is none yet. */
export function orderForm(record: { readonly body: OrderBody } | undefined): OrderForm {
  if (!record) return { number: '', player: '', due: '', note: '', lines: [{ key: '1', ...BLANK_LINE }] };
  const { number, player, due, note, lines } = record.body;
  return { number, player, due, note, lines: lines.map(lineForm) };
}

function lineForm({ lineNumber, kind, setName, quantity, strings }: OrderBody['lines'][number]): LineForm {
  const line = { key: `${lineNumber}`, ...BLANK_LINE, quantity: `${quantity}` };
  if (kind === 'stock') return { ...line, setName };
  const told = strings.find(({ spec }) => spec.kind === 'wound') ?? strings[0];
  return {
    ...line,
    kind: 'custom',
    gauges: strings
      .map(({ spec }) => `${formatGauge(spec.gaugeThou)}${spec.kind === 'wound' ? 'w' : 'p'}`)
      .join(' '),
    material: told?.spec.material ?? BLANK_LINE.material,
    end: told?.spec.end ?? 'ball',
    wasRequest: kind === 'request',
  };
}

export const withLine = (lines: readonly LineForm[]): readonly LineForm[] => [
  ...lines,
  { key: `${Math.max(0, ...lines.map(({ key }) => Number(key))) + 1}`, ...BLANK_LINE },
];

/** What is wrong with a form, by field; of a line by its key. */
export interface FormFaults {
  readonly number?: true;
  readonly due?: true;
  readonly lines: Readonly<Record<string, LineFaults>>;
}

export interface LineFaults {
  readonly quantity?: true;
  readonly set?: true;
  /** The part that is no gauge; empty where none is written. */
  readonly gauges?: string;
}

export type OrderToSave = Pick<InputNamed<'save-order'>, 'number' | 'player' | 'due' | 'note' | 'lines'>;

/** Reads a form as an order to be saved. */
export function readOrderForm(form: OrderForm): Result<OrderToSave, FormFaults> {
  const faults: Record<string, LineFaults> = {};
  const lines: OrderToSave['lines'] = [];
  for (const line of form.lines) {
    const read = readLine(line);
    if (read.ok) lines.push(read.value);
    else faults[line.key] = read.fault;
  }
  const number = form.number.trim();
  const isSound = number !== '' && calendarDate(form.due) && lines.length === form.lines.length;
  if (isSound && lines.length > 0)
    return succeed({ number, player: form.player.trim(), due: form.due, note: form.note.trim(), lines });
  return fail({
    ...(number === '' ? { number: true } : {}),
    ...(calendarDate(form.due) ? {} : { due: true }),
    lines: faults,
  });
}

const MOST_SETS = 10_000;

function readLine(line: LineForm): Result<OrderToSave['lines'][number], LineFaults> {
  const quantity = Number(line.quantity.trim());
  const isCount = Number.isInteger(quantity) && quantity >= 1 && quantity <= MOST_SETS;
  const wanted = line.kind === 'stock' ? stockSet(line) : customSet(line);
  if (isCount && wanted.ok) return succeed({ quantity, wanted: wanted.value });
  return fail({ ...(isCount ? {} : { quantity: true }), ...(wanted.ok ? {} : wanted.fault) });
}

const stockSet = ({ setName }: LineForm): Result<Wanted, LineFaults> =>
  setName === '' ? fail({ set: true }) : succeed({ kind: 'stock', setName });

function customSet({ gauges, material, end }: LineForm): Result<Wanted, LineFaults> {
  const strings = readGauges(gauges);
  if (!strings.ok) return fail({ gauges: String(strings.fault.facts.part ?? gauges.trim()) });
  return succeed({ kind: 'custom', strings: strings.value.map((string) => ({ ...string })), material, end });
}
