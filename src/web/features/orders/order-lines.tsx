import { wholeStringInWords } from '../../../contract/index.js';
import { stringKey } from '../../../core/sets/index.js';
import { useDayView } from '../../api/use-day.js';
import { useShop } from '../../api/use-shop.js';
import desk from '../../parts/desk.module.css';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import type { OrderRecord } from './use-listed-orders.js';

type Line = OrderRecord['body']['lines'][number];
type OrderedString = Line['strings'][number];

/** The lines of an order, each with its strings, and what of them lies there or is in hand. */
export function OrderLines({ record }: { readonly record: OrderRecord }) {
  const words = useWords(ORDERS_WORDS);
  const { number } = useFigures();
  const shelf = useCounts();
  const isOpen = record.state === 'received' || record.state === 'packing';
  const columns = (line: Line): readonly SheetColumn<OrderedString>[] => [
    { heading: words.strings.position, names: true, cell: ({ position }) => position },
    { heading: words.strings.spec, wide: true, cell: (string) => wholeStringInWords(string.stringKey) },
    { heading: words.strings.wanted, figures: true, cell: () => number(line.quantity) },
    ...(isOpen && shelf
      ? [
          {
            heading: words.strings.shelf,
            figures: true,
            cell: (string: OrderedString) => <OnShelf string={string} count={shelf.lying(string)} />,
          },
          {
            heading: words.strings.coming,
            figures: true,
            cell: (string: OrderedString) => number(shelf.coming(string)),
          },
          {
            heading: words.strings.standing,
            cell: (string: OrderedString) => standing(line.quantity, shelf, string, words),
          },
        ]
      : []),
  ];
  return (
    <section aria-labelledby="lines" className={desk.stack}>
      <h2 id="lines">{words.lines}</h2>
      {record.body.lines.map((line) => (
        <div key={line.lineNumber} className={desk.stack}>
          <h3>
            {words.lineTitle(line.lineNumber, line.quantity, line.setName)}{' '}
            <span className="quiet small">{words.kinds[line.kind]}</span>
          </h3>
          <SheetTable
            caption={words.lineTitle(line.lineNumber, line.quantity, line.setName)}
            columns={columns(line)}
            rows={line.strings}
            rowKey={({ position }) => position}
          />
        </div>
      ))}
    </section>
  );
}

interface Counts {
  readonly lying: (string: OrderedString) => number;
  readonly coming: (string: OrderedString) => number;
}

/** How many strings of a kind lie in bins, and how many runs in hand will bring. */
function useCounts(): Counts | undefined {
  const shop = useShop();
  const day = useDayView();
  if (!shop.data) return undefined;
  const lying = new Map<string, number>();
  for (const { spec, count } of shop.data.strings) {
    const key = stringKey(spec);
    lying.set(key, (lying.get(key) ?? 0) + count);
  }
  const coming = new Map<string, number>();
  for (const run of day.data?.day.underWay ?? [])
    coming.set(run.stringKey, (coming.get(run.stringKey) ?? 0) + run.quantity);
  return {
    lying: (string) => lying.get(string.stringKey) ?? 0,
    coming: (string) => coming.get(string.stringKey) ?? 0,
  };
}

function standing(
  wanted: number,
  { lying, coming }: Counts,
  string: OrderedString,
  words: (typeof ORDERS_WORDS)['en'],
): string {
  if (lying(string) >= wanted) return words.enough;
  return lying(string) + coming(string) >= wanted ? words.comes : words.wound;
}

function OnShelf({ string, count }: { readonly string: OrderedString; readonly count: number }) {
  const words = useWords(ORDERS_WORDS);
  const { number } = useFigures();
  return (
    <Explained
      name={words.wantedName(wholeStringInWords(string.stringKey))}
      what={words.shelfWhat}
      source={words.shelfSource}
    >
      {number(count)}
    </Explained>
  );
}
