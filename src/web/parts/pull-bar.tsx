import styles from './pull-bar.module.css';

interface PullBarProps {
  readonly nowN: number;
  readonly wishedN: number;
  /** What a full bar means: bars that are compared share it. */
  readonly largestN: number;
}

/** A pull as a bar, with a mark where it was wished. The figures stand beside it in words. */
export function PullBar({ nowN, wishedN, largestN }: PullBarProps) {
  const x = (forceN: number): number => (forceN / largestN) * (BAR.width - BAR.markRoom);
  return (
    <svg
      viewBox={`0 0 ${BAR.width} ${BAR.height}`}
      preserveAspectRatio="none"
      aria-hidden="true"
      className={styles.bar}
    >
      <rect x={0} y={4} width={x(nowN)} height={BAR.height - 8} className={styles.now} />
      <path d={`M${x(wishedN)} 0V${BAR.height}`} className={styles.wished} />
    </svg>
  );
}

const BAR = { width: 200, height: 18, markRoom: 4 } as const;
