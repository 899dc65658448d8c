import { unmadeInWords, wholeStringInWords } from '../../../contract/index.js';
import type { Day, UnmadeLot } from '../../../core/day/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';

/** Bins that stay short, and why; nothing at all where there are none. */
export function BinsPart({ day }: { readonly day: Day }) {
  if (day.unmade.length === 0) return null;
  return (
    <section aria-labelledby="bins">
      <h2 id="bins">Bins that stay short</h2>
      <SheetTable
        caption="Bins that stay short"
        columns={COLUMNS}
        rows={day.unmade}
        rowKey={({ stringKey }) => stringKey}
      />
    </section>
  );
}

const COLUMNS: readonly SheetColumn<UnmadeLot>[] = [
  { heading: 'String', names: true, cell: ({ stringKey }) => wholeStringInWords(stringKey) },
  { heading: 'Strings', figures: true, cell: ({ quantity }) => quantity },
  { heading: 'Why', wide: true, cell: unmadeInWords },
];
