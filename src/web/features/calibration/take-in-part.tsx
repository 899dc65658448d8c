import { Checkbox } from '@mantine/core';
import { useState } from 'react';
import type { CalibrationView } from '../../../contract/index.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';

type Ready = CalibrationView['recipes'][number];
type Settings = NonNullable<CalibrationView['settings']>;

/** What a person saw when they said yes: versions of theirs, so that what was changed since is found. */
interface Wanted {
  readonly settings: Settings;
  readonly recipes: readonly Ready[];
}

/** The owner's part: to reckon by what was learned from now on, and to call recipes calibrated that meet the rule. */
export function TakeInPart({ view }: { readonly view: CalibrationView }) {
  const words = useWords(CALIBRATION_WORDS);
  const figures = useFigures();
  const [leftOut, setLeftOut] = useState<ReadonlySet<string>>(new Set());
  const [wanted, setWanted] = useState<Wanted>();
  const { settings } = view;
  const ready = view.recipes.filter(({ suggests }) => suggests === 'calibrate');
  const chosen = ready.filter(({ recipeId }) => !leftOut.has(recipeId));
  const woundNow = view.families.reduce((sum, { strings }) => sum + strings, 0);
  const asSeen = (): Wanted | undefined => settings && { settings, recipes: chosen };
  return (
    <section className={desk.part} aria-labelledby="take-in">
      <h2 id="take-in">{words.takeIn.title}</h2>
      <p className={desk.lead}>
        {words.takeIn.lead(figures.number(woundNow), figures.number(settings?.strings ?? 0))}
      </p>
      {ready.length === 0 ? (
        <p>{words.takeIn.noneReady}</p>
      ) : (
        <fieldset className={desk.bare}>
          <legend className={desk.label}>{words.takeIn.which}</legend>
          <div className={desk.fields}>
            {ready.map((recipe) => (
              <Checkbox
                key={recipe.recipeId}
                label={recipe.name}
                description={words.takeIn.known(
                  recipe.strings,
                  recipe.runs,
                  figures.slight(recipe.halfIntervalM),
                )}
                checked={!leftOut.has(recipe.recipeId)}
                onChange={() => setLeftOut(toggled(leftOut, recipe.recipeId))}
              />
            ))}
          </div>
        </fieldset>
      )}
      {settings ? (
        <div className={desk.row}>
          <Button kind="main" onClick={() => setWanted(asSeen())}>
            {words.takeIn.button}
          </Button>
          <p className="quiet">{words.takeIn.count(chosen.length)}</p>
        </div>
      ) : (
        <p>{words.takeIn.noSettings}</p>
      )}
      {wanted && (
        <TakeInDialog
          wanted={wanted}
          families={view.families.length}
          onAgain={() => setWanted(asSeen())}
          onClose={() => setWanted(undefined)}
        />
      )}
    </section>
  );
}

interface TakeInDialogProps {
  readonly wanted: Wanted;
  readonly families: number;
  /** Takes what stands now as what was seen. */
  readonly onAgain: () => void;
  readonly onClose: () => void;
}

function TakeInDialog({ wanted, families, onAgain, onClose }: TakeInDialogProps) {
  const words = useWords(CALIBRATION_WORDS);
  const tell = useTell();
  const take = useDo('recalibrate-shop');
  const { settings, recipes } = wanted;
  const isStale = take.problem?.code === 'stale-version';
  const confirm = async () => {
    const answer = await take.run({
      settingsId: settings.id,
      expectedVersion: settings.version,
      recipes: recipes.map(({ recipeId, version }) => ({ id: recipeId, expectedVersion: version })),
    });
    if (!answer.ok) return;
    tell({ text: words.takeIn.done(answer.value.recipes.length) });
    onClose();
  };
  const lookAgain = () => {
    take.forget();
    onAgain();
  };
  return (
    <Dialog
      open
      title={words.takeIn.button}
      onClose={onClose}
      actions={
        <Button kind="main" busy={take.busy} onClick={isStale ? lookAgain : () => void confirm()}>
          {isStale ? words.takeIn.lookAgain : words.takeIn.confirm}
        </Button>
      }
    >
      <p>{words.takeIn.means(families)}</p>
      {recipes.length > 0 && (
        <>
          <p>{words.takeIn.recipes(recipes.length)}</p>
          <ul className={desk.list}>
            {recipes.map(({ recipeId, name }) => (
              <li key={recipeId}>{name}</li>
            ))}
          </ul>
        </>
      )}
      <p className="quiet">{words.takeIn.lasting}</p>
      <ProblemBox problem={take.problem} />
      {isStale && <p>{words.takeIn.stale}</p>}
    </Dialog>
  );
}

function toggled(set: ReadonlySet<string>, id: string): ReadonlySet<string> {
  const next = new Set(set);
  if (!next.delete(id)) next.add(id);
  return next;
}
