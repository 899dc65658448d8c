import { type KeyboardEvent, type MouseEvent, useMemo, useState } from 'react';
import type { QualityView } from '../../../contract/index.js';
import plot from '../../parts/plot.module.css';
import { tickDecimals } from '../../parts/plot-scale.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { QUALITY_WORDS } from '../../words/quality.js';
import styles from './quality.module.css';
import { nearestPoint, PLOT, seriesDrawing } from './series-drawing.js';
import { useMeasureScale } from './use-measure-scale.js';

interface SeriesPictureProps {
  readonly view: QualityView;
  readonly current: string | undefined;
  readonly onOpen: (runId: string) => void;
}

/** Points of runs in time. One points at it, or walks it by arrow keys, and opens the run. */
export function SeriesPicture({ view, current, onOpen }: SeriesPictureProps) {
  const words = useWords(QUALITY_WORDS).series;
  const figures = useFigures();
  const { series, toleranceM, measure } = view;
  const scale = useMeasureScale(measure);
  const { points, limits, change } = series;
  const isOff = measure === 'first' || measure === 'running';
  const drawing = useMemo(
    () => seriesDrawing(series, scale.onAxis, isOff ? [toleranceM, -toleranceM] : []),
    [series, scale.onAxis, isOff, toleranceM],
  );
  const [walked, setWalked] = useState(points.length - 1);
  const at = Math.min(walked, points.length - 1);
  const shown = points.findIndex(({ runId }) => runId === current);
  const right = PLOT.width - PLOT.right;
  const line = (value: number) => `M${PLOT.left} ${drawing.up(value)}H${right}`;
  const onClick = (event: MouseEvent<HTMLButtonElement>) => {
    // A key press has no place.
    if (event.detail === 0) return onOpen(points[at]!.runId);
    const { left, width } = event.currentTarget.getBoundingClientRect();
    const nearest = nearestPoint(drawing.xs, ((event.clientX - left) / width) * PLOT.width);
    setWalked(nearest);
    onOpen(points[nearest]!.runId);
  };
  const onKeyDown = (event: KeyboardEvent) => {
    const step = { ArrowLeft: -1, ArrowRight: 1, Home: -points.length, End: points.length }[event.key];
    if (step === undefined) return;
    event.preventDefault();
    setWalked(Math.max(0, Math.min(points.length - 1, at + step)));
  };
  const told = (place: number) =>
    words.point(figures.date(points[place]!.at.slice(0, 10)), scale.told(points[place]!.value));
  return (
    <div className={styles.chart}>
      <svg
        viewBox={`0 0 ${PLOT.width} ${PLOT.height}`}
        role="img"
        aria-label={words.pictureName(points.length, series.signals.length)}
        className={plot.plot}
      >
        <g className={plot.axes}>
          {drawing.ticks.map((tick) => (
            <text key={tick} x={PLOT.left - 8} y={drawing.tickUp(tick) + 4} textAnchor="end">
              {figures.number(tick, tickDecimals(drawing.ticks))}
            </text>
          ))}
          {drawing.dated.map((place) => (
            <text
              key={place}
              x={drawing.xs[place]}
              y={PLOT.height - 10}
              textAnchor={anchorOf(place, points.length)}
            >
              {figures.date(points[place]!.at.slice(0, 10))}
            </text>
          ))}
          <text x={PLOT.left} y={16} className={plot.name}>
            {words.axisUp[measure](scale.unit)}
          </text>
        </g>
        {isOff &&
          [toleranceM, -toleranceM].map((value) => (
            <path key={value} d={line(value)} className={styles.tolerance} />
          ))}
        {limits && (
          <>
            <path d={line(limits.centre)} className={styles.centre} />
            <path d={`${line(limits.lower)}${line(limits.upper)}`} className={styles.limit} />
          </>
        )}
        <path d={drawing.ordinary} className={styles.points} />
        <path d={drawing.signals} className={styles.signals} />
        {change && points[change.point] && (
          <path
            d={`M${drawing.xs[change.point]} ${PLOT.top}V${PLOT.height - PLOT.bottom}`}
            className={styles.change}
          />
        )}
        {[at, shown]
          .filter((place) => place >= 0)
          .map((place) => (
            <circle
              key={place}
              cx={drawing.xs[place]}
              cy={drawing.up(points[place]!.value)}
              r={8}
              className={styles.here}
            />
          ))}
      </svg>
      <button
        type="button"
        className={styles.finder}
        aria-label={words.finder(told(at))}
        onClick={onClick}
        onKeyDown={onKeyDown}
      />
    </div>
  );
}

const anchorOf = (place: number, count: number): 'start' | 'middle' | 'end' =>
  place === 0 ? 'start' : place === count - 1 ? 'end' : 'middle';
