import { NativeSelect, Textarea, TextInput } from '@mantine/core';
import { materialInWords } from '../../../contract/index.js';
import { materialOfWrapAlloy, type StringMaterial } from '../../../core/recipes/index.js';
import { stringBody } from '../../../core/string/index.js';
import { useChangedBy } from '../../api/use-changed-by.js';
import type { Doing } from '../../api/use-do.js';
import type { Drafting } from '../../api/use-draft.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { StaleBox } from '../../parts/stale-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { EMPTY_WRAP, type ReadDraft, type RecipeDraft, type WireRecord } from './recipe-draft.js';
import { recipeFields } from './recipe-fields.js';
import { MATERIALS, type RecipeRecord } from './recipe-list.js';

import { useWireNames } from './use-wire-names.js';
import { WrapFields } from './wrap-fields.js';

interface RecipeFormProps {
  readonly drafting: Drafting<RecipeRecord, RecipeDraft>;
  readonly read: ReadDraft;
  readonly wires: readonly WireRecord[];
  readonly save: Doing<'save-recipe'>;
  readonly isLocked: boolean;
  readonly onWrite: (over: RecipeRecord | undefined) => void;
}

/** What the recipe says, to be changed and written down. */
export function RecipeForm({ drafting, read, wires, save, isLocked, onWrite }: RecipeFormProps) {
  const words = useWords(RECIPES_WORDS);
  const tell = useTell();
  const { draft, base, isChanged, newer, begin } = drafting;
  const isSound = read.body !== undefined && stringBody(read.body.construction).ok;
  const discard = () => {
    const kept = draft;
    begin(base);
    tell({ text: words.discarded, undo: () => begin(base, kept) });
  };
  return (
    <section className={desk.part} aria-labelledby="recipe-form">
      <h2 id="recipe-form">{words.edit}</h2>
      {base && base.state !== 'predicted' && <p className="quiet">{words.editLead}</p>}
      <form
        className={desk.stack}
        onSubmit={(event) => {
          event.preventDefault();
          if (isSound && isChanged && !newer && !save.busy) onWrite(base);
        }}
      >
        <fieldset disabled={isLocked} className={desk.bare}>
          <DraftFields drafting={drafting} wires={wires} />
        </fieldset>
        {isChanged && read.faults.size > 0 && (
          <div role="status">
            <p className="quiet">{words.stillMissing}</p>
            <ul className={desk.list}>
              {[...read.faults].map((fault) => (
                <li key={fault}>{words.faults[fault]}</li>
              ))}
            </ul>
          </div>
        )}
        {read.body && !isSound && <p className="care">{words.unsound}</p>}
        {save.problem?.code !== 'stale-version' && <ProblemBox problem={save.problem} />}
        {newer && !save.busy && read.body && (
          <NewerBox drafting={drafting} newer={newer} body={read.body} busy={save.busy} onWrite={onWrite} />
        )}
        {isChanged && !newer && (
          <div className={desk.row}>
            <Button type="submit" kind="main" busy={save.busy} disabled={!isSound || isLocked}>
              {base ? words.save : words.saveNew}
            </Button>
            {base && <Button onClick={discard}>{words.discard}</Button>}
          </div>
        )}
      </form>
    </section>
  );
}

interface NewerBoxProps {
  readonly drafting: RecipeFormProps['drafting'];
  readonly newer: RecipeRecord;
  readonly body: RecipeRecord['body'];
  readonly busy: boolean;
  readonly onWrite: (over: RecipeRecord) => void;
}

function NewerBox({ drafting: { draft, begin }, newer, body, busy, onWrite }: NewerBoxProps) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const wireName = useWireNames();
  const changedBy = useChangedBy(newer.id);
  const tell = useTell();
  const parts = { words, figures, wireName };
  return (
    <StaleBox
      current={recipeFields({ body: newer.body }, parts)}
      yours={recipeFields({ body }, parts)}
      about={words.writtenBy(changedBy(newer.version).who, figures.moment(newer.updatedAt))}
      busy={busy}
      onWriteYours={() => onWrite(newer)}
      onTakeCurrent={() => {
        const kept = draft;
        begin(newer);
        tell({ text: words.tookCurrent, undo: () => begin(newer, kept) });
      }}
    />
  );
}

interface DraftFieldsProps {
  readonly drafting: RecipeFormProps['drafting'];
  readonly wires: readonly WireRecord[];
}

function DraftFields({ drafting: { draft, change }, wires }: DraftFieldsProps) {
  const words = useWords(RECIPES_WORDS);
  const isPlain = draft.material === 'plain-steel';
  const cores = wires.filter(
    ({ body }) =>
      body.use === 'core' && body.strengthTable !== undefined && (!isPlain || body.shape === 'round'),
  );
  const wraps = draft.wraps.length === 0 ? [EMPTY_WRAP] : draft.wraps;
  return (
    <div className={desk.fields}>
      <TextInput
        {...HINT_BELOW}
        label={words.name}
        value={draft.name}
        className={desk.whole}
        onChange={(event) => change({ name: event.currentTarget.value })}
      />
      <TextInput
        {...HINT_BELOW}
        label={words.gauge}
        description={words.gaugeHint}
        value={draft.gauge}
        onChange={(event) => change({ gauge: event.currentTarget.value })}
      />
      <NativeSelect
        {...HINT_BELOW}
        label={words.material}
        value={draft.material}
        data={MATERIALS.map((value) => ({ value, label: materialInWords(value) }))}
        onChange={(event) => change({ material: event.currentTarget.value as StringMaterial, wraps: [] })}
      />
      <NativeSelect
        {...HINT_BELOW}
        label={words.core}
        value={draft.coreWireId}
        data={wireChoices(cores, words.choose)}
        className={desk.whole}
        onChange={(event) => change({ coreWireId: event.currentTarget.value })}
      />
      {!isPlain && (
        <WrapFields
          wraps={wraps}
          inner={wires.filter(({ body }) => body.use === 'wrap')}
          outer={wires.filter(
            ({ body }) => body.use === 'wrap' && materialOfWrapAlloy(body.alloy) === draft.material,
          )}
          onChange={(next) => change({ wraps: next })}
        />
      )}
      <Textarea
        label={words.noteOf}
        value={draft.note}
        autosize={false}
        rows={2}
        className={desk.whole}
        onChange={(event) => change({ note: event.currentTarget.value })}
      />
    </div>
  );
}

const wireChoices = (wires: readonly WireRecord[], choose: string) => [
  { value: '', label: choose },
  ...wires.map(({ id, body }) => ({ value: id, label: body.name })),
];
