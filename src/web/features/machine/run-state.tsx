import styles from '../../parts/floor.module.css';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { MACHINE_WORDS } from '../../words/machine.js';

const TONES: Readonly<Record<string, StateTone>> = {
  planned: 'waits',
  running: 'goes',
  paused: 'stopped',
  closed: 'done',
  abandoned: 'stopped',
};

/** How a run stands, to be read from where the hands are: a sign by its shape, and a word. */
export function RunState({ state, large = false }: { readonly state: string; readonly large?: boolean }) {
  const words = useWords(MACHINE_WORDS);
  return (
    <span className={large ? styles.state : undefined}>
      <StateMark tone={TONES[state] ?? 'waits'}>{words.states[state] ?? state}</StateMark>
    </span>
  );
}
