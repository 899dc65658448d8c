import type { Estimate } from '../../../core/numeric/index.js';
import { formatGauge, thouFromMetres } from '../../../core/units/index.js';
import { plotScale } from '../../parts/plot-scale.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import type { RunSample } from './run-samples.js';
import styles from './runs.module.css';

interface RunChartProps {
  readonly samples: readonly RunSample[];
  readonly gaugeM: number;
  readonly expected: Estimate | undefined;
  /** Moments at which a spool was changed. */
  readonly changes: readonly string[];
}

const CHART = { height: 340, left: 92, right: 24, top: 20, bottom: 44, least: 900, perSample: 64 } as const;

/** String after string: its readings as dots, its mean as a mark, gauge and expected band behind them. */
export function RunChart({ samples, gaugeM, expected, changes }: RunChartProps) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const width = Math.max(CHART.least, CHART.left + CHART.right + samples.length * CHART.perSample);
  const values = samples.flatMap(({ readings }) => readings.map(({ value }) => value));
  const band = expected ? [expected.value - 2 * expected.u, expected.value + 2 * expected.u] : [];
  const scale = plotScale([...values, gaugeM, ...band], [CHART.height - CHART.bottom, CHART.top]);
  const step = (width - CHART.left - CHART.right) / samples.length;
  const xOf = (at: number): number => CHART.left + (at + 0.5) * step;
  const right = width - CHART.right;
  return (
    <div className={styles.scroll}>
      <svg
        viewBox={`0 0 ${width} ${CHART.height}`}
        role="img"
        aria-label={words.chartName(
          samples.length,
          figures.diameter(Math.min(...values)),
          figures.diameter(Math.max(...values)),
        )}
        className={styles.chart}
      >
        {band.length === 2 && (
          <rect
            x={CHART.left}
            y={scale.place(band[1]!)}
            width={right - CHART.left}
            height={scale.place(band[0]!) - scale.place(band[1]!)}
            className={styles.band}
          />
        )}
        {scale.ticks.map((tick) => (
          <g key={tick}>
            <path d={`M${CHART.left} ${scale.place(tick)}H${right}`} className={styles.rule} />
            <text x={CHART.left - 8} y={scale.place(tick) + 4} textAnchor="end" className={styles.tick}>
              {figures.diameter(tick)}
            </text>
          </g>
        ))}
        <path d={`M${CHART.left} ${scale.place(gaugeM)}H${right}`} className={styles.gauge} />
        <text x={right} y={scale.place(gaugeM) - 6} textAnchor="end">
          {words.gauge(formatGauge(thouFromMetres(gaugeM)))}
        </text>
        {changes.map((at) => {
          const x = CHART.left + samples.filter((sample) => sample.at < at).length * step;
          return (
            <path
              key={at}
              d={`M${x} ${CHART.top}V${CHART.height - CHART.bottom}`}
              className={styles.change}
            />
          );
        })}
        <path
          d={samples
            .map(({ meanM }, at) => `${at === 0 ? 'M' : 'L'}${xOf(at)} ${scale.place(meanM)}`)
            .join('')}
          className={styles.line}
        />
        {samples.map((sample, at) => (
          <Sample key={sample.key} sample={sample} x={xOf(at)} place={scale.place} />
        ))}
      </svg>
    </div>
  );
}

interface SampleProps {
  readonly sample: RunSample;
  readonly x: number;
  readonly place: (value: number) => number;
}

function Sample({ sample: { trial, at, readings, meanM }, x, place }: SampleProps) {
  const words = useWords(RUNS_WORDS);
  const figures = useFigures();
  const y = place(meanM);
  return (
    <g>
      {readings.map(({ id, value }) => (
        <circle key={id} cx={x + 10} cy={place(value)} r={1.8} className={styles.reading} />
      ))}
      {trial?.verdict === 'scrap' ? (
        <rect x={x - 6} y={y - 6} width={12} height={12} className={styles.scrapped} />
      ) : (
        <circle cx={x} cy={y} r={6} className={styles.mean} />
      )}
      <text x={x} y={CHART.height - 22} textAnchor="middle">
        {trial ? words.shortTrial(trial.number) : ''}
      </text>
      <text x={x} y={CHART.height - 6} textAnchor="middle" className={styles.tick}>
        {figures.time(at)}
      </text>
    </g>
  );
}
