import { Textarea } from '@mantine/core';
import { useState } from 'react';
import { stepsFrom } from '../../../core/foundation/index.js';
import { RECIPE_LIFE } from '../../../core/stock/index.js';
import { useMay } from '../../api/session.js';
import { useDo } from '../../api/use-do.js';
import { Button } from '../../parts/button.js';
import desk from '../../parts/desk.module.css';
import { Dialog } from '../../parts/dialog.js';
import { useTell } from '../../parts/notices.js';
import { ProblemBox } from '../../parts/problem-box.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import type { RecipeRecord } from './recipe-list.js';

type Step = 'try' | 'calibrate' | 'retire' | 'revive';

interface StepsPartProps {
  readonly record: RecipeRecord;
  readonly isChanged: boolean;
}

/** Where the recipe stands, and the steps that may be taken from there. */
export function StepsPart({ record, isChanged }: StepsPartProps) {
  const words = useWords(RECIPES_WORDS);
  const may = useMay();
  const [wanted, setWanted] = useState<Step>();
  const steps = stepsFrom(RECIPE_LIFE, record.state).filter((step): step is Step => step !== 'edit');
  return (
    <section className={desk.part} aria-labelledby="approval">
      <h2 id="approval">{words.approval}</h2>
      <p>{words.approvalNow(words.states[record.state] ?? record.state)}</p>
      {!may('recipe.approve') && <p className="quiet">{words.noMoreSteps}</p>}
      {may('recipe.approve') && isChanged && <p className="quiet">{words.saveFirst}</p>}
      {may('recipe.approve') && !isChanged && (
        <div className={desk.row}>
          {steps.map((step) => (
            <Button key={step} onClick={() => setWanted(step)}>
              {words.steps[step]}
            </Button>
          ))}
        </div>
      )}
      {wanted && (
        <StepDialog key={wanted} record={record} step={wanted} onClose={() => setWanted(undefined)} />
      )}
    </section>
  );
}

interface StepDialogProps {
  readonly record: RecipeRecord;
  readonly step: Step;
  readonly onClose: () => void;
}

function StepDialog({ record, step, onClose }: StepDialogProps) {
  const words = useWords(RECIPES_WORDS);
  const tell = useTell();
  const take = useDo('step-recipe');
  const [note, setNote] = useState(record.body.note);
  const confirm = async () => {
    const answer = await take.run({ id: record.id, expectedVersion: record.version, step, note });
    if (!answer.ok) return;
    const { body, state } = answer.value;
    tell({ text: words.stepped(body.name, words.states[state] ?? state) });
    onClose();
  };
  return (
    <Dialog
      open
      title={`${words.steps[step]}: ${record.body.name}`}
      onClose={onClose}
      actions={
        <Button kind="main" busy={take.busy} onClick={() => void confirm()}>
          {words.steps[step]}
        </Button>
      }
    >
      <p>{words.stepMeans[step]}</p>
      <Textarea
        label={words.stepNote}
        rows={3}
        value={note}
        onChange={(event) => setNote(event.currentTarget.value)}
      />
      <ProblemBox problem={take.problem} />
    </Dialog>
  );
}
