import type { TableDrift } from '../../../core/winding/index.js';
import plot from '../../parts/plot.module.css';
import { PlotAxes } from '../../parts/plot-axes.js';
import { plotScale } from '../../parts/plot-scale.js';
import { useFigures } from '../../sight/figures.js';
import { DIAL_ROUND_WORDS } from '../../words/dial-round.js';
import { useWords } from '../../words/language.js';
import styles from './dial-round.module.css';

/** A reading as it is drawn: per cent of the fit that it is off. */
export interface DrawnReading {
  readonly id: string;
  readonly dial: number;
  readonly offPercent: number;
  readonly counts: boolean;
}

interface RoundPictureProps {
  readonly readings: readonly DrawnReading[];
  readonly drift: TableDrift | undefined;
}

const FRAME = { width: 720, height: 280, left: 70, right: 20, bottom: 40 } as const;
const TOP = 26;

/** Every reading against the fitted table, and where the table in force lies to it. */
export function RoundPicture({ readings, drift }: RoundPictureProps) {
  const words = useWords(DIAL_ROUND_WORDS);
  const figures = useFigures();
  const before = (drift?.rows ?? []).map(({ dial, share }) => ({
    dial,
    offPercent: 100 * (1 / (1 + share) - 1),
  }));
  const xs = plotScale(
    readings.map(({ dial }) => dial),
    [FRAME.left, FRAME.width - FRAME.right],
  );
  const ys = plotScale(
    [0, ...readings.map(({ offPercent }) => offPercent), ...before.map(({ offPercent }) => offPercent)],
    [FRAME.height - FRAME.bottom, TOP],
  );
  const worst = Math.max(
    ...readings.filter(({ counts }) => counts).map(({ offPercent }) => Math.abs(offPercent)),
  );
  return (
    <svg
      viewBox={`0 0 ${FRAME.width} ${FRAME.height}`}
      role="img"
      aria-label={words.pictureName(readings.length, figures.number(worst, 2))}
      className={`${plot.plot} ${plot.bounded}`}
    >
      <PlotAxes xs={xs} ys={ys} frame={FRAME} across={words.axisDial} up={words.axisOff} />
      <path d={`M${FRAME.left} ${ys.place(0)}H${FRAME.width - FRAME.right}`} className={styles.fit} />
      {before.length > 1 && (
        <path
          d={before
            .map(
              ({ dial, offPercent }, at) =>
                `${at === 0 ? 'M' : 'L'}${xs.place(dial)} ${ys.place(offPercent)}`,
            )
            .join('')}
          className={styles.before}
        />
      )}
      {readings.map(({ id, dial, offPercent, counts }) => (
        <circle
          key={id}
          cx={xs.place(dial)}
          cy={ys.place(offPercent)}
          r={counts ? 4 : 5}
          className={counts ? styles.counts : styles.aside}
        />
      ))}
    </svg>
  );
}
