import type { BodyOf, importOrders, OutputOf, StoredRecord } from '../../contract/index.js';
import { byText } from '../../core/foundation/index.js';
import {
  type OrderFault,
  type OrderLine,
  type Resolver,
  resolver,
  underHeading,
} from '../../core/orders/index.js';
import { ORDER_LIFE } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { ShopBook } from '../shop/shop-book.js';
import { type KeptLine, keptLine } from './order-lines.js';
import type { ImportedOrder, ImportFile } from './read-import.js';

type Preview = OutputOf<typeof importOrders>['preview'];
type ImportFault = Preview['faults'][number];
type OrderBody = BodyOf<'order'>;

/** An order of a file beside the one that is kept under its number. */
export interface ComparedOrder {
  readonly shown: Preview['orders'][number];
  /** The order that is kept, where there is one. */
  readonly before?: StoredRecord<OrderBody>;
  /** What is to be kept; left out where nothing changes, or where it cannot be taken. */
  readonly body?: OrderBody;
}

export interface Comparison {
  readonly tx: ReadTransaction;
  readonly book: ShopBook;
  readonly file: ImportFile;
  readonly source: string;
}

/** What the file would change, order by order, and every reason why it could not. */
export async function compareOrders(
  comparison: Comparison,
): Promise<{ readonly orders: readonly ComparedOrder[]; readonly faults: ImportFault[] }> {
  const { tx, file } = comparison;
  const resolve = resolver(comparison.book.shop);
  const orders: ComparedOrder[] = [];
  const faults = file.faults.map(asImportFault);
  for (const given of file.orders) {
    const before = await tx.records.find('order', { number: given.number });
    const compared = compareOne(comparison, { given, before, resolve });
    orders.push(compared.order);
    faults.push(...compared.faults);
  }
  return { orders, faults: faults.sort((a, b) => a.line - b.line) };
}

interface Pair {
  readonly given: ImportedOrder;
  readonly before: StoredRecord<OrderBody> | undefined;
  readonly resolve: Resolver;
}

function compareOne(
  { book, file, source }: Comparison,
  { given, before, resolve }: Pair,
): { readonly order: ComparedOrder; readonly faults: readonly ImportFault[] } {
  const { number, fileLines, hash } = given;
  const place = { number, fileLines: [...fileLines], ...(before ? { orderId: before.id } : {}) };
  const imported = { source, hash };
  if (before?.body.imported?.source === source && before.body.imported.hash === hash)
    return { order: { shown: { ...place, outcome: 'same' } }, faults: [] };

  const { kept, faults } = resolveLines(given, resolve, book);
  const wrong = [
    ...[...given.faults, ...faults].map((fault) => asImportFault(underHeading(fault, file.columns))),
    ...playersDiffer(given),
    ...(before ? notChangeable(before, given, source) : []),
  ];
  if (wrong.length > 0) return { order: { shown: { ...place, outcome: 'fault' } }, faults: wrong };

  const shown = { ...place, outcome: before ? 'changed' : 'new', lines: kept.map(asShown) } as const;
  const body: OrderBody = { number, ...headOf(given.lines), lines: kept, imported };
  if (!before) return { order: { shown, body }, faults: [] };
  return { order: { shown: { ...shown, before: before.body.lines.map(asShown) }, before, body }, faults: [] };
}

function resolveLines({ lines }: ImportedOrder, resolve: Resolver, book: ShopBook) {
  const kept: KeptLine[] = [];
  const faults: OrderFault[] = [];
  for (const line of lines) {
    const resolution = resolve(line);
    if (resolution.ok) kept.push(keptLine(resolution.value, kept.length + 1, book));
    else faults.push(...resolution.fault);
  }
  return { kept, faults };
}

/** An order goes to one player, in one parcel: when its first line is due. */
function headOf(lines: readonly OrderLine[]): Pick<OrderBody, 'player' | 'due' | 'note'> {
  const [first] = [...lines].sort((a, b) => byText(a.due, b.due));
  const notes = new Set(lines.map(({ note }) => note).filter((note) => note !== ''));
  return { player: first?.player ?? '', due: first?.due ?? '', note: [...notes].join('; ') };
}

function playersDiffer({ number, lines }: ImportedOrder): readonly ImportFault[] {
  const players = [...new Set(lines.map(({ player }) => player))];
  const other = lines.find(({ player }) => player !== players[0]);
  if (!other) return [];
  return [{ line: other.line, orderId: number, code: 'import.players-differ', facts: { players } }];
}

/** An order of another hand, or one that is being packed, is not overwritten by a file. */
function notChangeable(
  { state, body }: StoredRecord<OrderBody>,
  { number, fileLines }: ImportedOrder,
  source: string,
): readonly ImportFault[] {
  const place = { line: fileLines[0] ?? 1, orderId: number };
  if (body.imported?.source !== source)
    return [{ ...place, code: 'import.number-taken', facts: { source: body.imported?.source ?? '' } }];
  return state === ORDER_LIFE.initial ? [] : [{ ...place, code: 'import.order-under-way', facts: { state } }];
}

const asShown = ({ setName, quantity }: KeptLine) => ({ setName, quantity });

const asImportFault = ({ facts, ...fault }: OrderFault): ImportFault => ({
  ...fault,
  facts: facts as ImportFault['facts'],
});
