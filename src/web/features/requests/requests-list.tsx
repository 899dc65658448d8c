import { NativeSelect, TextInput } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import { useDeferredValue, useState } from 'react';
import { useMay } from '../../api/session.js';
import { type RecordOf, useAllRecords, useRecordPages } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { buttonClass } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { RoomTitle } from '../../parts/room-title.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { type Figures, useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { RequestMark } from '../request/request-state.js';
import { answerInShort, askedInShort } from '../request/request-words.js';
import styles from './requests-list.module.css';

type Request = RecordOf<'request'>;
type Words = (typeof REQUESTS_WORDS)['en'];
const STATES = ['all', 'answered', 'ordered', 'declined'] as const;

interface RequestsListProps {
  /** What the lower list is narrowed to; everything where left out. */
  readonly state: string | undefined;
}

/** Letters of players: those that wait first, then what was answered before. */
export function RequestsList({ state }: RequestsListProps) {
  const words = useWords(REQUESTS_WORDS);
  const may = useMay();
  return (
    <div className={desk.room}>
      <header className={desk.head}>
        <div>
          <RoomTitle title={words.list.title} />
          <p className={desk.lead}>{words.list.lead}</p>
        </div>
        {may('request.resolve') && (
          <Link to="/requests/$id" params={{ id: 'new' }} className={buttonClass('main')}>
            {words.list.make}
          </Link>
        )}
      </header>
      <Waiting />
      <Others state={STATES.find((each) => each === state) ?? 'all'} />
    </div>
  );
}

function Waiting() {
  const words = useWords(REQUESTS_WORDS);
  const figures = useFigures();
  return (
    <section aria-labelledby="waiting" className={desk.part}>
      <h2 id="waiting">{words.list.waiting}</h2>
      <Asked
        question={useAllRecords('request', { state: 'waiting', order: 'oldest' })}
        what={words.theRequests}
      >
        {(requests) =>
          requests.length === 0 ? (
            <Empty what={words.list.noneWaiting} />
          ) : (
            <SheetTable
              caption={words.list.waiting}
              columns={waitingColumns(words, figures)}
              rows={requests}
              rowKey={({ id }) => id}
            />
          )
        }
      </Asked>
    </section>
  );
}

const waitingColumns = (words: Words, figures: Figures): readonly SheetColumn<Request>[] => [
  { heading: words.list.player, names: true, cell: (request) => <PlayerLink request={request} /> },
  { heading: words.list.when, whole: true, cell: ({ createdAt }) => figures.moment(createdAt) },
  { heading: words.list.instrument, wide: true, cell: ({ body }) => askedInShort(body.request) },
  {
    heading: words.list.letter,
    wide: true,
    cell: ({ body }) => <span className={styles.letter}>{body.letter}</span>,
  },
];

function Others({ state }: { readonly state: (typeof STATES)[number] }) {
  const words = useWords(REQUESTS_WORDS);
  const navigate = useNavigate();
  const [typed, setTyped] = useState('');
  const search = useDeferredValue(typed.trim());
  return (
    <section aria-labelledby="others" className={desk.part}>
      <h2 id="others">{words.list.others}</h2>
      <div className={desk.narrow}>
        <NativeSelect
          label={words.list.state}
          value={state}
          data={STATES.map((value) => ({ value, label: words.list.states[value] }))}
          onChange={(event) => {
            const { value } = event.currentTarget;
            void navigate({
              to: '/requests',
              search: value === 'all' ? {} : { state: value },
              replace: true,
            });
          }}
        />
        <TextInput
          type="search"
          label={words.list.search}
          value={typed}
          onChange={(event) => setTyped(event.currentTarget.value)}
        />
      </div>
      <OthersTable state={state} search={search} />
    </section>
  );
}

function OthersTable({ state, search }: { readonly state: string; readonly search: string }) {
  const words = useWords(REQUESTS_WORDS);
  const figures = useFigures();
  const pages = useRecordPages('request', {
    ...(state === 'all' ? {} : { state }),
    ...(search === '' ? {} : { search }),
  });
  return (
    <Asked question={pages} what={words.theRequests}>
      {({ pages: found }) => {
        // Those that wait stand above.
        const rows = found.flatMap(({ items }) => items).filter((each) => each.state !== 'waiting');
        if (rows.length === 0 && !pages.hasNextPage) return <Empty what={words.list.noneOthers} />;
        return (
          <LongTable
            caption={words.list.othersTable}
            columns={otherColumns(words, figures)}
            rows={rows}
            rowKey={({ id }) => id}
            onNearEnd={pages.hasNextPage ? () => void pages.fetchNextPage() : undefined}
          />
        );
      }}
    </Asked>
  );
}

const otherColumns = (words: Words, figures: Figures): readonly LongColumn<Request>[] => [
  { heading: words.list.player, share: 4, cell: (request) => <PlayerLink request={request} /> },
  { heading: words.list.stands, share: 3, cell: ({ state }) => <RequestMark state={state} /> },
  { heading: words.list.when, share: 4, cell: ({ updatedAt }) => figures.moment(updatedAt) },
  { heading: words.list.instrument, share: 6, cell: ({ body }) => askedInShort(body.request) },
  { heading: words.list.answer, share: 4, cell: ({ body }) => answerInShort(body) || words.list.noAnswer },
];

const PlayerLink = ({ request: { id, body } }: { readonly request: Request }) => (
  <Link to="/requests/$id" params={{ id }}>
    {body.player}
  </Link>
);
