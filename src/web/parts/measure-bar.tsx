import styles from './measure-bar.module.css';

interface MeasureBarProps {
  readonly value: number;
  /** What a full bar means: bars that are compared share it. */
  readonly full: number;
  /** A level to stay above. */
  readonly mark?: number | undefined;
}

/** How much there is as a bar, and a mark where it should not fall below. The figures stand beside it in words. */
export function MeasureBar({ value, full, mark }: MeasureBarProps) {
  const x = (amount: number): number =>
    full <= 0 ? 0 : (Math.min(Math.max(amount, 0), full) / full) * (BAR.width - BAR.markRoom);
  const isShort = mark !== undefined && value < mark;
  return (
    <svg
      viewBox={`0 0 ${BAR.width} ${BAR.height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
      className={styles.bar}
    >
      <rect y={4} width={BAR.width} height={BAR.height - 8} className={styles.ground} />
      <rect y={4} width={x(value)} height={BAR.height - 8} className={isShort ? styles.short : styles.now} />
      {mark !== undefined && mark > 0 && (
        <path d={`M${x(mark) + 1} 0V${BAR.height}`} className={styles.mark} />
      )}
    </svg>
  );
}

const BAR = { width: 200, height: 18, markRoom: 4 } as const;
