import { COLOUR_PAIRS } from '../../look/colour-pairs.js';
import { useWords } from '../../words/language.js';
import { LOOK_WORDS } from '../../words/look.js';
import styles from './look.module.css';
import { Part } from './part.js';

/** Letters and colours, before anything is made of them. */
export function TypePart() {
  const words = useWords(LOOK_WORDS);
  return (
    <>
      <Part title={words.type}>
        <p className={styles.title}>{words.typeTitle}</p>
        <p className={styles.heading}>{words.typeHeading}</p>
        <h3>{words.typeLead}</h3>
        <p>{words.typeText}</p>
        <p className="quiet">{words.typeQuiet}</p>
        <p className="small">{words.typeSmall}</p>
        <p className="care">{words.typeCare}</p>
      </Part>
      <Part title={words.colours}>
        <ul className={styles.swatches}>
          {COLOUR_PAIRS.map(({ ink, ground, least }) => (
            <li
              key={`${ink} ${ground}`}
              className={styles.swatch}
              style={{ color: `var(--${ink})`, background: `var(--${ground})` }}
            >
              {/* What is only for signs is drawn, not written. */}
              {least === 4.5 ? (
                words.pair(ink, ground)
              ) : (
                <svg viewBox="0 0 40 12" role="img" aria-label={words.pair(ink, ground)}>
                  <path d="M2 6h36" className={styles.line} />
                </svg>
              )}
            </li>
          ))}
        </ul>
      </Part>
    </>
  );
}
