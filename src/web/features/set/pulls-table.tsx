import { SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import type { DrawnString } from './drawn-string.js';

/** The picture of the strings as a table. */
export function PullsTable({ strings }: { readonly strings: readonly DrawnString[] }) {
  const { pull, length } = useFigures();
  const { picture } = useWords(SETS_WORDS);
  return (
    <SheetTable
      caption={picture.title}
      columns={[
        { heading: picture.string, names: true, cell: ({ position }) => position },
        { heading: picture.note, cell: ({ note }) => note },
        { heading: picture.gauge, cell: ({ gauge }) => gauge },
        {
          heading: picture.length,
          figures: true,
          cell: ({ speakingLengthM }) => length(speakingLengthM),
        },
        { heading: picture.pullNow, figures: true, cell: ({ tensionN }) => pull(tensionN) },
        {
          heading: picture.pullWished,
          figures: true,
          cell: ({ wishedTensionN }) => (wishedTensionN === undefined ? '' : pull(wishedTensionN)),
        },
      ]}
      rows={strings}
      rowKey={({ position }) => position}
    />
  );
}
