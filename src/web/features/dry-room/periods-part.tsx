import { SegmentedControl } from '@mantine/core';
import { useState } from 'react';
import type { DryRoomAir } from '../../../contract/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';

type Period = DryRoomAir['days'][number];

/** A month of days, a year of weeks. */
const MOST_SHOWN = 60;

/** The air day by day or week by week, the newest first. */
export function PeriodsPart({ air }: { readonly air: DryRoomAir }) {
  const { periods: words } = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const [by, setBy] = useState<'days' | 'weeks'>(air.days.length > MOST_SHOWN ? 'weeks' : 'days');
  const spread = (least: number, mean: number, most: number) =>
    words.spread(figures.number(least, 1), figures.number(mean, 1), figures.number(most, 1));
  const columns: readonly SheetColumn<Period>[] = [
    {
      heading: by === 'days' ? words.day : words.weekFrom,
      names: true,
      whole: true,
      cell: ({ date }) => figures.date(date),
    },
    {
      heading: words.humidity,
      cell: ({ air: of }) =>
        of ? spread(of.leastHumidity * 100, of.meanHumidity * 100, of.mostHumidity * 100) : words.notRead,
    },
    {
      heading: words.temperature,
      cell: ({ air: of }) => (of ? spread(of.leastC, of.meanC, of.mostC) : words.notRead),
    },
    {
      heading: words.outside,
      figures: true,
      cell: ({ outsideHours, knownHours }) => (
        <span className={outsideHours > 0 ? 'care' : ''}>
          {knownHours > 0 ? figures.number(outsideHours, 1) : words.notRead}
        </span>
      ),
    },
    { heading: words.unknown, figures: true, cell: ({ unknownHours }) => figures.number(unknownHours, 1) },
    { heading: words.readings, figures: true, cell: ({ readings }) => figures.number(readings) },
  ];
  return (
    <section aria-labelledby="periods">
      <h2 id="periods">{words.title}</h2>
      <SegmentedControl
        aria-label={words.title}
        data={[
          { value: 'days', label: words.byDay },
          { value: 'weeks', label: words.byWeek },
        ]}
        value={by}
        onChange={(wanted) => setBy(wanted as typeof by)}
      />
      <SheetTable
        caption={words.title}
        columns={columns}
        rows={air[by].toReversed().slice(0, MOST_SHOWN)}
        rowKey={({ from }) => from}
      />
    </section>
  );
}
