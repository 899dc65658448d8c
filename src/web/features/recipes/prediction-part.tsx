import { TextInput } from '@mantine/core';
import type { BodyOf } from '../../../contract/index.js';
import type { SeatModel } from '../../../core/string/index.js';
import { useShop } from '../../api/use-shop.js';
import desk from '../../parts/desk.module.css';
import { Facts } from '../../parts/facts.js';
import { HINT_BELOW } from '../../parts/hint-below.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { predict } from './prediction.js';
import { predictionFacts } from './prediction-facts.js';
import type { WireRecord } from './recipe-draft.js';
import { SectionFigure } from './section-figure.js';
import { type ChosenSounding, noteInWords } from './use-sounding.js';

interface PredictionPartProps {
  /** Undefined while the recipe cannot be read yet. */
  readonly body: BodyOf<'recipe'> | undefined;
  readonly seat: SeatModel | undefined;
  readonly sounding: ChosenSounding;
  readonly wires: ReadonlyMap<string, WireRecord>;
}

/** The string that the recipe makes: drawn to scale, and its figures on a scale and at a note that one may choose. */
export function PredictionPart({ body, seat, sounding: chosen, wires }: PredictionPartProps) {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const rules = useShop().data?.rules;
  if (!body) return null;
  const predicted = chosen.sounding && predict(body, chosen.sounding, seat);
  return (
    <section className={desk.part} aria-labelledby="prediction">
      <h2 id="prediction">{words.prediction}</h2>
      <SectionFigure construction={body.construction} seat={seat} />
      <div className={desk.fields}>
        <TextInput
          {...HINT_BELOW}
          label={words.scale}
          description={words.scaleHint}
          value={chosen.scale}
          error={chosen.isScaleRead ? undefined : words.scaleFault}
          onChange={(event) => chosen.setScale(event.currentTarget.value)}
        />
        <TextInput
          {...HINT_BELOW}
          label={words.note}
          description={
            chosen.usual && chosen.note.trim() === ''
              ? words.noteUsual(noteInWords(chosen.usual))
              : words.noteHint
          }
          value={chosen.note}
          error={chosen.isNoteRead ? undefined : words.noteFault}
          onChange={(event) => chosen.setNote(event.currentTarget.value)}
        />
      </div>
      {predicted?.ok && chosen.sounding && (
        <>
          <Facts
            facts={predictionFacts(predicted.value, {
              recipe: body,
              words,
              figures,
              wireName: (id) => wires.get(id)?.body.name ?? '…',
              noteName: noteInWords(chosen.sounding.pitch),
              stressLimit: rules?.stressLimit,
            })}
          />
          <p className="quiet small">{words.doubt}</p>
        </>
      )}
    </section>
  );
}
