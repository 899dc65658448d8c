import styles from './state-mark.module.css';

/** A state in a word and a sign; the sign's shape tells it apart without colour. */
export type StateTone = 'waits' | 'goes' | 'done' | 'care' | 'stopped';

const SIGNS: Readonly<Record<StateTone, string>> = {
  waits: '○',
  goes: '◐',
  done: '●',
  care: '▲',
  stopped: '■',
};

interface StateMarkProps {
  readonly tone: StateTone;
  readonly children: string;
}

export function StateMark({ tone, children }: StateMarkProps) {
  return (
    <span className={`${styles.mark} ${styles[tone]}`}>
      <span aria-hidden="true">{SIGNS[tone]}</span> {children}
    </span>
  );
}
