import { useState } from 'react';
import type { DryRoomAir } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { LyingDialog } from './lying-dialog.js';

type Excursion = DryRoomAir['excursions'][number];

/** Where the air left its limits: when, how far, how long, and what lay there. */
export function ExcursionsPart({ air }: { readonly air: DryRoomAir }) {
  const { excursions: words } = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const [looking, setLooking] = useState<Excursion>();
  const hoursOf = ({ from, to }: Excursion) => (Date.parse(to) - Date.parse(from)) / 3_600_000;
  const columns: readonly SheetColumn<Excursion>[] = [
    {
      heading: words.from,
      names: true,
      cell: ({ from, beginsUnseen }) => (
        <>
          {figures.moment(from)}
          {beginsUnseen && <span className="quiet small"> {words.orEarlier}</span>}
        </>
      ),
    },
    {
      heading: words.to,
      cell: (each) => (
        <>
          {each.to === air.to ? words.goesOn : figures.moment(each.to)}
          {each.endsUnseen && each.to !== air.to && <span className="quiet small"> {words.orLater}</span>}
        </>
      ),
    },
    { heading: words.hours, figures: true, cell: (each) => figures.number(hoursOf(each), 1) },
    {
      heading: words.far,
      cell: ({ humidityOver, mostHumidity, warmerByC, mostC, colderByC, leastC }) =>
        [
          humidityOver > 0 &&
            words.damp(figures.number(mostHumidity * 100, 1), figures.number(humidityOver * 100, 1)),
          warmerByC > 0 && words.warm(figures.number(mostC, 1), figures.number(warmerByC, 1)),
          colderByC > 0 && words.cold(figures.number(leastC, 1), figures.number(colderByC, 1)),
        ]
          .filter(Boolean)
          .join('; '),
    },
    { heading: words.readings, figures: true, cell: ({ readings }) => figures.number(readings) },
    {
      heading: '',
      cell: (each) => <Button onClick={() => setLooking(each)}>{words.whatLay}</Button>,
    },
  ];
  return (
    <section aria-labelledby="excursions">
      <h2 id="excursions">{words.title}</h2>
      {air.excursions.length === 0 ? (
        <p>{air.readingCount === 0 ? words.noneRead : words.none(air.gaps.length)}</p>
      ) : (
        <SheetTable
          caption={words.title}
          columns={columns}
          rows={air.excursions.toReversed()}
          rowKey={({ from }) => from}
        />
      )}
      {looking && <LyingDialog span={looking} onClose={() => setLooking(undefined)} />}
    </section>
  );
}
