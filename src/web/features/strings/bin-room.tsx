import { Link } from '@tanstack/react-router';
import { type LyingStrings, wholeStringInWords } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import desk from '../../parts/desk.module.css';
import { Facts } from '../../parts/facts.js';
import { Lost } from '../../parts/lost.js';
import { MeasureBar } from '../../parts/measure-bar.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { MovementsPart } from '../movements/movements-part.js';
import { AskedStrings } from './asked-strings.js';
import { BinContents } from './bin-contents.js';
import { StockTakePart } from './stock-take-part.js';
import type { BinRecord } from './strings-book.js';

/** One bin, by the id of its record. */
export function BinPart({ id }: { readonly id: string }) {
  const words = useWords(STRINGS_WORDS);
  return (
    <AskedStrings>
      {(bins, lying) => {
        const bin = bins.find((one) => one.id === id);
        return bin ? (
          <BinRoom bin={bin} lying={lying.filter(({ binId }) => binId === id)} />
        ) : (
          <Lost what={words.binMissing} />
        );
      }}
    </AskedStrings>
  );
}

interface BinRoomProps {
  readonly bin: BinRecord;
  readonly lying: readonly LyingStrings[];
}

function BinRoom({ bin, lying }: BinRoomProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const may = useMay();
  const { name, stringKey, reorderLevel, walkOrder } = bin.body;
  const sum = (ones: readonly LyingStrings[]) => ones.reduce((total, { count }) => total + count, 0);
  const packable = sum(lying.filter(({ state }) => state === 'released'));
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={name} />
          <p className={desk.lead}>
            {stringKey === undefined ? words.anyString : wholeStringInWords(stringKey)}
          </p>
        </div>
        <Link to="/strings" search={{}}>
          {words.all}
        </Link>
      </div>
      <Facts
        facts={[
          { name: words.facts.strings, value: figures.number(sum(lying)) },
          {
            name: words.facts.packable,
            value: figures.number(packable),
            care: packable < reorderLevel,
            ...(packable < reorderLevel
              ? { under: words.below(figures.number(reorderLevel - packable)) }
              : {}),
          },
          {
            name: words.facts.level,
            value: reorderLevel === 0 ? words.toOrder : figures.number(reorderLevel),
            ...(reorderLevel > 0
              ? {
                  under: (
                    <MeasureBar
                      value={packable}
                      full={Math.max(packable, reorderLevel)}
                      mark={reorderLevel}
                    />
                  ),
                }
              : {}),
          },
          { name: words.facts.walk, value: figures.number(walkOrder) },
        ]}
      />
      {may('stock.count') ? <StockTakePart bin={bin} lying={lying} /> : <BinContents lying={lying} />}
      <MovementsPart account={`bin/${bin.id}`} />
    </div>
  );
}
