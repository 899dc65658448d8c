import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';

const TONES: Readonly<Record<string, StateTone>> = {
  predicted: 'waits',
  'on-trial': 'goes',
  calibrated: 'done',
  retired: 'stopped',
};

/** Where a recipe stands in its life. */
export function RecipeState({ state }: { readonly state: string }) {
  const words = useWords(RECIPES_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{words.states[state] ?? state}</StateMark>;
}
