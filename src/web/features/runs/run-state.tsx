import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';

const TONES: Readonly<Record<string, StateTone>> = {
  planned: 'waits',
  running: 'goes',
  paused: 'care',
  closed: 'done',
  abandoned: 'stopped',
};

/** Where a run stands in its life. */
export function RunState({ state }: { readonly state: string }) {
  const words = useWords(RUNS_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{words.states[state] ?? state}</StateMark>;
}
