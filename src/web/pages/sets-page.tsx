import { Link } from '@tanstack/react-router';
import { gaugesInWords, materialInWords } from '../../contract/index.js';
import type { StringSet } from '../../core/sets/index.js';
import { useShop } from '../api/use-shop.js';
import { Asked } from '../parts/asked.js';
import { RoomTitle } from '../parts/room-title.js';
import { type SheetColumn, SheetTable } from '../parts/sheet-table.js';
import styles from './set-page.module.css';

/** The shop's stock sets. */
export function SetsPage() {
  return (
    <Asked question={useShop()} what="the sets">
      {(shop) => (
        <div className={styles.set}>
          <RoomTitle title="Sets" />
          <SheetTable caption="Stock sets" columns={COLUMNS} rows={shop.sets} rowKey={({ id }) => id} />
        </div>
      )}
    </Asked>
  );
}

const COLUMNS: readonly SheetColumn<StringSet>[] = [
  {
    heading: 'Set',
    names: true,
    cell: ({ id, name }) => (
      <Link to="/sets/$id" params={{ id }}>
        {name}
      </Link>
    ),
  },
  { heading: 'Strings', figures: true, cell: ({ strings }) => strings.length },
  { heading: 'Gauges, treble first', wide: true, cell: ({ strings }) => gaugesInWords(strings) },
  { heading: 'Wound in', cell: ({ strings }) => woundIn(strings) },
];

const woundIn = (strings: StringSet['strings']): string =>
  [
    ...new Set(
      strings.filter(({ kind }) => kind === 'wound').map(({ material }) => materialInWords(material)),
    ),
  ].join(', ');
