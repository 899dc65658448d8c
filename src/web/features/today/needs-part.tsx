import type { Need } from '../../../contract/index.js';
import { StateMark, type StateTone } from '../../parts/state-mark.js';
import { useWords } from '../../words/language.js';
import { TODAY_WORDS } from '../../words/today.js';
import { groupNeeds, needKey, type UrgencyGroup } from './group-needs.js';
import { NeedItem } from './need-item.js';
import styles from './needs-part.module.css';

/** What needs a person, the most urgent first, with counts. */
export function NeedsPart({ needs }: { readonly needs: readonly Need[] }) {
  return (
    <div className={styles.needs}>
      {groupNeeds(needs).map((group) => (
        <Urgency key={group.urgency} group={group} />
      ))}
    </div>
  );
}

const TONES: Readonly<Record<Need['urgency'], StateTone>> = { now: 'care', soon: 'goes', 'in-time': 'waits' };

function Urgency({ group: { urgency, count, groups } }: { readonly group: UrgencyGroup }) {
  const words = useWords(TODAY_WORDS);
  return (
    <section aria-labelledby={`needs-${urgency}`} className={styles.urgency}>
      <h2 id={`needs-${urgency}`}>
        <StateMark tone={TONES[urgency]}>{words.counted(words.urgencies[urgency], count)}</StateMark>
      </h2>
      {groups.map(({ kind, needs }) => (
        <section key={kind} aria-labelledby={`needs-${urgency}-${kind}`} className={styles.group}>
          <h3 id={`needs-${urgency}-${kind}`}>{words.counted(words.kinds[kind], needs.length)}</h3>
          <ul className={styles.list}>
            {needs.map((need) => (
              <NeedItem key={needKey(need)} need={need} />
            ))}
          </ul>
        </section>
      ))}
    </section>
  );
}
