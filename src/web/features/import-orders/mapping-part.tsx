import { NativeSelect } from '@mantine/core';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';
import { type Column, meaningOf, type Preview, withMeaning } from './mapping.js';
import type { Importing } from './use-import.js';

type Heading = Preview['headings'][number];

interface MappingPartProps {
  readonly preview: Preview;
  readonly importing: Importing;
}

/** What each heading of the file is taken for, with its first cells; a person knows better. */
export function MappingPart({ preview, importing: { mapping, look } }: MappingPartProps) {
  const words = useWords(ORDERS_WORDS);
  const { mappingColumns, columnNames } = words;
  const names = Object.keys(columnNames) as Column[];
  const columns: readonly SheetColumn<Heading>[] = [
    { heading: mappingColumns.heading, names: true, cell: ({ heading }) => heading },
    {
      heading: mappingColumns.samples,
      wide: true,
      cell: ({ samples }) =>
        samples.length === 0 ? <span className="quiet">{words.noSamples}</span> : samples.join(' · '),
    },
    {
      heading: mappingColumns.means,
      cell: ({ heading }) => {
        const meaning = meaningOf(mapping, heading);
        return (
          <NativeSelect
            aria-label={words.meansOf(heading)}
            value={meaning ?? ''}
            data={[
              // What has a meaning can be given another; only what has none is left aside.
              ...(meaning === undefined ? [{ value: '', label: words.ignored }] : []),
              ...names.map((value) => ({ value, label: columnNames[value] })),
            ]}
            onChange={({ currentTarget: { value } }) =>
              void look(withMeaning(mapping, heading, value as Column))
            }
          />
        );
      },
    },
  ];
  return (
    <section aria-labelledby="mapping" className={desk.stack}>
      <h2 id="mapping">{words.mapping}</h2>
      <SheetTable
        caption={words.mapping}
        columns={columns}
        rows={preview.headings}
        rowKey={({ heading }) => heading}
        middle
      />
    </section>
  );
}
