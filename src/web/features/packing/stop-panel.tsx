import { wholeStringInWords } from '../../../contract/index.js';
import { Button } from '../../parts/button.js';
import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import type { WrongScan } from './judge-scan.js';
import type { Place } from './places.js';
import styles from './stop-panel.module.css';

interface StopPanelProps {
  /** What was scanned, to the letter. */
  readonly text: string;
  readonly wrong: WrongScan;
  /** The place that it was meant for, where one is empty. */
  readonly place: Place | undefined;
  readonly onUnderstood: () => void;
}

/** The wrong string, said so that it cannot be missed: a sign, few words, what it is and what belongs there. */
export function StopPanel({ text, wrong, place, onUnderstood }: StopPanelProps) {
  const words = useWords(PACKING_WORDS);
  const [source] = place?.sources ?? [];
  return (
    <section role="alert" className={styles.stop}>
      <svg viewBox="0 0 100 100" aria-hidden="true" className={styles.sign}>
        <path d="M31 4h38l27 27v38l-27 27h-38l-27-27v-38z" className={styles.ground} />
        <path d="M32 32l36 36M68 32l-36 36" className={styles.cross} />
      </svg>
      <div className={styles.words}>
        <p className={styles.loud}>{words.stop}</p>
        <p className={styles.what}>{whatIsWrong(wrong, words)}</p>
        <p>{words.scanned(text)}</p>
        {wrong.because === 'wrong-string' && <p>{words.thatIs(wholeStringInWords(wrong.given))}</p>}
        {place && (
          <p className={styles.belongs}>
            {words.belongs(place.wanted.position, wholeStringInWords(place.wanted.stringKey))}
          </p>
        )}
        {source && <p>{words.fetchFrom(source.bin.name, source.lying.lot)}</p>}
        <p className={styles.mend}>{howToMend(wrong, words)}</p>
        <Button kind="main" size="floor" onClick={onUnderstood}>
          {words.understood}
        </Button>
      </div>
    </section>
  );
}

type PackingWords = (typeof PACKING_WORDS)['en'];

function whatIsWrong(wrong: WrongScan, { wrong: words, traits }: PackingWords): string {
  if (wrong.because !== 'wrong-string') return words[wrong.because];
  return words['wrong-string'](wrong.differs.map((trait) => traits[trait]));
}

function howToMend(wrong: WrongScan, { wrongMend: words, lotStates }: PackingWords): string {
  switch (wrong.because) {
    case 'held':
      return words.held(wrong.lot, lotStates[wrong.state] ?? wrong.state, wrong.reason);
    case 'bin-empty':
    case 'bin-mixed':
      return words[wrong.because](wrong.bin);
    case 'not-full':
      return words['not-full'](wrong.count);
    case 'not-clear':
      return words['not-clear'](wrong.names);
    default:
      return words[wrong.because];
  }
}
