import type { Day } from '../../../core/day/index.js';
import { grossesFromStrings } from '../../../core/planning/index.js';
import { formatMoney } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';

/** The day in a handful of figures. */
export function DaySummary({ day }: { readonly day: Day }) {
  const words = useWords(PLAN_WORDS);
  const { number } = useFigures();
  const sets = day.orders.reduce((sum, { quantity }) => sum + quantity, 0);
  const late = day.orders.filter(({ daysLate }) => daysLate > 0).length;
  const strings = day.plan.machines.reduce((sum, { stringsToday }) => sum + stringsToday, 0);
  const { facts, none } = words;
  return (
    <Facts
      facts={[
        { name: facts.orders, value: number(day.orders.length), under: words.sets(sets) },
        { name: facts.late, value: late === 0 ? none : number(late), care: late > 0 },
        {
          name: facts.toMend,
          value: day.faults.length === 0 ? none : number(day.faults.length),
          care: day.faults.length > 0,
        },
        {
          name: facts.starting,
          value: number(day.sheets.length),
          under: words.ofPlanned(day.plan.runs.length),
        },
        {
          name: facts.today,
          value: (
            <Explained
              name={words.grossName}
              what={words.grossWhat}
              formula={words.grossFormula}
              source={words.grossSource}
            >
              {number(strings)}
            </Explained>
          ),
          under: words.gross(number(grossesFromStrings(strings), 1)),
        },
        {
          name: facts.cost,
          value: (
            <Explained
              name={words.totalName}
              what={words.totalWhat}
              formula={words.totalFormula}
              inputs={(Object.keys(words.costParts) as (keyof typeof words.costParts)[]).map((part) => ({
                name: words.costParts[part],
                value: formatMoney(day.costs[part], day.shop),
              }))}
              source={words.totalSource}
            >
              {formatMoney(day.costs.totalMinor, day.shop)}
            </Explained>
          ),
        },
      ]}
    />
  );
}
