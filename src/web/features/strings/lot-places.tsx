import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import type { LyingStrings } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { Button, buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import type { LotRecord } from './lot-record.js';
import { MoveDialog } from './move-dialog.js';
import { ScrapDialog } from './scrap-dialog.js';
import type { BinRecord } from './strings-book.js';

interface LotPlacesProps {
  readonly lot: LotRecord;
  readonly bins: readonly BinRecord[];
  readonly lying: readonly LyingStrings[];
}

/** The bins that a lot lies in, and what may be done with it there. */
export function LotPlaces({ lot, bins, lying }: LotPlacesProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const may = useMay();
  const [doing, setDoing] = useState<{ readonly deed: 'move' | 'scrap'; readonly place: LyingStrings }>();
  const binOf = (id: string) => bins.find((bin) => bin.id === id);
  const close = () => setDoing(undefined);
  const columns: readonly SheetColumn<LyingStrings>[] = [
    {
      heading: words.columns.bin,
      names: true,
      cell: ({ binId }) => (
        <Link to="/strings" search={{ bin: binId }}>
          {binOf(binId)?.body.name}
        </Link>
      ),
    },
    { heading: words.columns.strings, figures: true, cell: ({ count }) => figures.number(count) },
    {
      heading: words.actions,
      wide: true,
      cell: (place) => (
        <div className={desk.row}>
          {may('stock.move') && (
            <Button onClick={() => setDoing({ deed: 'move', place })}>{words.move}</Button>
          )}
          {may('tally.enter') && (
            <Button onClick={() => setDoing({ deed: 'scrap', place })}>{words.scrapSome}</Button>
          )}
          {may('stock.count') && (
            <Link to="/strings" search={{ bin: place.binId }} className={buttonClass()}>
              {words.count}
            </Link>
          )}
        </div>
      ),
    },
  ];
  const from = doing && binOf(doing.place.binId);
  return (
    <section className={desk.part} aria-labelledby="where">
      <h2 id="where">{words.where}</h2>
      {lying.length === 0 ? (
        <p className="quiet">{words.nowhere}</p>
      ) : (
        <SheetTable
          caption={words.where}
          columns={columns}
          rows={lying}
          rowKey={({ binId }) => binId}
          middle
        />
      )}
      {doing?.deed === 'move' && from && (
        <MoveDialog lot={lot} from={from} there={doing.place.count} bins={bins} onClose={close} />
      )}
      {doing?.deed === 'scrap' && from && (
        <ScrapDialog lot={lot} from={from} there={doing.place.count} onClose={close} />
      )}
    </section>
  );
}
