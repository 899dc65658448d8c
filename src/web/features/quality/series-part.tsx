import { NativeSelect } from '@mantine/core';
import { Link, useNavigate } from '@tanstack/react-router';
import type { QualityView } from '../../../contract/index.js';
import { MEASURES } from '../../../core/quality/index.js';
import desk from '../../parts/desk.module.css';
import { Empty } from '../../parts/empty.js';
import { type LongColumn, LongTable } from '../../parts/long-table.js';
import { Picture } from '../../parts/picture.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import { measureOf, type QualitySearch } from './asked-of.js';
import { SeriesPicture } from './series-picture.js';
import { useMeasureScale } from './use-measure-scale.js';

interface SeriesProps {
  readonly view: QualityView;
  readonly search: QualitySearch;
}

/** Run after run, one figure of each; any of them opens. */
export function SeriesPart({ view, search }: SeriesProps) {
  const words = useWords(QUALITY_WORDS).series;
  const figures = useFigures();
  const navigate = useNavigate();
  const { measure } = view;
  const scale = useMeasureScale(measure);
  const { points, signals, change } = view.series;
  const go = (wanted: QualitySearch) =>
    void navigate({ to: '/quality', search: { ...search, ...wanted }, resetScroll: false });
  const changedAt = change && points[change.point];
  return (
    <div className={desk.part} id="chart">
      <Picture
        title={words.titles[measure]}
        picture={
          points.length === 0 ? (
            <Empty what={words.none} />
          ) : (
            <SeriesPicture view={view} current={search.run} onOpen={(run) => go({ run })} />
          )
        }
        table={<SeriesTable view={view} search={search} />}
        caption={
          <p className="quiet small">
            {words.caption(
              points.length,
              points.some(({ runs }) => runs > 1),
              signals.length,
              measure === 'first' || measure === 'running',
            )}{' '}
            {change && changedAt
              ? words.change(
                  figures.date(changedAt.at.slice(0, 10)),
                  scale.told(change.before),
                  scale.told(change.after),
                )
              : words.noChange}
          </p>
        }
      />
      <NativeSelect
        className={desk.narrowField}
        label={words.measure}
        value={measureOf(search)}
        onChange={(event) => go({ measure: event.currentTarget.value })}
        data={MEASURES.map((value) => ({ value, label: words.titles[value] }))}
      />
    </div>
  );
}

type Point = QualityView['series']['points'][number];

function SeriesTable({ view, search }: SeriesProps) {
  const words = useWords(QUALITY_WORDS).series;
  const figures = useFigures();
  const scale = useMeasureScale(view.measure);
  const { points, signals } = view.series;
  const places = new Map(points.map((point, at) => [point, at]));
  const isSignal = new Set(signals);
  const columns: readonly LongColumn<Point>[] = [
    {
      heading: words.columns.begun,
      share: 3,
      cell: (point) => (
        <Link to="/quality" search={{ ...search, run: point.runId }} resetScroll={false}>
          {figures.moment(point.at)}
        </Link>
      ),
    },
    { heading: words.columns.value, share: 2, figures: true, cell: ({ value }) => scale.told(value) },
    {
      heading: words.columns.strings,
      share: 1,
      figures: true,
      cell: ({ strings }) => figures.number(strings),
    },
    { heading: words.columns.runs, share: 1, figures: true, cell: ({ runs }) => figures.number(runs) },
    {
      heading: words.columns.signal,
      share: 2,
      cell: (point) => (isSignal.has(places.get(point) ?? -1) ? words.signal : ''),
    },
  ];
  return (
    <LongTable
      caption={words.titles[view.measure]}
      columns={columns}
      rows={points}
      rowKey={({ runId }) => runId}
    />
  );
}
