import { formatMillimetres, pitchName } from '../../../core/units/index.js';
import { useForceWords } from '../../parts/force-unit.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { gaugeInWords } from '../request/set-words.js';
import type { StrungString } from './strung-set.js';

/** The picture of the strings as a table. */
export function PullsTable({ strings }: { readonly strings: readonly StrungString[] }) {
  const force = useForceWords();
  return (
    <SheetTable
      caption="Strings and pulls"
      columns={[
        { heading: 'String', names: true, cell: ({ position }) => position },
        { heading: 'Note', cell: ({ pitch }) => pitchName(pitch) },
        { heading: 'Gauge', cell: ({ spec }) => gaugeInWords(spec) },
        {
          heading: 'Sounding length',
          figures: true,
          cell: ({ speakingLengthM }) => `${formatMillimetres(speakingLengthM, 1)} mm`,
        },
        { heading: 'Pull now', figures: true, cell: ({ figures }) => force(figures.tensionN.value) },
        {
          heading: 'Pull wished',
          figures: true,
          cell: ({ wishedTensionN }) => (wishedTensionN === undefined ? '' : force(wishedTensionN)),
        },
      ]}
      rows={strings}
      rowKey={({ position }) => position}
    />
  );
}
