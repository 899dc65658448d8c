import { formatFraction } from '../../../core/units/index.js';
import { Explained } from '../../parts/explained.js';
import { type Fact, Facts } from '../../parts/facts.js';
import { Picture } from '../../parts/picture.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SETS_WORDS } from '../../words/sets.js';
import { drawn } from './drawn-string.js';
import { explainLoad } from './explain-string.js';
import { FiguresTable } from './figures-table.js';
import { PullsTable } from './pulls-table.js';
import styles from './set-part.module.css';
import { StringsPicture } from './strings-picture.js';
import type { StrungSet } from './strung-set.js';

/** A strung set: drawn, with its pulls, and every string's section and figures. */
export function StrungPart({ strung }: { readonly strung: StrungSet }) {
  const words = useWords(SETS_WORDS);
  const strings = strung.strings.map(drawn);
  return (
    <>
      <StrungFacts strung={strung} />
      <Picture
        title={words.picture.title}
        picture={<StringsPicture strings={strings} />}
        table={<PullsTable strings={strings} />}
        caption={<p className={styles.caption}>{words.picture.caption}</p>}
      />
      <section aria-labelledby="figures">
        <h2 id="figures">{words.figures.title}</h2>
        <FiguresTable strings={strung.strings} />
      </section>
    </>
  );
}

function StrungFacts({ strung }: { readonly strung: StrungSet }) {
  const words = useWords(SETS_WORDS);
  const figures = useFigures();
  const { totalN, changeN, changeShare } = strung.load;
  const count = strung.strings.length;
  const how = () =>
    explainLoad(
      { strings: count, referenceN: changeN === undefined ? undefined : totalN - changeN },
      { words: words.how, figures },
    );
  return (
    <Facts
      facts={[
        {
          name: words.strung.neckLoad,
          value: (
            <Explained name={words.how.loadOf} how={how}>
              {figures.pull(totalN)}
            </Explained>
          ),
          under: changeShare === undefined ? undefined : againstWish(changeShare, words.strung),
        },
        { name: words.strung.strings, value: count },
        figuresStand(strung, words.strung),
      ]}
    />
  );
}

type Words = (typeof SETS_WORDS)['en']['strung'];

/** Whether the figures come from wire and geometry alone, or from strings that the shop has measured. */
function figuresStand({ strings }: StrungSet, words: Words): Fact {
  const calibrated = strings.filter(({ recipe }) => recipe.state === 'calibrated').length;
  if (calibrated === 0) return { name: words.figures, value: words.predicted, under: words.noneMeasured };
  return {
    name: words.figures,
    value: words.calibrated,
    under: words.someMeasured(calibrated, strings.length),
  };
}

function againstWish(changeShare: number, words: Words): string {
  const share = formatFraction(Math.abs(changeShare), 1);
  if (share === formatFraction(0, 1)) return words.justAsWished;
  return changeShare > 0 ? words.moreThanWished(share) : words.lessThanWished(share);
}
