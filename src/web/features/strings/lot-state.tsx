import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { STRINGS_WORDS } from '../../words/strings.js';

const TONES: Readonly<Record<string, StateTone>> = {
  'in-check': 'waits',
  released: 'done',
  'on-hold': 'care',
  scrapped: 'stopped',
};

/** Where a lot of strings stands in its life. */
export function LotState({ state }: { readonly state: string }) {
  const words = useWords(STRINGS_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{words.states[state] ?? state}</StateMark>;
}
