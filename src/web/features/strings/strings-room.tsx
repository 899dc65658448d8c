import { Checkbox, SegmentedControl, TextInput } from '@mantine/core';
import { useState } from 'react';
import { type LyingStrings, wholeStringInWords } from '../../../contract/index.js';
import { useMay } from '../../api/session.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';
import { AskedStrings } from './asked-strings.js';
import { BinsTable } from './bins-table.js';
import { EnterLotDialog } from './enter-lot-dialog.js';
import { KindsTable } from './kinds-table.js';
import { type BinRecord, kindsInBins, type StringsWish, wishedKinds } from './strings-book.js';
import { WaitingLots } from './waiting-lots.js';

/** What lies in the bins: by kind of string, or bin by bin; and the lots that wait for somebody's word. */
export function StringsRoom() {
  return <AskedStrings>{(bins, lying) => <StringsSeen bins={bins} lying={lying} />}</AskedStrings>;
}

interface StringsSeenProps {
  readonly bins: readonly BinRecord[];
  readonly lying: readonly LyingStrings[];
}

function StringsSeen({ bins, lying }: StringsSeenProps) {
  const words = useWords(STRINGS_WORDS);
  const may = useMay();
  const [entering, setEntering] = useState(false);
  return (
    <div className={desk.room}>
      <div className={desk.head}>
        <div>
          <RoomTitle title={words.title} />
          <p className={desk.lead}>{words.lead}</p>
        </div>
        {may('shop.edit') && <Button onClick={() => setEntering(true)}>{words.enterLot}</Button>}
      </div>
      {bins.length === 0 ? <Empty what={words.nothingYet} /> : <Shelf bins={bins} lying={lying} />}
      <WaitingLots bins={bins} lying={lying} />
      {entering && <EnterLotDialog bins={bins} onClose={() => setEntering(false)} />}
    </div>
  );
}

const ALL: StringsWish = { text: '', onlyShort: false };

function Shelf({ bins, lying }: StringsSeenProps) {
  const words = useWords(STRINGS_WORDS);
  const figures = useFigures();
  const [view, setView] = useState<'kinds' | 'bins'>('kinds');
  const [wish, setWish] = useState(ALL);
  const kinds = wishedKinds(kindsInBins(bins, lying), wish, wholeStringInWords);
  const shownBins = [...new Set(kinds.flatMap((kind) => kind.bins))];
  const strings = kinds.reduce((sum, kind) => sum + kind.released + kind.inCheck + kind.onHold, 0);
  return (
    <div className={desk.stack}>
      <search className={desk.narrow}>
        <div className={desk.loose}>
          <SegmentedControl
            aria-label={words.seenAs}
            value={view}
            data={(['kinds', 'bins'] as const).map((value) => ({ value, label: words.views[value] }))}
            onChange={(wanted) => setView(wanted as typeof view)}
          />
        </div>
        <TextInput
          label={words.find}
          value={wish.text}
          onChange={(event) => setWish({ ...wish, text: event.currentTarget.value })}
        />
        <Checkbox
          label={words.onlyShort}
          className={desk.loose}
          checked={wish.onlyShort}
          onChange={(event) => setWish({ ...wish, onlyShort: event.currentTarget.checked })}
        />
        <p role="status" className={`quiet ${desk.loose}`}>
          {view === 'kinds'
            ? words.counted(kinds.length, figures.number(strings))
            : words.countedBins(shownBins.length)}
        </p>
      </search>
      {kinds.length === 0 && (
        <Empty what={words.nothing}>
          <Button onClick={() => setWish(ALL)}>{words.clear}</Button>
        </Empty>
      )}
      {kinds.length > 0 && view === 'kinds' && <KindsTable kinds={kinds} />}
      {kinds.length > 0 && view === 'bins' && <BinsTable bins={shownBins} lying={lying} />}
    </div>
  );
}
