import type { DryRoomLimits } from '../../../core/stock/index.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { alongTime, cutAtGaps, stripOf } from './chart-scale.js';
import styles from './climate-chart.module.css';
import { useClimateWords } from './use-climate-words.js';
import type { RoomReading, ShownAir } from './use-dry-room.js';

interface ClimateChartProps {
  readonly air: ShownAir;
  readonly room: string;
  readonly limits: DryRoomLimits;
}

const LEFT = 64;
const WIDTH = 760;
const STRIP = 120;
const BETWEEN = 34;
const FOOT = 26;
const PLOT = WIDTH - LEFT - 12;
/** Of more than so many readings a dot each would be a blot. */
const MOST_DOTS = 120;

/** Humidity over temperature, along one time; limits as dashed lines, what lies beyond them as triangles, what nobody read as bands. */
export function ClimateChart({ air, room, limits }: ClimateChartProps) {
  const words = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const climate = useClimateWords(limits);
  const { readings, gaps, excursions } = air;
  const x = alongTime(air, PLOT);
  const newest = readings.at(-1);
  const strips = [
    {
      name: words.humidity,
      unit: words.percent,
      figureOf: (reading: RoomReading) => reading.relativeHumidity * 100,
      limits: [limits.mostHumidity * 100],
      isOff: (value: number) => value > limits.mostHumidity * 100,
    },
    {
      name: words.temperature,
      unit: words.celsius,
      figureOf: (reading: RoomReading) => reading.temperatureC,
      limits: [limits.leastC, limits.mostC],
      isOff: (value: number) => value < limits.leastC || value > limits.mostC,
    },
  ];
  const height = strips.length * (STRIP + BETWEEN) + FOOT;
  const says = newest ? `. ${words.chartSays(climate.reading(newest), climate.limits)}` : '';
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${height}`}
      className={styles.chart}
      role="img"
      aria-label={`${words.chart(readings.length, room)}${says} ${words.chartCounts(excursions.length, gaps.length)}`}
    >
      {strips.map(({ name, unit, figureOf, limits: lines, isOff }, at) => {
        const strip = stripOf(readings.map(figureOf), lines, STRIP);
        const pointOf = (reading: RoomReading) => `${x(reading.at)},${strip.place(figureOf(reading))}`;
        const off = readings.filter((reading) => isOff(figureOf(reading)));
        return (
          <g key={name} transform={`translate(${LEFT} ${at * (STRIP + BETWEEN) + BETWEEN})`}>
            <text x={-LEFT} y={-12} className={styles.name}>
              {name}, {unit}
            </text>
            {gaps.map(({ from, to }) => (
              <rect key={from} x={x(from)} width={x(to) - x(from)} height={STRIP} className={styles.gap} />
            ))}
            <line x1={0} y1={STRIP} x2={PLOT} y2={STRIP} className={styles.axis} />
            {lines.map((limit) => (
              <g key={limit}>
                <line
                  x1={0}
                  y1={strip.place(limit)}
                  x2={PLOT}
                  y2={strip.place(limit)}
                  className={styles.limit}
                />
                <text x={-10} y={strip.place(limit) + 4} textAnchor="end" className={styles.figure}>
                  {figures.number(limit)}
                </text>
              </g>
            ))}
            {cutAtGaps(readings, gaps).map((piece) => (
              <polyline key={piece[0]!.at} points={piece.map(pointOf).join(' ')} className={styles.line} />
            ))}
            {readings.length <= MOST_DOTS &&
              readings
                .filter((reading) => !off.includes(reading))
                .map((reading) => (
                  <circle
                    key={reading.at}
                    cx={x(reading.at)}
                    cy={strip.place(figureOf(reading))}
                    r={3}
                    className={styles.dot}
                  />
                ))}
            {(off.length <= MOST_DOTS ? off : everyNth(off, Math.ceil(off.length / MOST_DOTS))).map(
              (reading) => (
                <path
                  key={reading.at}
                  d={`M${x(reading.at) - 6} ${strip.place(figureOf(reading)) + 5}h12l-6 -11z`}
                  className={styles.off}
                />
              ),
            )}
          </g>
        );
      })}
      <text x={LEFT} y={height - 4} className={styles.figure}>
        {figures.moment(air.from)}
      </text>
      <text x={LEFT + PLOT} y={height - 4} textAnchor="end" className={styles.figure}>
        {figures.moment(air.to)}
      </text>
    </svg>
  );
}

const everyNth = <One,>(all: readonly One[], step: number): readonly One[] =>
  all.filter((_, at) => at % step === 0);
