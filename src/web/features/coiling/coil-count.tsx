import { NativeSelect } from '@mantine/core';
import { useNavigate } from '@tanstack/react-router';
import { useState } from 'react';
import { useAllRecords } from '../../api/use-records.js';
import { CountsSoFar, UndoLastCount } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import { CountButton } from '../../parts/count-button.js';
import { CountEntry } from '../../parts/count-entry.js';
import styles from '../../parts/floor.module.css';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import { SCRAP_WORDS } from '../../words/machine.js';
import { lotCalled } from './lot-count.js';
import { useCoiledAsEntry } from './use-coiled-as-entry.js';
import { useEnterCoiled } from './use-enter-coiled.js';
import { type LotBook, useLots } from './use-lots.js';

const DOZEN = 12;

interface Choice {
  /** Typed instead of touched; the same however few strings are left. */
  readonly number: number;
  readonly name: string;
  readonly kind: 'good' | 'scrap';
  readonly count: () => unknown;
}

/** Coiled good, singly or many at once; rejects by reason, one touch each. */
export function CoilCount({ book }: { readonly book: LotBook }) {
  const words = useWords(COILING_WORDS);
  const scrapWords = useWords(SCRAP_WORDS);
  const figures = useFigures();
  const sound = useSound();
  const navigate = useNavigate();
  const bins = useAllRecords('bin').data ?? [];
  const { lots } = useLots();
  const { lot, lying, count } = book;
  const counts = { tallies: book.tallies, station: 'coiler', asEntry: useCoiledAsEntry(book) } as const;
  const [chosenBin, setChosenBin] = useState<string>();
  const [asksOther, setAsksOther] = useState(false);
  const [unheard, setUnheard] = useState<string>();
  const binId = lying.some((each) => each.binId === chosenBin) ? chosenBin : lying[0]?.binId;
  const { good, reject } = useEnterCoiled(lot, binId);
  const goodChoice = (number: number, name: string, strings: number): Choice => ({
    number,
    name,
    kind: 'good',
    count: () => good(strings),
  });
  const goods: readonly Choice[] = [
    goodChoice(1, words.one, 1),
    ...(count.left > DOZEN ? [goodChoice(2, words.dozen, DOZEN)] : []),
    ...(count.left > 1 ? [goodChoice(3, words.rest(figures.number(count.left)), count.left)] : []),
  ];
  const rejects = scrapWords[lot.body.spec.kind].map(
    (reason, at): Choice => ({ number: at + 4, name: reason, kind: 'scrap', count: () => reject(reason) }),
  );
  const choices = [...goods, ...rejects];
  const enter = (choice: Choice) => {
    setUnheard(undefined);
    sound.accepted();
    choice.count();
  };
  const hear = (text: string) => {
    const choice = /^\d{1,2}$/.test(text) ? choices.find(({ number }) => number === Number(text)) : undefined;
    if (choice) return enter(choice);
    const other = lotCalled(text, lots);
    if (other) return void navigate({ to: '/coiling', search: { lot: other.id } });
    sound.refused();
    setUnheard(text);
  };
  const button = (choice: Choice) => (
    <CountButton
      key={choice.name}
      number={choice.number}
      name={choice.name}
      kind={choice.kind}
      onCount={() => enter(choice)}
    />
  );
  return (
    <section aria-label={words.looked} className={styles.part}>
      <div className={styles.goods}>
        {goods.map(button)}
        <UndoLastCount {...counts} />
      </div>
      <h2>{words.rejectTitle}</h2>
      {lying.length === 0 && <p className="quiet">{words.noBin}</p>}
      {lying.length > 1 && (
        <NativeSelect
          label={words.fromBin}
          size="lg"
          value={binId ?? ''}
          onChange={(event) => setChosenBin(event.currentTarget.value)}
          data={lying.map((each) => ({
            value: each.binId,
            label: words.lying(
              bins.find(({ id }) => id === each.binId)?.body.name ?? '',
              figures.number(each.count),
            ),
          }))}
        />
      )}
      <div className={styles.scraps}>
        {rejects.map(button)}
        <Button size="floor" onClick={() => setAsksOther(true)}>
          {words.other}
        </Button>
      </div>
      <CountEntry
        words={words}
        enter={words.enterReject}
        onScan={hear}
        unheard={unheard}
        asksOther={asksOther}
        onOther={setAsksOther}
        onReason={(reason) => {
          sound.accepted();
          void reject(reason);
        }}
      />
      <CountsSoFar {...counts} />
    </section>
  );
}
