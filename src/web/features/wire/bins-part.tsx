import { unmadeInWords, wholeStringInWords } from '../../../contract/index.js';
import type { Day, UnmadeLot } from '../../../core/day/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';

/** Bins that stay short, and why; nothing at all where there are none. */
export function BinsPart({ day }: { readonly day: Day }) {
  const { bins, binColumns } = useWords(PLAN_WORDS);
  if (day.unmade.length === 0) return null;
  const columns: readonly SheetColumn<UnmadeLot>[] = [
    { heading: binColumns.string, names: true, cell: ({ stringKey }) => wholeStringInWords(stringKey) },
    { heading: binColumns.strings, figures: true, cell: ({ quantity }) => quantity },
    { heading: binColumns.why, wide: true, cell: unmadeInWords },
  ];
  return (
    <section aria-labelledby="bins">
      <h2 id="bins">{bins}</h2>
      <SheetTable caption={bins} columns={columns} rows={day.unmade} rowKey={({ stringKey }) => stringKey} />
    </section>
  );
}
