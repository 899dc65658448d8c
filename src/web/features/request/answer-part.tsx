import { memo } from 'react';
import { warningInWords } from '../../../contract/index.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import type { FormAnswer, OfferedSet } from './answer-form.js';
import { LikedTable } from './liked-table.js';
import { OfferedCard } from './offered-card.js';
import styles from './request-part.module.css';
import { gaugesOf } from './set-words.js';
import { useScaleWords } from './use-scale-words.js';

interface AnswerPartProps {
  readonly answer: FormAnswer;
  /** Keys of the set that the player was given, where one was. */
  readonly given?: readonly string[] | undefined;
  /** Left out for those who may look and not answer. */
  readonly take?: ((offered: OfferedSet) => void) | undefined;
  readonly busy: boolean;
}

/** The best sets side by side, each against what is wished, and what is liked beside them. */
export const AnswerPart = memo(function AnswerPart({ answer, given, take, busy }: AnswerPartProps) {
  const words = useWords(REQUESTS_WORDS).answer;
  const largestN = fullBarN(answer.sets);
  const best = answer.sets[0];
  return (
    <section aria-labelledby="answers" className={styles.answer}>
      <h2 id="answers">{words.title}</h2>
      <p role="status" className="unseen">
        {best && words.bestIs(gaugesOf(best.set))}
      </p>
      {toldOfAll(answer.sets).map((warning) => (
        <p key={JSON.stringify(warning)} className={styles.told}>
          {warningInWords(warning)}
        </p>
      ))}
      {answer.isLikedScaleAssumed && <LikedScale answer={answer} />}
      <div className={styles.sets}>
        {answer.sets.map((offered, at) => (
          <OfferedCard
            // By its place: a slider changes a card into another, and most of its strings stay.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            key={at}
            rank={at + 1}
            offered={offered}
            answer={answer}
            largestN={largestN}
            isGiven={given !== undefined && given.join() === offered.keys.join()}
            take={take}
            takeWords={given ? words.takeAnew : words.take}
            busy={busy}
          />
        ))}
      </div>
      <LikedTable answer={answer} />
    </section>
  );
});

/** A set feels as it does by the scale it is on: what nobody said of it must not pass unseen. */
function LikedScale({ answer: { request } }: { readonly answer: FormAnswer }) {
  const { likedScaleAssumed } = useWords(REQUESTS_WORDS).answer;
  const scales = useScaleWords();
  if (!request.reference) return null;
  return <p className={styles.told}>{likedScaleAssumed(scales(request.reference.instrument))}</p>;
}

/** What is to be told of the request itself, whichever set is taken. */
const toldOfAll = (sets: readonly OfferedSet[]) =>
  (sets[0]?.warnings ?? []).filter(({ code }) => code === 'octaves-assumed');

/** What a full bar means: the largest pull, up to a round figure, so that bars do not all change with each step of a slider. */
function fullBarN(sets: readonly OfferedSet[]): number {
  const pulls = sets.flatMap(({ set }) =>
    set.strings.flatMap(({ tensionN, wishedTensionN }) => [tensionN, wishedTensionN]),
  );
  return Math.ceil(Math.max(...pulls) / ROUND_N) * ROUND_N;
}

const ROUND_N = 20;
