import { NativeSelect, TextInput } from '@mantine/core';
import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { DEFINITIONS, RECORD_KINDS, type ReadingAnswer, type RecordKind } from '../../../contract/index.js';
import { useReadingPages } from '../../api/use-reading-pages.js';
import { useShopView } from '../../api/use-shop.js';
import { useWho } from '../../api/use-who.js';
import { placeOf } from '../../frame/place-of.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { useFigures } from '../../sight/figures.js';
import { FRAME_WORDS } from '../../words/frame.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';

type Entry = ReadingAnswer<'journal'>['items'][number];

/** Who did what and when, newest first; more as one goes down. */
export function JournalPart() {
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const whoOf = useWho();
  const doneInWords = useDoneInWords();
  const kinds = useWords(FRAME_WORDS).kinds;
  const people = useShopView().data?.people ?? {};
  const [by, setBy] = useState('');
  const [text, setText] = useState('');
  const [looked, setLooked] = useState<Entry>();
  const pages = useReadingPages('journal', by === '' ? {} : { by: `person/${by}` });
  const { journal: said } = words;
  const sought = text.trim().toLowerCase();
  const shown = (pages.data?.pages ?? [])
    .flatMap(({ items }) => items)
    .filter(({ useCase }) => doneInWords(useCase).toLowerCase().includes(sought));
  const columns: readonly LongColumn<Entry>[] = [
    { heading: said.columns.at, share: 4, cell: ({ at }) => figures.moment(at) },
    { heading: said.columns.by, share: 3, cell: (entry) => whoOf(entry.by) },
    { heading: said.columns.what, share: 7, cell: ({ useCase }) => doneInWords(useCase) },
    {
      heading: said.columns.touched,
      share: 4,
      cell: ({ touched }) => touchedInWords(touched, kinds, said),
    },
    {
      heading: said.columns.more,
      share: 2,
      cell: (entry) => (
        <Button
          kind="bare"
          aria-label={said.lookAt(doneInWords(entry.useCase), figures.moment(entry.at))}
          onClick={() => setLooked(entry)}
        >
          {said.look}
        </Button>
      ),
    },
  ];
  return (
    <div className={desk.stack}>
      <div className={desk.narrow}>
        <NativeSelect
          label={said.by}
          value={by}
          data={[
            { value: '', label: said.anybody },
            ...Object.entries(people).map(([value, label]) => ({ value, label })),
          ]}
          onChange={(event) => setBy(event.currentTarget.value)}
        />
        <TextInput label={said.holds} value={text} onChange={(event) => setText(event.currentTarget.value)} />
      </div>
      {pages.isSuccess && shown.length === 0 ? (
        <Empty what={said.nothing}>
          {pages.hasNextPage && (
            <Button onClick={() => void pages.fetchNextPage()}>{said.columns.more}</Button>
          )}
        </Empty>
      ) : (
        <LongTable
          caption={words.parts.journal}
          columns={columns}
          rows={shown}
          rowKey={({ id }) => id}
          isWide
          onNearEnd={pages.hasNextPage ? () => void pages.fetchNextPage() : undefined}
        />
      )}
      {looked && <EntryDialog entry={looked} onClose={() => setLooked(undefined)} />}
    </div>
  );
}

/** What a use case does, in the words of the contract; of what is no use case, in ours. */
function useDoneInWords(): (useCase: string) => string {
  const { journal: said } = useWords(SHOP_WORDS);
  const definitions: Readonly<Record<string, { readonly summary: string } | undefined>> = DEFINITIONS;
  return (useCase) => definitions[useCase]?.summary ?? said.did[useCase] ?? useCase;
}

function touchedInWords(
  touched: Entry['touched'],
  kinds: Readonly<Record<string, string>>,
  said: (typeof SHOP_WORDS)['en']['journal'],
): string {
  if (touched.length === 0) return said.nothingTouched;
  const names = [...new Set(touched.map(({ kind }) => kinds[kind] ?? kind))];
  return said.touched(touched.length, names.join(', '));
}

interface EntryDialogProps {
  readonly entry: Entry;
  readonly onClose: () => void;
}

function EntryDialog({ entry, onClose }: EntryDialogProps) {
  const { journal: said } = useWords(SHOP_WORDS);
  const doneInWords = useDoneInWords();
  const kinds = useWords(FRAME_WORDS).kinds;
  const figures = useFigures();
  const whoOf = useWho();
  const places = entry.touched.filter(({ kind }) => kind in RECORD_KINDS && kind in kinds);
  return (
    <Dialog open title={doneInWords(entry.useCase)} onClose={onClose}>
      <p>
        {whoOf(entry.by)}, {figures.moment(entry.at)}
      </p>
      {places.length > 0 && (
        <div className={desk.row}>
          {places.map(({ kind, id }) => (
            <Link key={`${kind} ${id}`} {...placeOf({ kind: kind as RecordKind, id })} onClick={onClose}>
              {said.goTo(kinds[kind] ?? kind)}
            </Link>
          ))}
        </div>
      )}
      <h3>{said.asked}</h3>
      <pre className={desk.secret}>{JSON.stringify(entry.input, null, 2)}</pre>
    </Dialog>
  );
}
