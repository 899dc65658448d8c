import type { MachineWearView } from '../../../contract/index.js';
import { thouFromMetres } from '../../../core/units/index.js';
import plot from '../../parts/plot.module.css';
import { plotScale, tickDecimals } from '../../parts/plot-scale.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { WEAR_WORDS } from '../../words/wear.js';
import { wearLine } from './wear-line.js';
import styles from './wear-picture.module.css';

interface WearPictureProps {
  readonly machineName: string;
  readonly wear: MachineWearView['machines'][number];
  readonly toleranceM: number;
}

const PLOT = { width: 900, height: 320, left: 70, right: 24, top: 34, bottom: 34 } as const;

/** Month after month how far first strings came out, the drift through them, and where the tolerance ends. */
export function WearPicture({ machineName, wear, toleranceM }: WearPictureProps) {
  const words = useWords(WEAR_WORDS);
  const figures = useFigures();
  const { points, line, limitM } = wearLine(wear, toleranceM);
  const small = (valueM: number) => (figures.lengthUnit === 'in' ? thouFromMetres(valueM) : valueM * 1e6);
  const xs = plotScale(
    points.map(({ day }) => day),
    [PLOT.left, PLOT.width - PLOT.right],
  );
  const ys = plotScale(
    [
      ...points.flatMap(({ offM, halfM }) => [offM - halfM, offM + halfM]),
      ...(limitM === undefined ? [] : [limitM]),
    ].map(small),
    [PLOT.height - PLOT.bottom, PLOT.top],
  );
  const right = PLOT.width - PLOT.right;
  const lastDay = points.at(-1)?.day ?? 0;
  const up = (valueM: number) => ys.place(small(valueM));
  const shownDates = [0, Math.floor((wear.points.length - 1) / 2), wear.points.length - 1];
  return (
    <svg
      viewBox={`0 0 ${PLOT.width} ${PLOT.height}`}
      role="img"
      aria-label={words.pictureName(machineName, points.length)}
      className={`${plot.plot} ${plot.bounded}`}
    >
      <g className={plot.axes}>
        {[...new Set(shownDates)].map((at) => (
          <text key={at} x={xs.place(points[at]!.day)} y={PLOT.height - 10} textAnchor="middle">
            {figures.date(wear.points[at]!.date)}
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
        <text x={PLOT.left} y={16} className={plot.name}>
          {words.axisUp(figures.lengthUnit)}
        </text>
      </g>
      {limitM !== undefined && (
        <g>
          <path d={`M${PLOT.left} ${up(limitM)}H${right}`} className={styles.limit} />
          <text x={PLOT.left + 8} y={up(limitM) - 6} className={plot.name}>
            {words.tolerance}
          </text>
        </g>
      )}
      {line && (
        <path
          d={`M${xs.place(0)} ${up(line.fromM)}L${xs.place(lastDay)} ${up(line.toM)}`}
          className={styles.drift}
        />
      )}
      {points.map(({ day, offM, halfM }) => (
        <g key={day}>
          <path d={`M${xs.place(day)} ${up(offM - halfM)}V${up(offM + halfM)}`} className={styles.interval} />
          <circle cx={xs.place(day)} cy={up(offM)} r={5} className={styles.point} />
        </g>
      ))}
    </svg>
  );
}
