import { useState } from 'react';
import type { ShopView } from '../../../contract/index.js';
import { useAllRecords } from '../../api/use-records.js';
import { CountsSoFar, UndoLastCount } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { CountButton } from '../../parts/count-button.js';
import { CountEntry } from '../../parts/count-entry.js';
import styles from '../../parts/floor.module.css';
import { useSound } from '../../parts/sound.js';
import { useWords } from '../../words/language.js';
import { COUNT_WORDS, SCRAP_WORDS } from '../../words/machine.js';
import { CountSoFar } from './count-so-far.js';
import { findSpool } from './find-spool.js';
import { useCountAsEntry } from './use-count-as-entry.js';
import { useEnterTally } from './use-enter-tally.js';
import type { RunBook } from './use-run-book.js';
import { wiresOfRun } from './wire-names.js';

interface CountStepProps {
  readonly book: RunBook;
  readonly view: ShopView;
  readonly onSpool: () => void;
  /** Enough are made. */
  readonly onEnough: () => void;
}

/** A button of the count, which also has a number. */
interface Choice {
  readonly name: string;
  readonly outcome: 'good' | 'scrap';
  readonly count: number;
  readonly reason: string;
}

/** Good strings and scrap by reason, one touch each. */
export function CountStep({ book, view, onSpool, onEnough }: CountStepProps) {
  const words = useWords(COUNT_WORDS);
  const scrapWords = useWords(SCRAP_WORDS);
  const sound = useSound();
  const spools = useAllRecords('spool').data ?? [];
  const [asksOther, setAsksOther] = useState(false);
  const [unheard, setUnheard] = useState<string>();
  const { run } = book;
  const counts = { tallies: book.tallies, station: 'winder', asEntry: useCountAsEntry(book) } as const;
  const enterTally = useEnterTally(run);
  const goods: readonly Choice[] = [
    { name: words.good, outcome: 'good', count: 1, reason: '' },
    ...(positionsOf(run.body.machineId, view) === 2
      ? [{ name: words.goodTwo, outcome: 'good', count: 2, reason: '' } as const]
      : []),
  ];
  const scraps = scrapWords[run.body.spec.kind].map(
    (reason): Choice => ({ name: reason, outcome: 'scrap', count: 1, reason }),
  );
  const choices = [...goods, ...scraps];
  const count = (choice: Choice) => {
    setUnheard(undefined);
    sound.accepted();
    void enterTally(choice);
  };
  const hear = (text: string) => {
    const choice = /^\d{1,2}$/.test(text) ? choices[Number(text) - 1] : undefined;
    if (choice) return count(choice);
    const wireIds = wiresOfRun(run.body.recipeId, view).map(({ wireId }) => wireId);
    const { machineId, spoolIds } = run.body;
    if (findSpool(text, { spools, wireIds, machineId, onIt: spoolIds }).kind !== 'unknown') return onSpool();
    sound.refused();
    setUnheard(text);
  };
  return (
    <section aria-label={words.title} className={styles.part}>
      <h2 className="unseen">{words.title}</h2>
      <CountSoFar book={book} />
      {book.count.good >= run.body.quantity && (
        <div className={styles.doing}>
          <Button kind="main" size="floor" onClick={onEnough}>
            {words.toClose}
          </Button>
        </div>
      )}
      <div className={styles.goods}>
        {goods.map((choice, at) => (
          <CountButton
            key={choice.name}
            number={at + 1}
            name={choice.name}
            kind="good"
            onCount={() => count(choice)}
          />
        ))}
        <UndoLastCount {...counts} />
      </div>
      <h3>{words.scrapTitle}</h3>
      <div className={styles.scraps}>
        {scraps.map((choice, at) => (
          <CountButton
            key={choice.name}
            number={goods.length + at + 1}
            name={choice.name}
            kind="scrap"
            onCount={() => count(choice)}
          />
        ))}
        <Button size="floor" onClick={() => setAsksOther(true)}>
          {words.other}
        </Button>
      </div>
      <CountEntry
        words={words}
        enter={words.enterScrap}
        onScan={hear}
        unheard={unheard}
        asksOther={asksOther}
        onOther={setAsksOther}
        onReason={(reason) => count({ name: reason, outcome: 'scrap', count: 1, reason })}
      />
      <CountsSoFar {...counts} />
    </section>
  );
}

const positionsOf = (machineId: string, { shop, ids }: ShopView): number =>
  shop.machines.find(({ id }) => ids.machines[id] === machineId)?.positions ?? 1;
