import { Link } from '@tanstack/react-router';
import { clockInWords, placementInWords, stringKeyInWords } from '../../../contract/index.js';
import type { Day } from '../../../core/day/index.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { PLAN_WORDS } from '../../words/plan.js';
import type { Lane, LaneBar } from './lanes-of.js';
import type { PlanWords } from './run-words.js';

interface LanesTableProps {
  readonly day: Day;
  readonly lanes: readonly Lane[];
  /** How the run of a lot stands; undefined where there is none yet. */
  readonly stateOf: (lotId: string) => string | undefined;
}

/** The lanes as a table: every run, machine by machine. */
export function LanesTable({ day, lanes, stateOf }: LanesTableProps) {
  const words = useWords(PLAN_WORDS);
  const rows = lanes.flatMap(({ machine, bars }) =>
    bars.map((bar) => ({ ...bar, machine: machine.name, state: stateOf(bar.run.lotId) })),
  );
  return (
    <SheetTable
      caption={words.runsTable}
      columns={columnsOf(day, words)}
      rows={rows}
      rowKey={({ run }) => run.lotId}
    />
  );
}

type RunRow = LaneBar & { readonly machine: string; readonly state: string | undefined };

function columnsOf({ date }: Day, words: PlanWords): readonly SheetColumn<RunRow>[] {
  const { columns, promises, runStates } = words;
  return [
    {
      heading: columns.lot,
      names: true,
      cell: ({ run: { lotId } }) => (
        <Link to="/plan/$lotId" params={{ lotId }} search={{ date }} preload={false}>
          {lotId}
        </Link>
      ),
    },
    { heading: columns.machine, cell: ({ machine }) => machine },
    { heading: columns.string, cell: ({ run }) => stringKeyInWords(run.stringKey).short },
    { heading: columns.material, cell: ({ run }) => stringKeyInWords(run.stringKey).material },
    { heading: columns.good, figures: true, cell: ({ run }) => run.quantity },
    { heading: columns.scrap, figures: true, cell: ({ run }) => Math.ceil(run.scrapStrings) },
    { heading: columns.setUp, cell: ({ run }) => clockInWords(run.setUpFrom, date) },
    { heading: columns.run, cell: ({ run }) => clockInWords(run.runFrom, date) },
    { heading: columns.to, cell: ({ run }) => clockInWords(run.to, date) },
    {
      heading: columns.state,
      whole: true,
      cell: ({ state }) =>
        state !== undefined && (
          <StateMark tone={RUN_TONES[state] ?? 'waits'}>{runStates[state] ?? state}</StateMark>
        ),
    },
    {
      heading: columns.promise,
      cell: ({ promise }) => <span className={promise === 'late' ? 'care' : ''}>{promises[promise]}</span>,
    },
    { heading: columns.why, wide: true, cell: ({ run }) => placementInWords(run.reason) },
  ];
}

/** How a run stands, as a mark has it. */
export const RUN_TONES: Readonly<Record<string, StateTone>> = {
  planned: 'waits',
  running: 'goes',
  paused: 'stopped',
  closed: 'done',
};
