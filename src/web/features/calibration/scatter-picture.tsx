import { thouFromMetres } from '../../../core/units/index.js';
import plot from '../../parts/plot.module.css';
import { plotScale, tickDecimals } from '../../parts/plot-scale.js';
import { useFigures } from '../../sight/figures.js';
import { CALIBRATION_WORDS } from '../../words/calibration.js';
import { useWords } from '../../words/language.js';
import styles from './scatter-picture.module.css';
import { type CalibrationBand, type CalibrationPoint, offOf, type Quantity } from './shown-points.js';

interface ScatterPictureProps {
  readonly points: readonly CalibrationPoint[];
  readonly bands: readonly CalibrationBand[];
  /** Half of the interval of ordinary strings. */
  readonly within: number;
  readonly by: Quantity;
}

const PLOT = { width: 900, height: 380, left: 70, right: 20, top: 34, bottom: 46 } as const;

/** Across what was expected, up how far off it came out: a sound prediction is a cloud about the line. */
export function ScatterPicture({ points, bands, within, by }: ScatterPictureProps) {
  const words = useWords(CALIBRATION_WORDS).scatter;
  const figures = useFigures();
  const { across, up } = useScales(by);
  const ends = bands.flatMap(({ from, to, meanOff, spread }) => {
    const middle = (from + to) / 2;
    const scale = by === 'weight' ? 1 / middle : 1;
    return [
      { middle, low: (meanOff - spread) * scale, high: (meanOff + spread) * scale, at: meanOff * scale },
    ];
  });
  const xs = plotScale(
    [...points.map(({ predicted }) => predicted), ...ends.map(({ middle }) => middle)].map(across),
    [PLOT.left, PLOT.width - PLOT.right],
  );
  const ys = plotScale(
    [
      ...points.map((point) => offOf(point, by)),
      within,
      -within,
      ...ends.flatMap(({ low, high }) => [low, high]),
    ].map(up),
    [PLOT.height - PLOT.bottom, PLOT.top],
  );
  const right = PLOT.width - PLOT.right;
  const floor = PLOT.height - PLOT.bottom;
  return (
    <svg
      viewBox={`0 0 ${PLOT.width} ${PLOT.height}`}
      role="img"
      aria-label={words.pictureName(points.length, points.filter(({ isFlagged }) => isFlagged).length)}
      className={plot.plot}
    >
      <rect
        x={PLOT.left}
        y={ys.place(up(within))}
        width={right - PLOT.left}
        height={ys.place(up(-within)) - ys.place(up(within))}
        className={styles.ordinary}
      />
      <g className={plot.axes}>
        {xs.ticks.map((tick) => (
          <text key={tick} x={xs.place(tick)} y={floor + 16} textAnchor="middle">
            {figures.number(tick, tickDecimals(xs.ticks))}
          </text>
        ))}
        {ys.ticks.map((tick) => (
          <g key={tick}>
            <path d={`M${PLOT.left} ${ys.place(tick)}H${right}`} />
            <text x={PLOT.left - 8} y={ys.place(tick) + 4} textAnchor="end">
              {figures.number(tick, tickDecimals(ys.ticks))}
            </text>
          </g>
        ))}
        <text x={right} y={PLOT.height - 6} textAnchor="end" className={plot.name}>
          {words.axisAcross[by](figures.lengthUnit)}
        </text>
        <text x={PLOT.left} y={16} className={plot.name}>
          {words.axisUp[by](figures.lengthUnit)}
        </text>
      </g>
      <path d={`M${PLOT.left} ${ys.place(0)}H${right}`} className={styles.zero} />
      {ends.map(({ middle, low, high, at }) => (
        <g key={middle} className={styles.band}>
          <path d={`M${xs.place(across(middle))} ${ys.place(up(low))}V${ys.place(up(high))}`} />
          <path d={`M${xs.place(across(middle)) - 7} ${ys.place(up(at))}h14`} />
        </g>
      ))}
      {points.toReversed().map((point) => (
        <Mark
          key={`${point.runId} ${point.stringId}`}
          x={xs.place(across(point.predicted))}
          y={ys.place(up(offOf(point, by)))}
          isFlagged={point.isFlagged}
        />
      ))}
    </svg>
  );
}

/** An ordinary string is a dot, one that is flagged a diamond: told apart by shape too. */
const Mark = ({
  x,
  y,
  isFlagged,
}: {
  readonly x: number;
  readonly y: number;
  readonly isFlagged: boolean;
}) =>
  isFlagged ? (
    <path d={`M${x} ${y - 7}l7 7l-7 7l-7 -7z`} className={styles.flagged} />
  ) : (
    <circle cx={x} cy={y} r={3.5} className={styles.point} />
  );

/** From SI into what the axes are read in. */
function useScales(by: Quantity): {
  readonly across: (value: number) => number;
  readonly up: (value: number) => number;
} {
  const { lengthUnit } = useFigures();
  if (by === 'weight') return { across: (value) => value * 1000, up: (value) => value * 100 };
  return lengthUnit === 'in'
    ? { across: thouFromMetres, up: thouFromMetres }
    : { across: (value) => value * 1e3, up: (value) => value * 1e6 };
}
