import type { DryRoomLimits } from '../../../core/stock/index.js';
import { useFigures } from '../../sight/figures.js';
import { DRY_ROOM_WORDS } from '../../words/dry-room.js';
import { useWords } from '../../words/language.js';
import { alongTime, stripOf } from './chart-scale.js';
import styles from './climate-chart.module.css';
import { useClimateWords } from './use-climate-words.js';
import type { RoomReading } from './use-dry-room.js';

interface ClimateChartProps {
  /** The newest first. */
  readonly readings: readonly RoomReading[];
  readonly room: string;
  readonly limits: DryRoomLimits;
}

const LEFT = 64;
const WIDTH = 760;
const STRIP = 120;
const BETWEEN = 34;
const FOOT = 26;
const PLOT = WIDTH - LEFT - 12;

/** Humidity over temperature, along one time; limits as dashed lines, what lies beyond them as triangles. */
export function ClimateChart({ readings, room, limits }: ClimateChartProps) {
  const words = useWords(DRY_ROOM_WORDS);
  const figures = useFigures();
  const climate = useClimateWords(limits);
  const inOrder = readings.toReversed();
  const x = alongTime(
    inOrder.map(({ at }) => at),
    PLOT,
  );
  const [newest] = readings;
  const first = inOrder[0];
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
  return (
    <svg
      viewBox={`0 0 ${WIDTH} ${height}`}
      className={styles.chart}
      role="img"
      aria-label={`${words.chart(readings.length, room)}. ${newest ? words.chartSays(climate.reading(newest), climate.limits) : ''}`}
    >
      {strips.map(({ name, unit, figureOf, limits: lines, isOff }, at) => {
        const strip = stripOf(inOrder.map(figureOf), lines, STRIP);
        const points = inOrder.map((reading) => ({
          id: reading.id,
          x: x(reading.at),
          y: strip.place(figureOf(reading)),
          isOff: isOff(figureOf(reading)),
        }));
        return (
          <g key={name} transform={`translate(${LEFT} ${at * (STRIP + BETWEEN) + BETWEEN})`}>
            <text x={-LEFT} y={-12} className={styles.name}>
              {name}, {unit}
            </text>
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
            <polyline
              points={points.map((point) => `${point.x},${point.y}`).join(' ')}
              className={styles.line}
            />
            {points.map((point) =>
              point.isOff ? (
                <path key={point.id} d={`M${point.x - 6} ${point.y + 5}h12l-6 -11z`} className={styles.off} />
              ) : (
                <circle key={point.id} cx={point.x} cy={point.y} r={3} className={styles.dot} />
              ),
            )}
          </g>
        );
      })}
      <text x={LEFT} y={height - 4} className={styles.figure}>
        {first && figures.date(first.at.slice(0, 10))}
      </text>
      <text x={LEFT + PLOT} y={height - 4} textAnchor="end" className={styles.figure}>
        {newest && figures.moment(newest.at)}
      </text>
    </svg>
  );
}
