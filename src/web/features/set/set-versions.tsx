import { NativeSelect } from '@mantine/core';
import { useState } from 'react';
import { gaugesInWords } from '../../../contract/index.js';
import { useChangedBy } from '../../api/use-changed-by.js';
import { useVersions } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import desk from '../../parts/desk.module.css';
import { fieldsApart } from '../../parts/fields-apart.js';
import { SheetTable } from '../../parts/sheet-table.js';
import { VersionsApart } from '../../parts/versions-apart.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import type { SetRecord } from './set-draft.js';
import { fieldsOfSet } from './set-words.js';

/** Every version that the set had: who wrote it and when, and any two of them side by side. */
export function SetVersions({ record }: { readonly record: SetRecord }) {
  const { versions: words, theSet, list } = useWords(SETS_WORDS);
  const { moment, number } = useFigures();
  const changedBy = useChangedBy(record.id);
  return (
    <section className={desk.part} aria-labelledby="versions">
      <h2 id="versions">{words.title}</h2>
      <Asked question={useVersions('set', record.id)} what={theSet}>
        {(versions) => (
          <>
            <SheetTable
              caption={words.title}
              columns={[
                { heading: words.version, names: true, cell: ({ version }) => number(version) },
                { heading: words.when, whole: true, cell: ({ updatedAt }) => moment(updatedAt) },
                { heading: words.who, cell: ({ version }) => changedBy(version).who },
                { heading: list.gauges, wide: true, cell: ({ body }) => gaugesInWords(body.strings) },
              ]}
              rows={versions.toReversed()}
              rowKey={({ version }) => version}
            />
            {versions.length > 1 && <TwoVersions key={versions.length} versions={versions} />}
          </>
        )}
      </Asked>
    </section>
  );
}

function TwoVersions({ versions }: { readonly versions: readonly SetRecord[] }) {
  const { versions: words } = useWords(SETS_WORDS);
  const figures = useFigures();
  const [pair, setPair] = useState<readonly [number, number]>([versions.length - 1, versions.length]);
  const choices = versions.map(({ version }) => ({
    value: String(version),
    label: words.headings(figures.number(version)),
  }));
  const fieldsOf = (wanted: number) => {
    const found = versions.find(({ version }) => version === wanted);
    return found ? fieldsOfSet(found.body, words, figures) : [];
  };
  return (
    <div className={desk.stack}>
      <div className={desk.narrow}>
        <NativeSelect
          label={words.compare}
          data={choices}
          value={String(pair[0])}
          onChange={(event) => setPair([Number(event.currentTarget.value), pair[1]])}
        />
        <NativeSelect
          label={words.with}
          data={choices}
          value={String(pair[1])}
          onChange={(event) => setPair([pair[0], Number(event.currentTarget.value)])}
        />
      </div>
      <VersionsApart
        caption={words.caption}
        headings={[words.headings(figures.number(pair[0])), words.headings(figures.number(pair[1]))]}
        fields={fieldsApart(fieldsOf(pair[0]), fieldsOf(pair[1]))}
      />
    </div>
  );
}
