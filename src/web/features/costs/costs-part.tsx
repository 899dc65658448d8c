import type { Day, DayCosts } from '../../../core/day/index.js';
import { formatFraction, formatMoney } from '../../../core/units/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import styles from './costs-part.module.css';

/** What the day's work costs, by part. */
export function CostsPart({ day }: { readonly day: Day }) {
  const { totalMinor } = day.costs;
  const share = (minor: number): number => (totalMinor === 0 ? 0 : minor / totalMinor);
  const columns: readonly SheetColumn<CostRow>[] = [
    { heading: 'Part', names: true, cell: ({ name }) => name },
    { heading: 'Amount', figures: true, cell: ({ minor }) => formatMoney(minor, day.shop) },
    { heading: 'Share', figures: true, cell: ({ minor }) => formatFraction(share(minor)) },
    {
      heading: 'Drawn',
      wide: true,
      cell: ({ minor }) => (
        <div className={styles.bar} style={{ width: `${share(minor) * 100}%` }} aria-hidden="true" />
      ),
    },
  ];
  return (
    <section aria-labelledby="costs">
      <h2 id="costs">What it costs</h2>
      <SheetTable
        caption="What it costs"
        columns={columns}
        rows={rowsOf(day.costs)}
        rowKey={({ name }) => name}
        foot={
          <tr>
            <th scope="row">All together</th>
            <td className={styles.total}>{formatMoney(totalMinor, day.shop)}</td>
            <td colSpan={2} />
          </tr>
        }
      />
    </section>
  );
}

interface CostRow {
  readonly name: string;
  readonly minor: number;
}

const rowsOf = (costs: DayCosts): readonly CostRow[] => [
  { name: 'Labour', minor: costs.labourMinor },
  { name: 'Overhead', minor: costs.overheadMinor },
  { name: 'Scrap', minor: costs.scrapMinor },
  { name: 'Wire', minor: costs.wireMinor },
  { name: 'Packs', minor: costs.packMinor },
  { name: 'Ends', minor: costs.endsMinor },
];
