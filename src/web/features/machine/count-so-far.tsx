import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import styles from '../../parts/floor.module.css';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS } from '../../words/machine.js';
import type { RunBook } from './use-run-book.js';

/** Good, scrap and what is left, each with how it is known. */
export function CountSoFar({ book: { run, count } }: { readonly book: RunBook }) {
  const words = useWords(COUNT_WORDS);
  const figures = useFigures();
  const number = (value: number) => figures.number(value);
  const { good, tallied, goodTrials, scrap, scrapped } = count;
  const wanted = run.body.quantity;
  const left = Math.max(0, wanted - good);
  return (
    <div className={styles.counts}>
      <Facts
        facts={[
          {
            name: words.goodSoFar,
            value: (
              <Explained
                name={words.goodSoFar}
                what={words.explainGood}
                inputs={[
                  { name: words.tallied, value: number(tallied) },
                  { name: words.trials, value: number(goodTrials) },
                ]}
                source={words.source}
              >
                {number(good)}
              </Explained>
            ),
          },
          {
            name: words.scrapSoFar,
            value: (
              <Explained
                name={words.scrapSoFar}
                what={words.explainScrap}
                inputs={scrap.map((each) => ({ name: each.reason, value: number(each.count) }))}
                source={words.source}
              >
                {number(scrapped)}
              </Explained>
            ),
          },
          {
            name: words.left,
            value: (
              <Explained
                name={words.left}
                what={words.explainLeft}
                formula={words.explainLeftFormula}
                inputs={[
                  { name: words.wanted, value: number(wanted) },
                  { name: words.goodSoFar, value: number(good) },
                ]}
                source={words.source}
              >
                {number(left)}
              </Explained>
            ),
            ...(left === 0 ? { under: words.enough } : {}),
          },
        ]}
      />
    </div>
  );
}
