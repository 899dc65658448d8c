import { counted } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { grossesFromStrings } from '../../../core/planning/index.js';
import { formatMoney, formatTrimmed } from '../../../core/units/index.js';
import { Facts } from '../../parts/facts.js';

/** The day in a handful of figures. */
export function DaySummary({ day }: { readonly day: Day }) {
  const sets = day.orders.reduce((sum, { quantity }) => sum + quantity, 0);
  const late = day.orders.filter(({ daysLate }) => daysLate > 0).length;
  const strings = day.plan.machines.reduce((sum, { stringsToday }) => sum + stringsToday, 0);
  return (
    <Facts
      facts={[
        { name: 'Orders', value: day.orders.length, under: counted(sets, 'set') },
        { name: 'Late', value: late === 0 ? 'none' : late, care: late > 0 },
        {
          name: 'Lines to mend',
          value: day.faults.length === 0 ? 'none' : day.faults.length,
          care: day.faults.length > 0,
        },
        { name: 'Runs that start', value: day.sheets.length, under: `of ${day.plan.runs.length} planned` },
        {
          name: 'Good strings today',
          value: strings,
          under: `${formatTrimmed(grossesFromStrings(strings), 1)} gross`,
        },
        { name: 'Cost of all of it', value: formatMoney(day.costs.totalMinor, day.shop) },
      ]}
    />
  );
}
