import { gaugesInWords } from '../../../contract/index.js';
import { useChangedBy } from '../../api/use-changed-by.js';
import { useVersions } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { CompareVersions } from '../../parts/compare-versions.js';
import desk from '../../parts/desk.module.css';
import { SheetTable } from '../../parts/sheet-table.js';
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
  const fieldsOf = (wanted: number) => {
    const found = versions.find(({ version }) => version === wanted);
    return found ? fieldsOfSet(found.body, words, figures) : [];
  };
  return (
    <CompareVersions
      count={versions.length}
      words={{
        compare: words.compare,
        with: words.with,
        caption: () => words.caption,
        version: (version) => words.headings(figures.number(version)),
      }}
      fieldsOf={fieldsOf}
    />
  );
}
