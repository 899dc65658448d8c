import { memo } from 'react';
import { feelInWords } from '../../../contract/index.js';
import type { RecipeState } from '../../../core/recipes/index.js';
import type { ChosenString } from '../../../core/sets/index.js';
import { formatFraction, pitchName } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { PullBar } from '../../parts/pull-bar.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { SETS_WORDS } from '../../words/sets.js';
import { explainPull, explainStress } from '../set/explain-string.js';
import { useRecipeStates } from '../set/use-recipe-states.js';
import type { FormAnswer, OfferedSet } from './answer-form.js';
import styles from './request-part.module.css';
import { gaugeInWords } from './set-words.js';

interface OfferedStringsProps {
  readonly offered: OfferedSet;
  readonly answer: FormAnswer;
  readonly largestN: number;
}

/** The strings of a set that answers: each with its pull beside the one wished, its stress, and how it will feel. */
export function OfferedStrings({ offered: { set, figures }, answer, largestN }: OfferedStringsProps) {
  const { answer: words } = useWords(REQUESTS_WORDS);
  const stateOf = useRecipeStates();
  return (
    <table className={styles.strings}>
      <thead>
        <tr>
          <th scope="col">{words.note}</th>
          <th scope="col">{words.gauge}</th>
          <th scope="col">{words.pull}</th>
          <th scope="col">{words.stress}</th>
        </tr>
      </thead>
      <tbody>
        {set.strings.map(({ position, candidate, tensionN, wishedTensionN, stressShare }, at) => {
          const pitch = answer.request.tuning.pitches[at];
          const own = figures[at];
          return (
            <OfferedString
              key={position}
              position={position}
              note={pitch ? pitchName(pitch) : ''}
              candidate={candidate}
              tensionN={tensionN}
              wishedTensionN={wishedTensionN}
              stressShare={stressShare}
              speakingLengthM={own?.speakingLengthM ?? 0}
              frequencyHz={own?.frequencyHz ?? 0}
              feel={own ? feelInWords(own) : ''}
              quantity={answer.quantity}
              largestN={largestN}
              stateOf={stateOf}
            />
          );
        })}
      </tbody>
    </table>
  );
}

interface OfferedStringProps
  extends Pick<ChosenString, 'position' | 'candidate' | 'tensionN' | 'wishedTensionN' | 'stressShare'> {
  readonly note: string;
  readonly speakingLengthM: number;
  readonly frequencyHz: number;
  readonly feel: string;
  readonly quantity: number;
  readonly largestN: number;
  readonly stateOf: (recipeId: string) => RecipeState;
}

/** One string. Of a set that a slider changes, most strings stay: they are not drawn again. */
const OfferedString = memo(function OfferedString(props: OfferedStringProps) {
  const { position, note, candidate, tensionN, wishedTensionN, stressShare, feel, quantity, largestN } =
    props;
  const { answer: words } = useWords(REQUESTS_WORDS);
  const { how } = useWords(SETS_WORDS);
  const figures = useFigures();
  const { linearDensityKgPerM, breakingLoadN, onShelf, recipeId } = candidate;
  const { speakingLengthM, frequencyHz, stateOf } = props;
  const teller = { words: how, figures };
  const pullTold = () =>
    explainPull({ linearDensityKgPerM, speakingLengthM, frequencyHz, state: stateOf(recipeId) }, teller);
  return (
    <tr>
      <th scope="row">{note}</th>
      <td className={styles.gauge}>
        <strong>{gaugeInWords(candidate)}</strong>
        <br />
        <span className={onShelf >= quantity ? 'quiet' : undefined}>
          {onShelf > 0 ? words.onShelf(figures.number(onShelf)) : words.toWind}
        </span>
      </td>
      <td>
        <PullBar nowN={tensionN} wishedN={wishedTensionN} largestN={largestN} />
        <Explained name={how.pullOf(how.string(position))} how={pullTold}>
          {figures.pull(tensionN)}
        </Explained>{' '}
        <span className="quiet">({figures.pull(wishedTensionN)})</span>
        {feel !== '' && (
          <>
            <br />
            <span className="quiet">{feel}</span>
          </>
        )}
      </td>
      <td className={styles.share}>
        {stressShare === undefined ? (
          words.unknown
        ) : (
          <Explained
            name={how.stressOf(how.string(position))}
            how={() => explainStress({ tensionN, breakingLoadN }, teller)}
          >
            {formatFraction(stressShare)}
          </Explained>
        )}
      </td>
    </tr>
  );
});
