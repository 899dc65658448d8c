import type { Day, DayCosts } from '../../../core/day/index.js';
import { formatMoney } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import { useLearnedInputs } from '../lanes/learned-inputs.js';
import styles from './costs-part.module.css';

/** What the day's work costs, by part. */
export function CostsPart({ day }: { readonly day: Day }) {
  const words = useWords(PLAN_WORDS);
  const figures = useFigures();
  const { costColumns, costParts } = words;
  const { totalMinor } = day.costs;
  const { scrap: learned } = useLearnedInputs(new Set(day.plan.runs.map(({ machineId }) => machineId)));
  const amount = (part: keyof Parts) => formatMoney(day.costs[part], day.shop);
  const share = (minor: number): number => (totalMinor === 0 ? 0 : minor / totalMinor);
  const columns: readonly SheetColumn<keyof Parts>[] = [
    { heading: costColumns.part, names: true, cell: (part) => costParts[part] },
    {
      heading: costColumns.amount,
      figures: true,
      cell: (part) => (
        <Explained
          name={words.partOf(costParts[part])}
          what={words.partWhat[part]}
          formula={words.partFormula[part]}
          source={part === 'scrapMinor' && learned.length > 0 ? words.effectLearned : words.partSource}
          {...(part === 'scrapMinor' ? { inputs: learned } : {})}
        >
          {amount(part)}
        </Explained>
      ),
    },
    { heading: costColumns.share, figures: true, cell: (part) => figures.share(share(day.costs[part])) },
    {
      heading: costColumns.drawn,
      wide: true,
      cell: (part) => (
        <div
          className={styles.bar}
          style={{ width: `${share(day.costs[part]) * 100}%` }}
          aria-hidden="true"
        />
      ),
    },
  ];
  return (
    <section aria-labelledby="costs">
      <h2 id="costs">{words.costs}</h2>
      <SheetTable
        caption={words.costs}
        columns={columns}
        rows={Object.keys(costParts) as (keyof Parts)[]}
        rowKey={(part) => part}
        foot={
          <tr>
            <th scope="row">{words.allTogether}</th>
            <td className={styles.total}>
              <Explained
                name={words.totalName}
                what={words.totalWhat}
                formula={words.totalFormula}
                source={words.totalSource}
              >
                {formatMoney(totalMinor, day.shop)}
              </Explained>
            </td>
            <td colSpan={2} />
          </tr>
        }
      />
    </section>
  );
}

type Parts = Omit<DayCosts, 'totalMinor'>;
