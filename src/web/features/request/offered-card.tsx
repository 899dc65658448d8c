import { memo } from 'react';
import { warningInWords } from '../../../contract/index.js';
import { formatFraction } from '../../../core/units/index.js';
import { Button } from '../../parts/button.js';
import { Explained } from '../../parts/explained.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { SETS_WORDS } from '../../words/sets.js';
import { explainLoad } from '../set/explain-string.js';
import type { FormAnswer, OfferedSet } from './answer-form.js';
import { bestAtInWords, givenUpInWords } from './measure-words.js';
import { OfferedStrings } from './offered-strings.js';
import styles from './request-part.module.css';
import { gaugeInWords, gaugesOf } from './set-words.js';

export interface OfferedCardProps {
  readonly rank: number;
  readonly offered: OfferedSet;
  readonly answer: FormAnswer;
  readonly largestN: number;
  /** Whether this is the set that the player was given. */
  readonly isGiven: boolean;
  readonly take?: ((offered: OfferedSet) => void) | undefined;
  readonly takeWords: string;
  readonly busy: boolean;
}

/** One of the sets that answer: its strings, what it does to the neck, what of it is there, and what to be careful of. */
export const OfferedCard = memo(function OfferedCard(props: OfferedCardProps) {
  const { rank, offered, answer, largestN, isGiven, take, takeWords, busy } = props;
  const words = useWords(REQUESTS_WORDS);
  const { set, warnings: all } = offered;
  const warnings = all.filter(({ code }) => code !== 'octaves-assumed');
  const bestAt = bestAtInWords(
    set,
    answer.sets.map((each) => each.set),
    words,
  );
  return (
    <article aria-labelledby={`offer-${rank}`} className={styles.card}>
      <p className={styles.rank}>
        {words.answer.rank(rank)}
        {isGiven && <span className={styles.given}> ● {words.answer.given}</span>}
      </p>
      <h3 id={`offer-${rank}`}>{gaugesOf(set)}</h3>
      <Together offered={offered} answer={answer} />
      <OfferedStrings offered={offered} answer={answer} largestN={largestN} />
      <ShelfLine offered={offered} quantity={answer.quantity} />
      {warnings.length > 0 && (
        <ul className={styles.warnings}>
          {warnings.map((warning) => (
            <li key={JSON.stringify(warning)}>{warningInWords(warning)}</li>
          ))}
        </ul>
      )}
      {bestAt.length > 0 && <p className="small">{words.answer.ofThese(bestAt.join(', '))}</p>}
      {set.givesUp.length > 0 && (
        <p className="small quiet">
          {words.answer.givesUp(set.givesUp.map((given) => givenUpInWords(given, words)).join('; '))}
        </p>
      )}
      {take && (
        <div className={styles.take}>
          <Button kind={rank === 1 ? 'main' : 'plain'} busy={busy} onClick={() => take(offered)}>
            {takeWords}
            <span className="unseen">: {gaugesOf(set)}</span>
          </Button>
        </div>
      )}
    </article>
  );
});

function Together({ offered: { set }, answer }: Pick<OfferedCardProps, 'offered' | 'answer'>) {
  const { answer: words } = useWords(REQUESTS_WORDS);
  const { how } = useWords(SETS_WORDS);
  const figures = useFigures();
  const { likedTensionN } = answer.answer;
  return (
    <p>
      {words.together}{' '}
      <Explained
        name={how.loadOf}
        how={() =>
          explainLoad({ strings: set.strings.length, referenceN: likedTensionN }, { words: how, figures })
        }
      >
        {figures.pull(set.totalTensionN)}
      </Explained>
      {likedTensionN !== undefined && `, ${changeInWords(set.totalTensionN / likedTensionN - 1, words)}`}
    </p>
  );
}

function changeInWords(share: number, words: { more: string; less: string; same: string }): string {
  const figure = formatFraction(Math.abs(share), 1);
  if (figure === formatFraction(0, 1)) return words.same;
  return `${figure} ${share > 0 ? words.more : words.less}`;
}

/** What of so many sets must be wound first. */
function ShelfLine({
  offered: { set },
  quantity,
}: Pick<OfferedCardProps, 'offered'> & { readonly quantity: number }) {
  const { answer: words } = useWords(REQUESTS_WORDS);
  const short = set.strings.filter(({ candidate }) => candidate.onShelf < quantity);
  return (
    <p>
      {short.length === 0
        ? words.allOnShelf(quantity)
        : words.mustWind(short.map(({ candidate }) => gaugeInWords(candidate)).join(', '))}
    </p>
  );
}
