import { metresFromThou } from '../../../core/units/index.js';
import desk from '../../parts/desk.module.css';
import { Picture } from '../../parts/picture.js';
import { useWords } from '../../words/language.js';
import { RUNS_WORDS } from '../../words/runs.js';
import { RunChart } from './run-chart.js';
import type { RunRecord } from './run-record.js';
import type { RunSample } from './run-samples.js';
import styles from './runs.module.css';
import { SamplesTable } from './samples-table.js';
import { useExpectedBand } from './use-expected-band.js';

interface ChartPartProps {
  readonly run: RunRecord;
  readonly samples: readonly RunSample[];
  /** When wire was taken off a spool. */
  readonly changes: readonly string[];
}

/** Diameters through the run against gauge and recipe, as a chart or as a table. */
export function ChartPart({ run, samples, changes }: ChartPartProps) {
  const words = useWords(RUNS_WORDS);
  const expected = useExpectedBand(run);
  const { chartLegend: legend } = words;
  const gaugeM = metresFromThou(run.body.spec.gaugeThou);
  if (samples.length === 0) {
    return (
      <section className={desk.part} aria-labelledby="chart">
        <h2 id="chart">{words.chart}</h2>
        <p className="quiet">{words.chartNone}</p>
      </section>
    );
  }
  const { closedAt = '9' } = run.body;
  const changed = changes.filter((at) => at < closedAt);
  return (
    <div className={desk.part}>
      <Picture
        title={words.chart}
        picture={<RunChart samples={samples} gaugeM={gaugeM} expected={expected} changes={changed} />}
        table={<SamplesTable samples={samples} gaugeM={gaugeM} />}
        caption={
          <p className={`quiet small ${styles.legend}`}>
            <span>{legend.mean}</span>
            <span>{legend.scrap}</span>
            <span>{legend.reading}</span>
            <span>{legend.gauge}</span>
            {expected && <span>{legend.band}</span>}
            {changed.length > 0 && <span>{legend.spool}</span>}
          </p>
        }
      />
    </div>
  );
}
