import { Checkbox, NativeSelect, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { Button, buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { MeasureBar } from '../../parts/measure-bar.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';
import { ReceiveDialog } from './receive-dialog.js';
import { isShort, type WireLine } from './wire-book.js';
import { CoverFigure, LengthFigure } from './wire-figures.js';

/** Every wire of the shop: what there is of it, and how long it lasts. */
export function WireRoom({ lines }: { readonly lines: readonly WireLine[] }) {
  const words = useWords(WIRE_WORDS);
  const figures = useFigures();
  const may = useMay();
  const [wish, setWish] = useState(ALL);
  const [receiving, setReceiving] = useState(false);
  const shown = lines.filter((line) => isWished(line, wish));
  const spools = lines.reduce((count, line) => count + line.spools.length, 0);
  const change = (part: Partial<typeof ALL>) => setWish((before) => ({ ...before, ...part }));
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={words.title} />
          <p className={desk.lead}>{words.lead}</p>
        </div>
        {may('wire.receive') && (
          <Button kind="main" onClick={() => setReceiving(true)}>
            {words.receive}
          </Button>
        )}
      </div>
      {lines.length === 0 ? (
        <Empty what={words.nothingYet}>
          {may('shop.edit') && (
            <Link to="/shop/$part" params={{ part: 'wires' }} className={buttonClass('main')}>
              {words.enterWires}
            </Link>
          )}
        </Empty>
      ) : (
        <div className={desk.stack}>
          <search className={desk.narrow}>
            <TextInput
              label={words.find}
              value={wish.text}
              onChange={(event) => change({ text: event.currentTarget.value })}
            />
            <NativeSelect
              label={words.use}
              value={wish.use}
              data={[
                { value: '', label: words.anyUse },
                { value: 'core', label: words.uses.core },
                { value: 'wrap', label: words.uses.wrap },
              ]}
              onChange={(event) => change({ use: event.currentTarget.value })}
            />
            <Checkbox
              label={words.onlyShort}
              className={desk.loose}
              checked={wish.onlyShort}
              onChange={(event) => change({ onlyShort: event.currentTarget.checked })}
            />
            <p role="status" className={`quiet ${desk.loose}`}>
              {words.counted(shown.length, spools)}
            </p>
          </search>
          {shown.length === 0 ? (
            <Empty what={words.nothing}>
              <Button onClick={() => setWish(ALL)}>{words.clear}</Button>
            </Empty>
          ) : (
            <LongTable
              caption={words.title}
              columns={columnsOf(words, figures)}
              rows={shown}
              rowKey={({ wire }) => wire.id}
            />
          )}
        </div>
      )}
      {receiving && <ReceiveDialog lines={lines} onClose={() => setReceiving(false)} />}
    </div>
  );
}

const ALL = { text: '', use: '', onlyShort: false };

function isWished(line: WireLine, { text, use, onlyShort }: typeof ALL): boolean {
  const { wire, spools } = line;
  const held = [wire.body.name, ...spools.flatMap(({ spool: { body } }) => [body.name, body.lot])];
  const sought = text.trim().toLowerCase();
  return (
    (use === '' || wire.body.use === use) &&
    (!onlyShort || isShort(line)) &&
    (sought === '' || held.some((name) => name.toLowerCase().includes(sought)))
  );
}

/** A bar is full at three times the cover that is wanted: more is plenty. */
const FULL_COVERS = 3;

const columnsOf = (
  { columns, uses, noSpool }: (typeof WIRE_WORDS)['en'],
  figures: Figures,
): readonly LongColumn<WireLine>[] => [
  {
    heading: columns.wire,
    share: 4,
    cell: ({ wire }) => (
      <Link to="/wire" search={{ wire: wire.id }}>
        {wire.body.name}
      </Link>
    ),
  },
  { heading: columns.use, cell: ({ wire }) => uses[wire.body.use] },
  { heading: columns.size, share: 2, figures: true, cell: ({ wire }) => figures.diameter(wire.body.sizeM) },
  { heading: columns.spools, figures: true, cell: ({ spools }) => spools.length || noSpool },
  { heading: columns.onHand, share: 2, figures: true, cell: ({ kg }) => figures.weight(kg) },
  {
    heading: columns.length,
    share: 2,
    figures: true,
    cell: ({ wire, kg, metres }) => (
      <LengthFigure wire={wire} what={wire.body.name} kg={kg} metres={metres} />
    ),
  },
  {
    heading: columns.bar,
    share: 3,
    cell: ({ cover }) =>
      cover && (
        <MeasureBar
          value={cover.coverDays ?? cover.wantedDays * FULL_COVERS}
          full={cover.wantedDays * FULL_COVERS}
          mark={cover.wantedDays}
        />
      ),
  },
  { heading: columns.cover, share: 3, cell: (line) => <CoverFigure line={line} /> },
];
