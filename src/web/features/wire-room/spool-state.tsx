import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { WIRE_WORDS } from '../../words/wire.js';

const TONES: Readonly<Record<string, StateTone>> = {
  'on-shelf': 'done',
  'on-machine': 'goes',
  quarantined: 'care',
  empty: 'stopped',
};

/** Where a spool stands in its life. */
export function SpoolState({ state }: { readonly state: string }) {
  const words = useWords(WIRE_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{words.states[state] ?? state}</StateMark>;
}
