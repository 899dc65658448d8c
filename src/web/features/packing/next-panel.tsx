import { useState } from 'react';
import { stringKeyInWords } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import { Dialog } from '../../parts/dialog.js';
import { StateMark } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import styles from './next-panel.module.css';
import type { Place, Source } from './places.js';
import { useFocusIfLost } from './use-focus-if-lost.js';

interface NextPanelProps {
  readonly place: Place;
  readonly onTake: (source: Source) => void;
}

/** The string to fetch now: which, and from where. */
export function NextPanel({ place, onTake }: NextPanelProps) {
  const words = useWords(PACKING_WORDS);
  const { short, material, finish } = stringKeyInWords(place.wanted.stringKey);
  const [source] = place.sources;
  const heading = useFocusIfLost();
  return (
    <section aria-labelledby="next" className={styles.next}>
      <h2 ref={heading} id="next" tabIndex={-1} className={styles.head}>
        {words.next}: {words.place(place.wanted.position)}
      </h2>
      <p className={styles.string}>{short}</p>
      <p className={styles.finish}>{[material, finish].filter(Boolean).join(', ')}</p>
      {source ? (
        <>
          <p className={styles.from}>
            <span className={styles.small}>{words.takeFrom}</span> {source.bin.name}
          </p>
          <p className="quiet">{words.lotThere(source.lying.lot, source.lying.count)}</p>
          <div className={styles.doing}>
            <Button kind="main" size="floor" onClick={() => onTake(source)}>
              {words.takenFrom(source.bin.name)}
            </Button>
            <Elsewhere place={place} onTake={onTake} />
          </div>
        </>
      ) : (
        <>
          <p className={styles.nowhere}>
            <StateMark tone="care">{words.nowhere}</StateMark>
          </p>
          <p>{words.nowhereMore}</p>
        </>
      )}
    </section>
  );
}

/** The same string of other lots, and in other bins. */
function Elsewhere({ place, onTake }: NextPanelProps) {
  const words = useWords(PACKING_WORDS);
  const [isOpen, setOpen] = useState(false);
  const others = place.sources.slice(1);
  if (others.length === 0) return null;
  const take = (source: Source) => {
    setOpen(false);
    onTake(source);
  };
  return (
    <>
      <Button size="floor" onClick={() => setOpen(true)}>
        {words.elsewhere}
      </Button>
      <Dialog
        title={words.elsewhereTitle(place.wanted.position)}
        open={isOpen}
        onClose={() => setOpen(false)}
      >
        {others.map((source) => (
          <Button key={`${source.bin.id} ${source.lying.lotId}`} size="floor" onClick={() => take(source)}>
            {words.takeThere(source.bin.name, source.lying.lot)}
          </Button>
        ))}
      </Dialog>
    </>
  );
}
