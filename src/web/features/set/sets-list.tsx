import { NativeSelect, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { gaugesInWords } from '../../../contract/index.js';
import type { Shop } from '../../../core/day/index.js';
import { useMay } from '../../api/session.js';
import { useAllRecords } from '../../api/use-records.js';
import { useShop } from '../../api/use-shop.js';
import { Asked } from '../../parts/asked.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { gaugeInWords } from '../request/set-words.js';
import type { SetRecord } from './set-draft.js';
import { holdsText, woundIn } from './set-words.js';
import { setsOnShelf } from './sets-on-shelf.js';

/** The shop's stock sets: found by name or gauges, each with what of it lies on the shelf. */
export function SetsList() {
  const { theSets, list } = useWords(SETS_WORDS);
  const may = useMay();
  const shop = useShop();
  return (
    <div className={desk.room}>
      <header className={desk.head}>
        <div>
          <RoomTitle title={list.title} />
          <p className={desk.lead}>{list.lead}</p>
        </div>
        {may('shop.edit') && (
          <Link to="/sets/$id" params={{ id: 'new' }} className={buttonClass('main')}>
            {list.make}
          </Link>
        )}
      </header>
      <Asked question={useAllRecords('set')} what={theSets}>
        {(sets) => (
          <Asked question={shop} what={theSets}>
            {(known) => (sets.length === 0 ? <Empty what={list.none} /> : <Found sets={sets} shop={known} />)}
          </Asked>
        )}
      </Asked>
    </div>
  );
}

function Found({ sets, shop }: { readonly sets: readonly SetRecord[]; readonly shop: Shop }) {
  const { list } = useWords(SETS_WORDS);
  const figures = useFigures();
  const [text, setText] = useState('');
  const [count, setCount] = useState('');
  const counts = [...new Set(sets.map(({ body }) => body.strings.length))].sort((a, b) => a - b);
  const rows = sets
    .filter(({ body }) => holdsText(body, text) && (count === '' || body.strings.length === Number(count)))
    .toSorted(
      (a, b) => a.body.strings.length - b.body.strings.length || (a.body.name < b.body.name ? -1 : 1),
    );
  return (
    <>
      <div className={desk.narrow}>
        <TextInput
          type="search"
          label={list.search}
          value={text}
          onChange={(event) => setText(event.currentTarget.value)}
        />
        <NativeSelect
          label={list.count}
          value={count}
          data={[{ value: '', label: list.anyCount }, ...counts.map(String)]}
          onChange={(event) => setCount(event.currentTarget.value)}
        />
      </div>
      {rows.length === 0 ? (
        <Empty what={list.nothing} />
      ) : (
        <SheetTable
          caption={list.caption}
          columns={columnsFor(list, figures, shop)}
          rows={rows}
          rowKey={({ id }) => id}
        />
      )}
    </>
  );
}

const columnsFor = (
  words: (typeof SETS_WORDS)['en']['list'],
  { number }: Figures,
  shop: Shop,
): readonly SheetColumn<SetRecord>[] => [
  {
    heading: words.set,
    names: true,
    cell: ({ id, body }) => (
      <Link to="/sets/$id" params={{ id }}>
        {body.name}
      </Link>
    ),
  },
  { heading: words.gauges, wide: true, cell: ({ body }) => gaugesInWords(body.strings) },
  { heading: words.wound, cell: ({ body }) => woundIn(body.strings) },
  {
    heading: words.short,
    whole: true,
    cell: ({ body }) => {
      const { shortest } = setsOnShelf(body.strings, shop);
      return shortest ? words.shortOf(gaugeInWords(shortest.spec), number(shortest.onShelf)) : '';
    },
  },
  { heading: words.strings, figures: true, cell: ({ body }) => number(body.strings.length) },
  {
    heading: words.shelf,
    figures: true,
    cell: ({ body }) => number(setsOnShelf(body.strings, shop).sets),
  },
  { heading: words.version, figures: true, cell: ({ version }) => number(version) },
];
