import { useId } from 'react';
import { meritInWords } from '../../../contract/index.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { MEASURES } from './measures.js';
import type { WaysLink } from './trade-off-picture.js';
import { useMeasureWords } from './use-measure-words.js';
import styles from './ways.module.css';

/** The ways with all their figures: what the picture shows, to be read. */
export function WaysTable({ shown, pointed, marked, onPoint, onMark }: WaysLink) {
  const words = useWords(RECIPES_WORDS);
  const measures = useMeasureWords();
  const group = useId();
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what can be moved must be reachable by those who have only keys
    <section className={styles.list} aria-label={words.waysTable} tabIndex={0}>
      <table className={styles.table}>
        <caption className="unseen">{words.waysTable}</caption>
        <thead>
          <tr>
            <th scope="col">
              <span className="unseen">{words.mark}</span>
            </th>
            <th scope="col">{words.columns.core}</th>
            <th scope="col">{words.columns.wrap}</th>
            {MEASURES.map((measure) => (
              <th key={measure} scope="col" className={styles.figures}>
                {measures.heading(measure)}
              </th>
            ))}
            <th scope="col">{words.bestAt}</th>
          </tr>
        </thead>
        <tbody>
          {shown.map(({ key, way, isAhead, isNow }) => (
            <tr
              key={key}
              data-pointed={key === pointed || undefined}
              data-marked={key === marked || undefined}
              onPointerEnter={() => onPoint(key)}
              onPointerLeave={() => onPoint(undefined)}
              onClick={() => onMark(key)}
            >
              <td>
                <input
                  type="radio"
                  name={group}
                  aria-label={`${words.mark} ${key}`}
                  checked={key === marked}
                  onChange={() => onMark(key)}
                  onFocus={() => onPoint(key)}
                  onBlur={() => onPoint(undefined)}
                  className={styles.radio}
                />
              </td>
              <th scope="row">
                <span aria-hidden="true">{isAhead ? '● ' : '○ '}</span>
                {way.coreWireId}
              </th>
              <td className={styles.whole}>{way.wrapWireIds.join(' + ') || '—'}</td>
              {MEASURES.map((measure) => (
                <td key={measure} className={styles.figures}>
                  {measures.figure(way, measure)}
                </td>
              ))}
              <td className={styles.best}>
                {[...(isNow ? [words.isNow] : []), ...way.bestAt.map(meritInWords)].join(', ') ||
                  (isAhead ? '' : words.legend.beaten)}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
