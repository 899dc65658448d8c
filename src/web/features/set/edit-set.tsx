import { Link, useNavigate } from '@tanstack/react-router';
import { type FormEvent, useMemo, useState } from 'react';
import type { Shop } from '../../../core/day/index.js';
import { freshId } from '../../api/fresh-id.js';
import { useDo } from '../../api/use-do.js';
import { useDraft } from '../../api/use-draft.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { RoomTitle } from '../../parts/room-title.js';
import { StaleBox } from '../../parts/stale-box.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { gaugeInWords } from '../request/set-words.js';
import { homeOf } from './at-home.js';
import { ChooseGauges } from './choose-gauges.js';
import { DraftFields } from './draft-fields.js';
import { draftOfSet, draftSaysAll, readSetDraft, type SetRecord, withoutRecipe } from './set-draft.js';
import { SetPart } from './set-part.js';
import { fieldsOfSet } from './set-words.js';

interface EditSetProps {
  /** Left out for a new set. */
  readonly record: SetRecord | undefined;
  readonly shop: Shop;
}

/** A set while somebody writes it: what is typed, and the strings that it would have. */
export function EditSet({ record, shop }: EditSetProps) {
  const words = useWords(SETS_WORDS);
  const figures = useFigures();
  const tell = useTell();
  const navigate = useNavigate();
  const saving = useDo('save-set');
  const [id] = useState(() => record?.id ?? freshId());
  const [isTried, setTried] = useState(false);
  const drafting = useDraft(record, (from) => draftOfSet(from, shop));
  const { draft, change, base, newer, begin } = drafting;
  const read = useMemo(() => readSetDraft(draft, shop), [draft, shop]);

  const save = async (over: SetRecord | undefined) => {
    setTried(true);
    if (!read.ok) return;
    const body = read.value;
    const done = await saving.run({ id, ...(over ? { expectedVersion: over.version } : {}), body });
    if (!done.ok) return;
    const { version } = done.value;
    const undo = async () => {
      if (!over) return;
      const undone = await saving.run({ id, expectedVersion: version, body: over.body });
      if (undone.ok) tell({ text: words.edit.undone(over.body.name) });
    };
    tell({ text: words.edit.saved(body.name), ...(over ? { undo } : {}) });
    await navigate({ to: '/sets/$id', params: { id } });
  };

  const isStale = newer !== undefined && saving.problem?.code === 'stale-version';
  return (
    <div className={desk.room}>
      <header className={desk.head}>
        <RoomTitle title={record ? words.edit.title(record.body.name) : words.edit.titleNew} />
        {record ? (
          <Link to="/sets/$id" params={{ id }}>
            {record.body.name}
          </Link>
        ) : (
          <Link to="/sets">{words.room.all}</Link>
        )}
      </header>
      {record && !draftSaysAll(record, shop) && <p className="care">{words.edit.flattened}</p>}
      {!isStale && <ProblemBox problem={saving.problem} />}
      {newer && read.ok && (
        <StaleBox
          current={fieldsOfSet(newer.body, words.versions, figures)}
          yours={fieldsOfSet(read.value, words.versions, figures)}
          busy={saving.busy}
          onWriteYours={() => void save(newer)}
          onTakeCurrent={() => begin(newer)}
        />
      )}
      <form
        className={desk.form}
        onSubmit={(event: FormEvent) => {
          event.preventDefault();
          if (!newer) void save(base);
        }}
      >
        <DraftFields
          draft={draft}
          change={change}
          shop={shop}
          faults={read.ok || !(isTried || drafting.isChanged) ? [] : read.fault}
          isTried={isTried}
        />
        <div className={desk.row}>
          <Button kind="main" type="submit" busy={saving.busy}>
            {words.edit.save}
          </Button>
        </div>
      </form>
      <ChooseGauges
        shop={shop}
        material={draft.material}
        end={draft.end}
        home={record && homeOf(record.body.strings, shop)}
        onTake={(gauges) => change({ gauges })}
      />
      {read.ok && <Preview body={read.value} shop={shop} />}
    </div>
  );
}

/** The set as it would be, strung. */
function Preview({ body, shop }: { readonly body: SetRecord['body']; readonly shop: Shop }) {
  const { edit: words } = useWords(SETS_WORDS);
  const missing = withoutRecipe(body.strings, shop);
  return (
    <section aria-labelledby="preview" className={desk.part}>
      <h2 id="preview">{words.strings}</h2>
      {missing.length > 0 && (
        <p className="care">{words.noRecipe(missing.map((spec) => gaugeInWords(spec)).join(', '))}</p>
      )}
      {missing.length === 0 && <SetPart key={body.strings.length} specs={body.strings} shop={shop} />}
    </section>
  );
}
