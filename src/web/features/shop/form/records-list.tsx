import { TextInput } from '@mantine/core';
import { type ReactNode, useState } from 'react';
import type { BodyOf } from '../../../../contract/index.js';
import { type RecordOf, useAllRecords } from '../../../api/use-records.js';
import { Asked } from '../../../parts/asked.js';
import { Button } from '../../../parts/button.js';
import desk from '../../../parts/desk.module.css';
import { Empty } from '../../../parts/empty.js';
import { type LongColumn, LongTable } from '../../../parts/long-table.js';
import { useFigures } from '../../../sight/figures.js';
import { useWords } from '../../../words/language.js';
import { SHOP_WORDS } from '../../../words/shop.js';
import type { FieldSpec } from './form-spec.js';
import { type EditedKind, RecordEditor } from './record-editor.js';

export interface Blank<Kind extends EditedKind> {
  readonly label: string;
  readonly body: BodyOf<Kind>;
}

interface RecordsListProps<Kind extends EditedKind> {
  readonly kind: Kind;
  readonly caption: string;
  /** Beside the name, which opens the record. */
  readonly columns: readonly LongColumn<RecordOf<Kind>>[];
  readonly nameHeading: string;
  /** What a new one may begin with; more than one where there are several forms of it. */
  readonly blanks: readonly Blank<Kind>[];
  readonly specsOf: (body: BodyOf<Kind>) => readonly FieldSpec[];
  readonly below?: (body: BodyOf<Kind> | undefined, record: RecordOf<Kind> | undefined) => ReactNode;
  readonly inOrder?: (a: RecordOf<Kind>, b: RecordOf<Kind>) => number;
}

/** The records of a kind as a list, and one of them as a form. */
export function RecordsList<Kind extends EditedKind>(props: RecordsListProps<Kind>) {
  const { kind, caption, blanks, specsOf, below } = props;
  const words = useWords(SHOP_WORDS);
  const figures = useFigures();
  const records = useAllRecords(kind);
  const [opened, setOpened] = useState<{ readonly id: string } | { readonly blank: BodyOf<Kind> }>();
  return (
    <Asked question={records} what={caption}>
      {(all) => {
        if (opened === undefined) {
          return (
            <List
              {...props}
              records={all}
              onOpen={(id) => setOpened({ id })}
              onNew={(blank) => setOpened({ blank })}
              blanks={blanks}
            />
          );
        }
        const record = 'id' in opened ? all.find(({ id }) => id === opened.id) : undefined;
        const blank = ('blank' in opened ? opened.blank : (record?.body ?? blanks[0]!.body)) as BodyOf<Kind>;
        return (
          <div className={desk.stack}>
            <div className={desk.head}>
              <div>
                <h2>{record?.body.name ?? blanks.find(({ body }) => body === blank)?.label}</h2>
                {record && (
                  <p className="quiet">
                    {words.edit.version(record.version, figures.moment(record.updatedAt))}
                  </p>
                )}
              </div>
              <Button onClick={() => setOpened(undefined)}>{words.edit.back}</Button>
            </div>
            <RecordEditor<Kind>
              key={record?.id ?? 'new'}
              kind={kind}
              record={record}
              blank={blank}
              specs={specsOf(blank)}
              onSaved={({ id }) => setOpened({ id })}
              {...(below ? { below: (body) => below(body, record) } : {})}
            />
          </div>
        );
      }}
    </Asked>
  );
}

interface ListProps<Kind extends EditedKind> extends RecordsListProps<Kind> {
  readonly records: readonly RecordOf<Kind>[];
  readonly onOpen: (id: string) => void;
  readonly onNew: (blank: BodyOf<Kind>) => void;
}

function List<Kind extends EditedKind>(props: ListProps<Kind>) {
  const { caption, columns, nameHeading, blanks, records, inOrder, onOpen, onNew } = props;
  const words = useWords(SHOP_WORDS);
  const [text, setText] = useState('');
  const sought = text.trim().toLowerCase();
  const shown = records
    .filter(({ body }) => body.name.toLowerCase().includes(sought))
    .toSorted(inOrder ?? ((a, b) => (a.body.name < b.body.name ? -1 : 1)));
  const name: LongColumn<RecordOf<Kind>> = {
    heading: nameHeading,
    share: 3,
    cell: ({ id, body }) => (
      <button type="button" className={desk.linked} onClick={() => onOpen(id)}>
        {body.name}
      </button>
    ),
  };
  return (
    <div className={desk.stack}>
      <div className={desk.narrow}>
        <TextInput label={words.find} value={text} onChange={(event) => setText(event.currentTarget.value)} />
        <p role="status" className={`quiet ${desk.loose}`}>
          {words.counted(shown.length, records.length)}
        </p>
        {blanks.map(({ label, body }) => (
          <div key={label} className={desk.loose}>
            <Button onClick={() => onNew(body)}>{label}</Button>
          </div>
        ))}
      </div>
      {shown.length === 0 ? (
        <Empty what={records.length === 0 ? words.noneYet : words.nothing} />
      ) : (
        <LongTable caption={caption} columns={[name, ...columns]} rows={shown} rowKey={({ id }) => id} />
      )}
    </div>
  );
}
