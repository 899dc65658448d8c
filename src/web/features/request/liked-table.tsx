import { tensionN } from '../../../core/string/index.js';
import { frequencyHz, pitchName } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { Sideways } from '../../parts/sideways.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';
import { SETS_WORDS } from '../../words/sets.js';
import { explainLoad, explainPull } from '../set/explain-string.js';
import type { FormAnswer } from './answer-form.js';
import styles from './request-part.module.css';
import { gaugeInWords } from './set-words.js';
import { useScaleWords } from './use-scale-words.js';

/** What the set that is liked does where it is liked. */
export function LikedTable({ answer: { answer, request } }: { readonly answer: FormAnswer }) {
  const { answer: words } = useWords(REQUESTS_WORDS);
  const { how } = useWords(SETS_WORDS);
  const figures = useFigures();
  const scales = useScaleWords();
  const { liked, likedTensionN } = answer;
  if (!liked || likedTensionN === undefined || !request.reference) return null;
  const columns = liked.tuning.pitches.map((pitch, at) => {
    const string = request.reference?.strings[at];
    const lengthM = liked.instrument.scaleLengthsM[at] ?? 0;
    const mu = liked.strings[at]?.linearDensityKgPerM ?? 0;
    const hertz = frequencyHz(pitch, liked.tuning.referenceHz);
    return {
      position: at + 1,
      note: pitchName(pitch),
      gauge: string ? gaugeInWords(string) : '',
      pull: figures.pull(tensionN(mu, lengthM, hertz)),
      told: () =>
        explainPull(
          { linearDensityKgPerM: mu, speakingLengthM: lengthM, frequencyHz: hertz, state: 'predicted' },
          { words: how, figures },
        ),
    };
  });
  return (
    <section aria-labelledby="liked" className={styles.liked}>
      <h2 id="liked">{words.liked}</h2>
      <p className="quiet">
        {words.likedOn(
          columns.map(({ gauge }) => gauge).join(' '),
          columns
            .map(({ note }) => note)
            .toReversed()
            .join(' '),
          scales(liked.instrument),
        )}
      </p>
      <Sideways label={words.liked}>
        <table className={styles.likedTable}>
          <thead>
            <tr>
              <th scope="col">{words.note}</th>
              {columns.map(({ position, note }) => (
                <th scope="col" key={position}>
                  {note}
                </th>
              ))}
              <th scope="col">{words.all}</th>
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">{words.gauge}</th>
              {columns.map(({ position, gauge }) => (
                <td key={position}>{gauge}</td>
              ))}
              <td />
            </tr>
            <tr>
              <th scope="row">{words.likedPull}</th>
              {columns.map(({ position, pull, told }) => (
                <td key={position}>
                  <Explained name={how.pullOf(how.string(position))} how={told}>
                    {pull}
                  </Explained>
                </td>
              ))}
              <td>
                <Explained
                  name={how.loadOf}
                  how={() => explainLoad({ strings: columns.length }, { words: how, figures })}
                >
                  {figures.pull(likedTensionN)}
                </Explained>
              </td>
            </tr>
          </tbody>
        </table>
      </Sideways>
    </section>
  );
}
