import { useState } from 'react';
import { useMay } from '../../api/session.js';
import { useQueued } from '../../outbox/index.js';
import { Button } from '../../parts/button.js';
import styles from '../../parts/floor.module.css';
import { OtherReason } from '../../parts/other-reason.js';
import { useSound } from '../../parts/sound.js';
import { useFigures } from '../../sight/figures.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';
import type { LotBook } from './use-lots.js';

/** Released for packing, or held back with a reason. */
export function JudgeLot({ book: { lot, count } }: { readonly book: LotBook }) {
  const words = useWords(COILING_WORDS);
  const figures = useFigures();
  const sound = useSound();
  const may = useMay();
  const release = useQueued('release-lot');
  const hold = useQueued('hold-lot');
  const [asks, setAsks] = useState(false);
  const asked = { lotId: lot.id, expectedVersion: lot.version };
  const { name } = lot.body;
  return (
    <section aria-label={words.judgeTitle} className={styles.onward}>
      <h2>{words.judgeTitle}</h2>
      {count.left > 0 && <p>{words.notAll(figures.number(count.left))}</p>}
      {may('lot.release') && (
        <Button
          kind="main"
          size="floor"
          onClick={() => {
            sound.accepted();
            void release.enter({ ...asked, reason: words.releaseReason }, { label: words.released(name) });
          }}
        >
          {words.release}
        </Button>
      )}
      {may('lot.hold') && lot.state === 'in-check' && (
        <Button kind="grave" size="floor" onClick={() => setAsks(true)}>
          {words.hold}
        </Button>
      )}
      <OtherReason
        title={words.hold}
        label={words.holdWhy}
        enter={words.holdEnter}
        open={asks}
        onClose={() => setAsks(false)}
        onReason={(reason) => {
          setAsks(false);
          sound.accepted();
          void hold.enter({ ...asked, reason }, { label: words.holdLabel(name) });
        }}
      />
    </section>
  );
}
