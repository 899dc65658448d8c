import { Link } from '@tanstack/react-router';
import { type RecordOf, useAllRecords } from '../../api/use-records.js';
import { Explained } from '../../parts/explained.js';
import { Facts } from '../../parts/facts.js';
import styles from '../../parts/floor.module.css';
import { StringHead } from '../../parts/string-head.js';
import { useFigures } from '../../sight/figures.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import { CoilCount } from './coil-count.js';
import { JudgeLot } from './judge-lot.js';
import { LotState } from './lot-state.js';
import { type LotBook, useLotBook } from './use-lots.js';

/** One lot on the coiling table: what was looked at, what was found, and the word on the whole of it. */
export function LotRoom({ lot }: { readonly lot: RecordOf<'string-lot'> }) {
  const words = useWords(COILING_WORDS);
  const book = useLotBook(lot);
  const isOpen = lot.state === 'in-check' || lot.state === 'on-hold';
  return (
    <article className={styles.room}>
      <LotHead book={book} />
      <LotFacts book={book} />
      {isOpen ? (
        <>
          <CoilCount book={book} />
          <JudgeLot book={book} />
        </>
      ) : (
        <p className={styles.said}>{words.lotOver((words.states[lot.state] ?? lot.state).toLowerCase())}</p>
      )}
    </article>
  );
}

function LotHead({ book: { lot, lying, isOnTheWay } }: { readonly book: LotBook }) {
  const words = useWords(COILING_WORDS);
  const figures = useFigures();
  const bins = useAllRecords('bin').data ?? [];
  const binName = (binId: string) => bins.find(({ id }) => id === binId)?.body.name ?? '';
  return (
    <header className={styles.runHead}>
      <StringHead
        stringKey={lot.body.stringKey}
        name={lot.body.name}
        back={
          <Link to="/coiling" className={styles.back}>
            {words.backToLots}
          </Link>
        }
      />
      <div className={styles.lines}>
        <LotState state={lot.state} large />
        {isOnTheWay && <span className="quiet">{words.onTheWay}</span>}
        {lot.state === 'on-hold' && lot.body.holdReason && <span>{words.held(lot.body.holdReason)}</span>}
      </div>
      <ul className={styles.wires}>
        {lying.map(({ binId, count }) => (
          <li key={binId}>{words.lying(binName(binId), figures.number(count))}</li>
        ))}
      </ul>
    </header>
  );
}

function LotFacts({ book: { lot, count } }: { readonly book: LotBook }) {
  const words = useWords(COILING_WORDS);
  const figures = useFigures();
  const number = (value: number) => figures.number(value);
  const { explain } = words;
  const explained = (
    name: string,
    value: number,
    how: {
      readonly what: string;
      readonly formula?: string;
      readonly inputs?: readonly { name: string; value: string }[];
    },
  ) => ({
    name,
    value: (
      <Explained name={name} {...how} source={explain.source}>
        {number(value)}
      </Explained>
    ),
  });
  return (
    <div className={styles.counts}>
      <Facts
        facts={[
          explained(words.good, count.good, { what: explain.good }),
          explained(words.rejected, count.rejected, {
            what: explain.rejected,
            inputs: count.rejects.map((each) => ({ name: each.reason, value: number(each.count) })),
          }),
          explained(words.left, count.left, {
            what: explain.left,
            formula: explain.leftFormula,
            inputs: [
              { name: explain.made, value: number(lot.body.made) },
              { name: words.good, value: number(count.good) },
              { name: words.rejected, value: number(count.rejected) },
            ],
          }),
        ]}
      />
    </div>
  );
}
