import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { ORDERS_WORDS } from '../../words/orders.js';

const TONES: Readonly<Record<string, StateTone>> = {
  received: 'waits',
  packing: 'goes',
  shipped: 'done',
  cancelled: 'stopped',
};

/** Where an order stands. */
export function OrderState({ state }: { readonly state: string }) {
  const { states } = useWords(ORDERS_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{states[state] ?? state}</StateMark>;
}
