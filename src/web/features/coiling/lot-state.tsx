import styles from '../../parts/floor.module.css';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { COILING_WORDS } from '../../words/coiling.js';
import { useWords } from '../../words/language.js';

const TONES: Readonly<Record<string, StateTone>> = {
  'in-check': 'waits',
  'on-hold': 'care',
  released: 'done',
  scrapped: 'stopped',
};

/** How a lot stands: a sign by its shape, and a word. */
export function LotState({ state, large = false }: { readonly state: string; readonly large?: boolean }) {
  const words = useWords(COILING_WORDS);
  return (
    <span className={large ? styles.state : undefined}>
      <StateMark tone={TONES[state] ?? 'waits'}>{words.states[state] ?? state}</StateMark>
    </span>
  );
}
