import { formatFraction } from '../../../core/units/index.js';
import { type Fact, Facts } from '../../parts/facts.js';
import { useForceWords } from '../../parts/force-unit.js';
import { Picture } from '../../parts/picture.js';
import { FiguresTable } from './figures-table.js';
import { PullsTable } from './pulls-table.js';
import styles from './set-part.module.css';
import { StringsPicture } from './strings-picture.js';
import type { StrungSet } from './strung-set.js';

/** A strung set: drawn, with its pulls, and every string's section and figures. */
export function StrungPart({ strung }: { readonly strung: StrungSet }) {
  const force = useForceWords();
  const { totalN, changeShare } = strung.load;
  return (
    <>
      <Facts
        facts={[
          {
            name: 'Neck load',
            value: force(totalN),
            under: changeShare === undefined ? undefined : `${againstWish(changeShare)} wished`,
          },
          { name: 'Strings', value: strung.strings.length },
          figuresStand(strung),
        ]}
      />
      <Picture
        title="Strings and pulls"
        picture={<StringsPicture strings={strung.strings} />}
        table={<PullsTable strings={strung.strings} />}
        caption={
          <p className={styles.caption}>
            Drawn to length; thickness four times as large. Bar: pull now. Mark through it: pull wished.
          </p>
        }
      />
      <section aria-labelledby="figures">
        <h2 id="figures">Sections and figures</h2>
        <FiguresTable strings={strung.strings} />
      </section>
    </>
  );
}

/** Whether the figures come from wire and geometry alone, or from strings that the shop has measured. */
function figuresStand({ strings }: StrungSet): Fact {
  const calibrated = strings.filter(({ recipe }) => recipe.state === 'calibrated').length;
  if (calibrated === 0)
    return { name: 'Figures', value: 'predicted', under: 'none of these strings was measured yet' };
  return { name: 'Figures', value: 'calibrated', under: `${calibrated} of ${strings.length} strings` };
}

function againstWish(changeShare: number): string {
  const words = formatFraction(Math.abs(changeShare), 1);
  return words === '0.0 %' ? 'just as' : `${words} ${changeShare > 0 ? 'more than' : 'less than'}`;
}
