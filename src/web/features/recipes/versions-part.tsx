import { useChangedBy } from '../../api/use-changed-by.js';
import { useVersions } from '../../api/use-records.js';
import { Asked } from '../../parts/asked.js';
import { CompareVersions } from '../../parts/compare-versions.js';
import desk from '../../parts/desk.module.css';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { recipeFields } from './recipe-fields.js';
import type { RecipeRecord } from './recipe-list.js';
import { RecipeState } from './recipe-state.js';
import { useWireNames } from './use-wire-names.js';

/** Every version that the recipe had: who wrote it and when, and any two of them side by side. */
export function VersionsPart({ record }: { readonly record: RecipeRecord }) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const changedBy = useChangedBy(record.id);
  const versions = useVersions('recipe', record.id);
  const { versionColumns: heads } = words;
  const columns: readonly SheetColumn<RecipeRecord>[] = [
    { heading: heads.version, names: true, cell: ({ version }) => version },
    { heading: heads.when, whole: true, cell: ({ updatedAt }) => figures.moment(updatedAt) },
    { heading: heads.who, cell: ({ version }) => changedBy(version).who },
    {
      heading: heads.what,
      cell: ({ version }) => {
        const { useCase } = changedBy(version);
        return words.did[useCase] ?? (useCase || '—');
      },
    },
    { heading: heads.state, cell: ({ state }) => <RecipeState state={state} /> },
    { heading: heads.note, wide: true, cell: ({ body }) => body.note || '—' },
  ];
  return (
    <section className={desk.part} aria-labelledby="versions">
      <h2 id="versions">{words.versions}</h2>
      <Asked question={versions} what={words.versions}>
        {(items) => (
          <>
            <SheetTable
              caption={words.versions}
              columns={columns}
              rows={items.toReversed()}
              rowKey={({ version }) => version}
            />
            {items.length > 1 && <Compare key={items.length} versions={items} />}
          </>
        )}
      </Asked>
    </section>
  );
}

function Compare({ versions }: { readonly versions: readonly RecipeRecord[] }) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const wireName = useWireNames();
  const { compare, compareWith, compareCaption: caption, versionNumber: version } = words;
  const fieldsOf = (wanted: number) => {
    const found = versions.find((each) => each.version === wanted);
    return found ? recipeFields(found, { words, figures, wireName }) : [];
  };
  return (
    <CompareVersions
      count={versions.length}
      words={{ compare, with: compareWith, caption, version }}
      fieldsOf={fieldsOf}
    />
  );
}
