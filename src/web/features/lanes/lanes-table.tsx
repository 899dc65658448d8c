import { Link } from '@tanstack/react-router';
import { clockInWords, placementInWords, stringKeyInWords } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import type { Lane, LaneBar } from './lanes-of.js';

/** The lanes as a table: every run, machine by machine. */
export function LanesTable({ day, lanes }: { readonly day: Day; readonly lanes: readonly Lane[] }) {
  const rows = lanes.flatMap(({ machine, bars }) => bars.map((bar) => ({ ...bar, machine: machine.name })));
  return <SheetTable caption="Runs" columns={columnsOf(day)} rows={rows} rowKey={({ run }) => run.lotId} />;
}

type RunRow = LaneBar & { readonly machine: string };

const columnsOf = (day: Day): readonly SheetColumn<RunRow>[] => [
  {
    heading: 'Lot',
    names: true,
    cell: ({ run: { lotId } }) => (
      <Link to="/runs/$lotId" params={{ lotId }} preload={false}>
        {lotId}
      </Link>
    ),
  },
  { heading: 'Machine', cell: ({ machine }) => machine },
  { heading: 'String', cell: ({ run }) => stringKeyInWords(run.stringKey).short },
  { heading: 'Material', cell: ({ run }) => stringKeyInWords(run.stringKey).material },
  { heading: 'Good', figures: true, cell: ({ run }) => run.quantity },
  { heading: 'Scrap', figures: true, cell: ({ run }) => Math.ceil(run.scrapStrings) },
  { heading: 'Set up', cell: ({ run }) => clockInWords(run.setUpFrom, day.date) },
  { heading: 'Run', cell: ({ run }) => clockInWords(run.runFrom, day.date) },
  { heading: 'To', cell: ({ run }) => clockInWords(run.to, day.date) },
  {
    heading: 'Promise',
    cell: ({ promise }) =>
      promise === 'late' ? <span className="care">{PROMISES[promise]}</span> : PROMISES[promise],
  },
  { heading: 'Why here', wide: true, cell: ({ run }) => placementInWords(run.reason) },
];

const PROMISES: Readonly<Record<LaneBar['promise'], string>> = {
  late: 'late',
  due: 'due that day',
  early: 'in time',
  none: 'fills a bin',
};
