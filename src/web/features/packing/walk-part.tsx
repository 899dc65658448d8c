import { wholeStringInWords } from '../../../contract/index.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { Stop } from './walk.js';
import styles from './walk-part.module.css';

/** One walk past the bins: where to stop, and how many of what to take there. */
export function WalkPart({ stops }: { readonly stops: readonly Stop[] }) {
  const words = useWords(PACKING_WORDS);
  const strings = stops.flatMap(({ takes }) => takes).reduce((sum, { count }) => sum + count, 0);
  return (
    <section aria-labelledby="walk" className={styles.walk}>
      <h2 id="walk">{words.walk}</h2>
      <p className="quiet">{stops.length > 0 ? words.walkLead(stops.length, strings) : words.walkNone}</p>
      <ol className={styles.stops}>
        {stops.map(({ bin, takes }) => (
          <li key={bin.id} className={styles.stop}>
            <strong className={styles.bin}>{bin.name}</strong>
            <ul className={styles.takes}>
              {takes.map(({ stringKey, count, orders }) => (
                <li key={stringKey}>
                  <strong className={styles.count}>{words.walkTake(count)}</strong>
                  <span>
                    {wholeStringInWords(stringKey)}
                    <span className="quiet small"> {words.walkFor(orders)}</span>
                  </span>
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ol>
    </section>
  );
}
