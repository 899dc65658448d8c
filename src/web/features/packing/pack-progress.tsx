import { useWords } from '../../words/language.js';
import { PACKING_WORDS } from '../../words/packing.js';
import styles from './pack-progress.module.css';
import type { Place } from './places.js';

interface PackProgressProps {
  readonly places: readonly Place[];
  readonly next: number | undefined;
}

/** How far a pack is, to be read from a metre: a figure, and a mark for each place. */
export function PackProgress({ places, next }: PackProgressProps) {
  const words = useWords(PACKING_WORDS);
  const done = places.filter(({ picked }) => picked).length;
  const width = places.length * STEP - GAP;
  return (
    <div className={styles.progress}>
      <p className={styles.figure}>
        <span className={styles.count}>{words.progress(done, places.length)}</span>
        <span className={styles.words}>{words.progressWords}</span>
      </p>
      <svg
        viewBox={`0 0 ${width} ${HEIGHT}`}
        role="img"
        aria-label={words.progressHeard(done, places.length)}
        width={width}
        height={HEIGHT}
        className={styles.marks}
      >
        {places.map(({ picked, wanted }, at) => (
          <g key={wanted.position} transform={`translate(${at * STEP} 0)`}>
            <rect
              x={1}
              y={1}
              width={STEP - GAP - 2}
              height={HEIGHT - 2}
              className={picked ? styles.in : wanted.position === next ? styles.next : styles.open}
            />
            {picked && <path d="M10 17l7 8l13 -18" className={styles.tick} />}
          </g>
        ))}
      </svg>
    </div>
  );
}

const STEP = 46;
const GAP = 6;
const HEIGHT = 32;
