import {
  cutInWords,
  lengthInBoth,
  lengthWantedInWords,
  metres,
  pullInWords,
  tailInWords,
  toPullInWords,
  twistsWhyInWords,
  weight,
  whipInWords,
} from '../../../contract/index.js';
import type { EndSheet } from '../../../core/winding/index.js';
import { useFigures } from '../../sight/figures.js';
import { ENDS_WORDS } from '../../words/ends.js';
import { useWords } from '../../words/language.js';
import { SET_UP_WORDS } from '../../words/set-up.js';
import styles from '../set-up/set-up.module.css';

/** How wire is cut and ended, and what is checked of it: the figures to set huge, the reasons under them. */
export function EndPart({ ends }: { readonly ends: EndSheet }) {
  const words = useWords(ENDS_WORDS);
  const setUp = useWords(SET_UP_WORDS);
  const figures = useFigures();
  const { twists, cut, pull, quantity } = ends;
  return (
    <section aria-labelledby="ends" className={styles.part}>
      <h2 id="ends">{words.title}</h2>
      <dl className={styles.huge}>
        <div>
          <dt>{words.twist}</dt>
          <dd className={styles.figure}>{words.turns(twists.wanted)}</dd>
          <dd className={styles.under}>{words.turnsBetween(twists.least, twists.most)}</dd>
        </div>
        {ends.of === 'core' && (
          <div>
            <dt>{setUp.cutTo}</dt>
            <dd className={styles.large}>{lengthInBoth(cut.lengthM)}</dd>
          </div>
        )}
        {pull && (
          <div>
            <dt>{words.pull}</dt>
            <dd className={styles.large}>{figures.pull(pull.proofN)}</dd>
            <dd className={styles.under}>{whipInWords(pull)}</dd>
          </div>
        )}
      </dl>
      <dl className={styles.facts}>
        <div className={styles.across}>
          <dt>{words.why}</dt>
          <dd>{twistsWhyInWords(ends)}</dd>
        </div>
        <div className={styles.across}>
          <dt>{words.cut}</dt>
          <dd>{cutInWords(ends)}</dd>
        </div>
        <div>
          <dt>{words.length}</dt>
          <dd>{lengthWantedInWords(ends)}</dd>
        </div>
        <div>
          <dt>{words.tail}</dt>
          <dd>{tailInWords(ends)}</dd>
        </div>
        <div className={styles.across}>
          <dt>{words.pull}</dt>
          <dd>
            {pullInWords(pull)} {toPullInWords(ends.toPull)}
          </dd>
        </div>
        <div className={styles.across}>
          <dt>{words.wire}</dt>
          <dd>{words.wireIs(metres(ends.wireM), weight(ends.wireKg), figures.number(quantity))}</dd>
        </div>
      </dl>
    </section>
  );
}
