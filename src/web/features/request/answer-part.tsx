import { warningInWords } from '../../../contract/index.js';
import { formatFraction, pitchName } from '../../../core/units/index.js';
import { useForceWords } from '../../parts/force-unit.js';
import { PullBar } from '../../parts/pull-bar.js';
import type { FormAnswer, OfferedSet } from './answer-form.js';
import { likedPullsN } from './liked-pulls.js';
import { bestAtInWords, givenUpInWords } from './measure-words.js';
import styles from './request-part.module.css';
import { changeInWords, gaugeInWords, gaugesOf } from './set-words.js';

/** The best sets side by side, each against what is wished, and what is liked beside them. */
export function AnswerPart({ answer }: { readonly answer: FormAnswer }) {
  const largestN = Math.max(
    ...answer.sets.flatMap(({ set }) =>
      set.strings.flatMap(({ tensionN, wishedTensionN }) => [tensionN, wishedTensionN]),
    ),
  );
  const best = answer.sets[0];
  const common = toldOfAll(answer.sets);
  return (
    <div className={styles.answer}>
      <p role="status" className="unseen">
        {best && `Best: ${gaugesOf(best.set)}`}
      </p>
      {common.map((warning) => (
        <p key={JSON.stringify(warning)} className={styles.told}>
          {warningInWords(warning)}
        </p>
      ))}
      <div className={styles.sets}>
        {answer.sets.map((offered, at) => (
          <OfferedCard
            key={gaugesOf(offered.set)}
            rank={at + 1}
            offered={offered}
            answer={answer}
            largestN={largestN}
          />
        ))}
      </div>
      <LikedTable answer={answer} />
    </div>
  );
}

/** What is to be told of the request itself, whichever set is taken. */
const toldOfAll = (sets: readonly OfferedSet[]) =>
  (sets[0]?.warnings ?? []).filter(({ code }) => code === 'octaves-assumed');

interface OfferedCardProps {
  readonly rank: number;
  readonly offered: OfferedSet;
  readonly answer: FormAnswer;
  readonly largestN: number;
}

function OfferedCard({ rank, offered: { set, warnings: all }, answer, largestN }: OfferedCardProps) {
  const force = useForceWords();
  const shown = answer.sets.map((each) => each.set);
  const warnings = all.filter(({ code }) => code !== 'octaves-assumed');
  const bestAt = bestAtInWords(set, shown);
  const { likedTensionN } = answer.answer;
  return (
    <article aria-labelledby={`offer-${rank}`} className={styles.card}>
      <p className={styles.rank}>{rank === 1 ? 'Best' : `Choice ${rank}`}</p>
      <h2 id={`offer-${rank}`}>{gaugesOf(set)}</h2>
      <p>
        All together {force(set.totalTensionN)}
        {likedTensionN !== undefined && `, ${changeInWords(set.totalTensionN, likedTensionN)}`}
      </p>
      <OfferedStrings set={set} answer={answer} largestN={largestN} />
      {warnings.length > 0 && (
        <ul className={styles.warnings}>
          {warnings.map((warning) => (
            <li key={JSON.stringify(warning)}>{warningInWords(warning)}</li>
          ))}
        </ul>
      )}
      {bestAt.length > 0 && <p className="small">Of these it is {bestAt.join(', ')}.</p>}
      {set.givesUp.length > 0 && (
        <p className="small quiet">Gives up: {set.givesUp.map(givenUpInWords).join('; ')}.</p>
      )}
    </article>
  );
}

interface OfferedStringsProps {
  readonly set: OfferedSet['set'];
  readonly answer: FormAnswer;
  readonly largestN: number;
}

function OfferedStrings({ set, answer, largestN }: OfferedStringsProps) {
  const force = useForceWords();
  return (
    <table className={styles.strings}>
      <thead>
        <tr>
          <th scope="col">Note</th>
          <th scope="col">Gauge</th>
          <th scope="col">Pull (wished)</th>
          <th scope="col">Stress</th>
        </tr>
      </thead>
      <tbody>
        {set.strings.map(({ position, candidate, tensionN, wishedTensionN, stressShare }) => {
          const pitch = answer.request.tuning.pitches[position - 1];
          return (
            <tr key={position}>
              <th scope="row">{pitch && pitchName(pitch)}</th>
              <td className={styles.gauge}>
                <strong>{gaugeInWords(candidate)}</strong>
                <br />
                <span className={candidate.onShelf > 0 ? 'quiet' : undefined}>
                  {candidate.onShelf > 0 ? `${candidate.onShelf} on shelf` : 'to wind'}
                </span>
              </td>
              <td className={styles.pull}>
                <PullBar nowN={tensionN} wishedN={wishedTensionN} largestN={largestN} />
                {force(tensionN)} <span className="quiet">({force(wishedTensionN)})</span>
              </td>
              <td>{stressShare === undefined ? 'unknown' : formatFraction(stressShare)}</td>
            </tr>
          );
        })}
      </tbody>
    </table>
  );
}

/** What the set that is liked does where it is liked. */
function LikedTable({ answer: { answer, request } }: { readonly answer: FormAnswer }) {
  const force = useForceWords();
  const { liked, likedTensionN } = answer;
  if (!liked || likedTensionN === undefined || !request.reference) return null;
  const pulls = likedPullsN(liked);
  return (
    <section aria-labelledby="liked" className={styles.liked}>
      <h2 id="liked">What is liked</h2>
      <table className={styles.likedTable}>
        <thead>
          <tr>
            <th scope="col">Note</th>
            {liked.tuning.pitches.map((pitch, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a string is known by its place alone
              <th scope="col" key={at}>
                {pitchName(pitch)}
              </th>
            ))}
            <th scope="col">All</th>
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">Gauge</th>
            {request.reference.strings.map((string, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a string is known by its place alone
              <td key={at}>{gaugeInWords(string)}</td>
            ))}
            <td />
          </tr>
          <tr>
            <th scope="row">Pull</th>
            {pulls.map((pullN, at) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a string is known by its place alone
              <td key={at}>{pullN === undefined ? '' : force(pullN)}</td>
            ))}
            <td>{force(likedTensionN)}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}
