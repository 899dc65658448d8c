import type { RecordOf } from '../../api/use-records.js';
import desk from '../../parts/desk.module.css';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { REQUESTS_WORDS } from '../../words/requests.js';

const TONES: Readonly<Record<string, StateTone>> = {
  waiting: 'waits',
  answered: 'goes',
  ordered: 'done',
  declined: 'stopped',
};

/** Where a request stands, in a word and a sign. */
export function RequestMark({ state }: { readonly state: string }) {
  const { states } = useWords(REQUESTS_WORDS);
  return <StateMark tone={TONES[state] ?? 'waits'}>{states[state] ?? state}</StateMark>;
}

/** Where it stands, and since when. */
export function RequestState({ record }: { readonly record: RecordOf<'request'> }) {
  const { room } = useWords(REQUESTS_WORDS);
  const { moment } = useFigures();
  const { state, createdAt, updatedAt } = record;
  return (
    <p className={desk.about}>
      <RequestMark state={state} />
      <span className="quiet">{room.came(moment(createdAt))}</span>
      {updatedAt !== createdAt && <span className="quiet">{room.changed(moment(updatedAt))}</span>}
    </p>
  );
}
