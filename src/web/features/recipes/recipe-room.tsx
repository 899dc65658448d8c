import { Link, useNavigate } from '@tanstack/react-router';
import { useMemo, useState } from 'react';
import { freshId } from '../../api/fresh-id.js';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { useDraft } from '../../api/use-draft.js';
import { useAllRecords } from '../../api/use-records.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { RoomTitle } from '../../parts/room-title.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { PredictionPart } from './prediction-part.js';
import { draftOf, EMPTY_DRAFT, readDraft, type WireRecord } from './recipe-draft.js';
import { RecipeForm } from './recipe-form.js';
import type { RecipeRecord } from './recipe-list.js';
import { RecipeState } from './recipe-state.js';
import { RunsPart } from './runs-part.js';
import { StepsPart } from './steps-part.js';
import { useSounding } from './use-sounding.js';
import { VersionsPart } from './versions-part.js';
import { WaysPart } from './ways-part.js';

interface RecipeRoomProps {
  readonly wires: readonly WireRecord[];
  /** Left out for a new one. */
  readonly record?: RecipeRecord;
}

/** One recipe: what it says, what comes of it, other ways to make the same gauge, its life and its versions. */
export function RecipeRoom({ wires, record }: RecipeRoomProps) {
  const words = useWords(RECIPES_WORDS);
  const may = useMay();
  const tell = useTell();
  const navigate = useNavigate();
  const save = useDo('save-recipe');
  const [newId] = useState(freshId);
  const byId = useMemo(() => new Map(wires.map((wire) => [wire.id, wire])), [wires]);
  const drafting = useDraft(record, (one) => (one ? draftOf(one.body) : EMPTY_DRAFT));
  const { draft, base, isChanged, begin } = drafting;
  const read = readDraft(draft, byId);
  const seat = useAllRecords('settings').data?.[0]?.body.seat;
  const sounding = useSounding(read.body, seat);
  const mayWrite = may('recipe.edit');
  const mayEdit = mayWrite && base?.state !== 'retired';

  const write = async (over: RecipeRecord | undefined) => {
    if (!read.body) return;
    const answer = await save.run({
      id: over?.id ?? newId,
      ...(over ? { expectedVersion: over.version } : {}),
      body: read.body,
    });
    if (!answer.ok) return;
    begin(answer.value);
    tell({ text: words.saved(answer.value.body.name, answer.value.version) });
    if (!over) await navigate({ to: '/recipes/$id', params: { id: answer.value.id }, replace: true });
  };

  return (
    <div className={desk.room}>
      <RecipeHead record={base} isChanged={isChanged && base !== undefined} />
      <div className={mayWrite ? desk.beside : desk.stack}>
        {mayWrite && (
          <RecipeForm
            drafting={drafting}
            read={read}
            wires={wires}
            save={save}
            isLocked={!mayEdit}
            onWrite={(over) => void write(over)}
          />
        )}
        <PredictionPart body={read.body} seat={seat} sounding={sounding} wires={byId} />
      </div>
      <WaysPart
        draft={draft}
        wires={wires}
        seat={seat}
        sounding={sounding}
        {...(mayEdit ? { onTake: drafting.change } : {})}
      />
      {base && <StepsPart record={base} isChanged={isChanged} />}
      {base && may('run.read') && <RunsPart recipeId={base.id} />}
      {base && <VersionsPart record={base} />}
    </div>
  );
}

function RecipeHead({
  record,
  isChanged,
}: {
  readonly record: RecipeRecord | undefined;
  readonly isChanged: boolean;
}) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  return (
    <div className={desk.head}>
      <div>
        <RoomTitle title={record?.body.name ?? words.newOne} />
        {record && (
          <p className={desk.about}>
            <RecipeState state={record.state} />
            <span className="quiet">
              {words.versionAbout(record.version, figures.moment(record.updatedAt))}
            </span>
            {isChanged && <span className="care">{words.unsaved}</span>}
          </p>
        )}
      </div>
      <Link to="/recipes">{words.all}</Link>
    </div>
  );
}
