import { type ReactNode, useState } from 'react';
import type { BodyOf } from '../../../../contract/index.js';
import { freshId } from '../../../api/fresh-id.js';
import { useChangedBy } from '../../../api/use-changed-by.js';
import { useDo } from '../../../api/use-do.js';
import { useDraft } from '../../../api/use-draft.js';
import type { RecordOf } from '../../../api/use-records.js';
import { Button } from '../../../parts/button.js';
import desk from '../../../parts/desk.module.css';
import { useTell } from '../../../parts/notices.js';
import { ProblemBox } from '../../../parts/problem-box.js';
import { StaleBox } from '../../../parts/stale-box.js';
import { useFigures } from '../../../sight/figures.js';
import { useWords } from '../../../words/language.js';
import { SHOP_WORDS } from '../../../words/shop.js';
import { type FieldSpec, type FormDraft, formInWords, formOf, readForm } from './form-spec.js';
import { SpecForm } from './spec-form.js';

/** Kinds of record that the shop's room keeps by form. */
export type EditedKind = 'machine' | 'wire' | 'bin' | 'instrument' | 'tuning' | 'settings';

interface RecordEditorProps<Kind extends EditedKind> {
  readonly kind: Kind;
  /** Left out for a new one. */
  readonly record?: RecordOf<Kind> | undefined;
  /** What a new one begins with. */
  readonly blank: BodyOf<Kind>;
  readonly specs: readonly FieldSpec[];
  readonly onSaved?: (record: RecordOf<Kind>) => void;
  /** What stands below the form, from the body as it would be now. */
  readonly below?: (body: BodyOf<Kind> | undefined) => ReactNode;
}

/** A record of the shop by form: changed, written down; and where somebody else was faster, both versions and the choice. */
export function RecordEditor<Kind extends EditedKind>(props: RecordEditorProps<Kind>) {
  const { kind, record, blank, specs, onSaved, below } = props;
  const { edit: words } = useWords(SHOP_WORDS);
  const tell = useTell();
  // Each kind has a use case of its own of the same form; the editor is for all of them.
  const save = useDo(`save-${kind}` as 'save-wire');
  const [newId] = useState(freshId);
  const drafting = useDraft(record, (one) => formOf(one?.body ?? blank, specs));
  const { draft, base, isChanged, newer, begin } = drafting;
  const { body, faults } = readForm<BodyOf<Kind>>(base?.body ?? blank, draft, specs);
  const write = async (over: RecordOf<Kind> | undefined) => {
    if (!body) return;
    const answer = await save.run({
      id: over?.id ?? newId,
      ...(over ? { expectedVersion: over.version } : {}),
      body: body as BodyOf<'wire'>,
    });
    if (!answer.ok) return;
    const saved = answer.value as unknown as RecordOf<Kind>;
    begin(saved);
    tell({ text: words.saved(saved.body.name) });
    onSaved?.(saved);
  };
  const putAside = (from: RecordOf<Kind> | undefined, said: string) => {
    const kept = draft;
    begin(from);
    tell({ text: said, undo: () => begin(from, kept) });
  };
  const labels = specs.filter(({ path }) => faults.includes(path)).map(({ label }) => label);
  return (
    <div className={desk.stack}>
      <form
        className={desk.stack}
        onSubmit={(event) => {
          event.preventDefault();
          if (body && isChanged && !newer && !save.busy) void write(base);
        }}
      >
        <SpecForm specs={specs} draft={draft} onChange={drafting.change as (change: FormDraft) => void} />
        {isChanged && labels.length > 0 && (
          <p role="status" className="quiet">
            {words.cannotRead(labels.join('; '))}
          </p>
        )}
        {save.problem?.code !== 'stale-version' && <ProblemBox problem={save.problem} />}
        {newer && !save.busy && (
          <StaleBox
            current={formInWords(formOf(newer.body, specs), specs)}
            yours={formInWords(draft, specs)}
            about={<ChangedWords id={newer.id} version={newer.version} at={newer.updatedAt} />}
            busy={save.busy}
            onWriteYours={() => void write(newer)}
            onTakeCurrent={() => putAside(newer, words.tookCurrent)}
          />
        )}
        {isChanged && !newer && (
          <div className={desk.row}>
            <Button type="submit" kind="main" busy={save.busy} disabled={!body}>
              {words.save}
            </Button>
            {base && <Button onClick={() => putAside(base, words.discarded)}>{words.discard}</Button>}
          </div>
        )}
      </form>
      {below?.(body)}
    </div>
  );
}

interface ChangedWordsProps {
  readonly id: string;
  readonly version: number;
  readonly at: string;
}

function ChangedWords({ id, version, at }: ChangedWordsProps) {
  const { edit: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const changedBy = useChangedBy(id);
  return words.writtenBy(changedBy(version).who, figures.moment(at));
}
