import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { COMPLAINTS_WORDS } from '../../words/complaints.js';
import { useWords } from '../../words/language.js';

const TONES: Readonly<Record<string, StateTone>> = { open: 'care', answered: 'goes', closed: 'done' };

export function ComplaintState({ state }: { readonly state: string }) {
  const { stands } = useWords(COMPLAINTS_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{stands[state] ?? state}</StateMark>;
}
