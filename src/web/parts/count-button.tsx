import styles from './floor.module.css';

interface CountButtonProps {
  /** What to type, with Enter, instead of touching it. */
  readonly number: number;
  readonly name: string;
  readonly kind: 'good' | 'scrap';
  readonly onCount: () => void;
}

/** One touch, one string: large enough for a hand that does not look. */
export function CountButton({ number, name, kind, onCount }: CountButtonProps) {
  return (
    <button type="button" className={kind === 'good' ? styles.good : styles.scrap} onClick={onCount}>
      <span className={styles.number} aria-hidden="true">
        {number}
      </span>
      {name}
    </button>
  );
}
