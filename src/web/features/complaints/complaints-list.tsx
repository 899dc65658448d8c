import { NativeSelect, TextInput } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import {
  type ComplaintRegister,
  complaintFaultInWords,
  wholeStringInWords,
} from '../../../contract/index.js';
import { COMPLAINT_FAULTS } from '../../../core/stock/index.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';
import { ComplaintState } from './complaint-state.js';
import { type ListWish, narrowComplaints } from './narrow-complaints.js';

type Row = ComplaintRegister['complaints'][number];
type Words = (typeof COMPLAINTS_WORDS)['en']['list'];

interface ComplaintsListProps {
  readonly register: ComplaintRegister;
  readonly wish: ListWish;
  readonly days: number;
}

const STATES = ['all', 'open', 'answered', 'closed'] as const;

/** The letters, narrowed by state, fault, and what is typed. */
export function ComplaintsList({ register, wish, days }: ComplaintsListProps) {
  const { list: words } = useWords(COMPLAINTS_WORDS);
  const figures = useFigures();
  const navigate = useNavigate();
  const wishFor = (change: ListWish) =>
    void navigate({ to: '/complaints', search: { ...wish, ...change }, replace: true });
  const rows = narrowComplaints(register.complaints, wish, wholeStringInWords);
  return (
    <section aria-label={words.title} className={desk.stack}>
      <div className={desk.narrow}>
        <NativeSelect
          label={words.days}
          value={String(days)}
          data={[92, 365, 1096].map((span) => ({ value: String(span), label: words.spans[span] ?? '' }))}
          onChange={(event) => wishFor({ days: event.currentTarget.value })}
        />
        <NativeSelect
          label={words.state}
          value={wish.state ?? 'all'}
          data={STATES.map((value) => ({ value, label: words.states[value] }))}
          onChange={(event) => wishFor({ state: event.currentTarget.value })}
        />
        <NativeSelect
          label={words.fault}
          value={wish.fault ?? ''}
          data={[
            { value: '', label: words.anyFault },
            ...COMPLAINT_FAULTS.map((value) => ({ value, label: complaintFaultInWords(value) })),
          ]}
          onChange={(event) => wishFor({ fault: event.currentTarget.value })}
        />
        <TextInput
          type="search"
          label={words.find}
          placeholder={words.findHint}
          value={wish.text ?? ''}
          onChange={(event) => wishFor({ text: event.currentTarget.value })}
        />
        <p role="status" className={desk.loose}>
          {words.count(rows.length)}
        </p>
      </div>
      {rows.length === 0 ? (
        <Empty what={register.complaints.length === 0 ? words.noneAtAll : words.none} />
      ) : (
        <LongTable
          caption={words.title}
          columns={columnsOf(words, figures)}
          rows={rows}
          rowKey={({ id }) => id}
          isWide
        />
      )}
    </section>
  );
}

const columnsOf = (words: Words, figures: Figures): readonly LongColumn<Row>[] => [
  {
    heading: words.player,
    share: 1.4,
    cell: ({ id, player }) => (
      <Link to="/complaints/$id" params={{ id }} preload={false}>
        {player}
      </Link>
    ),
  },
  { heading: words.date, share: 1.2, cell: ({ at }) => figures.date(at.slice(0, 10)) },
  {
    heading: words.fault,
    share: 1.8,
    cell: ({ fault, said }) => {
      const named = complaintFaultInWords(fault);
      return said === undefined ? named : words.said(named, said);
    },
  },
  {
    heading: words.string,
    share: 2,
    cell: ({ stringKey }) =>
      stringKey === undefined ? (
        <span className="quiet">{words.unknown}</span>
      ) : (
        wholeStringInWords(stringKey)
      ),
  },
  {
    heading: words.lot,
    share: 1.2,
    cell: ({ lot }) => lot ?? <span className="quiet">{words.unknown}</span>,
  },
  { heading: words.standing, cell: ({ state }) => <ComplaintState state={state} /> },
];
