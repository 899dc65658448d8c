import type { KeyboardEvent } from 'react';
import { plotScale, tickDecimals } from '../../parts/plot-scale.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { type Measure, measured } from './measures.js';
import { nextPoint, type PlacedPoint } from './point-walk.js';
import type { ShownWay } from './shown-way.js';
import { useMeasureWords } from './use-measure-words.js';
import styles from './ways.module.css';

export interface WaysLink {
  readonly shown: readonly ShownWay[];
  readonly pointed: string | undefined;
  readonly marked: string | undefined;
  readonly onPoint: (key: string | undefined) => void;
  readonly onMark: (key: string) => void;
}

interface TradeOffPictureProps extends WaysLink {
  readonly across: Measure;
  readonly up: Measure;
  /** Enter on a way. */
  readonly onTake: (key: string) => void;
}

const PLOT = { width: 620, height: 400, left: 82, right: 18, top: 16, bottom: 52 } as const;

/** Each way as a point where two of its figures cross. The points are one choice of many: arrow keys go through them. */
export function TradeOffPicture(props: TradeOffPictureProps) {
  const { shown, across, up, pointed, marked } = props;
  const words = useWords(RECIPES_WORDS);
  const placed = shown.flatMap((one) => {
    const x = measured(one.way, across);
    const y = measured(one.way, up);
    return x === undefined || y === undefined ? [] : [{ ...one, x, y }];
  });
  const xs = plotScale(
    placed.map(({ x }) => x),
    [PLOT.left, PLOT.width - PLOT.right],
  );
  const ys = plotScale(
    placed.map(({ y }) => y),
    [PLOT.height - PLOT.bottom, PLOT.top],
  );
  const points = placed.map((one) => ({ ...one, x: xs.place(one.x), y: ys.place(one.y) }));
  const called = points.find(({ key }) => key === (pointed ?? marked));
  const stop = points.some(({ key }) => key === marked) ? marked : points[0]?.key;
  if (points.length === 0) return null;
  return (
    <figure className={styles.picture}>
      <div
        role="radiogroup"
        aria-label={words.pictureName(words.measures[across], words.measures[up], points.length)}
      >
        <svg viewBox={`0 0 ${PLOT.width} ${PLOT.height}`} role="presentation" className={styles.plot}>
          <Axis side="across" measure={across} scale={xs} />
          <Axis side="up" measure={up} scale={ys} />
          {/* Those that none beats are drawn last, over the rest. */}
          {points.toReversed().map((point) => (
            <Point key={point.key} {...props} point={point} points={points} isStop={point.key === stop} />
          ))}
          {called && <Called point={called} />}
        </svg>
      </div>
      <figcaption className="quiet small">
        <span className={styles.legend}>
          <span>● {words.legend.ahead}</span>
          <span>○ {words.legend.beaten}</span>
          <span>◎ {words.legend.chosen}</span>
          <span>✕ {words.legend.now}</span>
        </span>
        {words.pictureKeys}
      </figcaption>
    </figure>
  );
}

interface PointProps extends TradeOffPictureProps {
  readonly point: ShownWay & PlacedPoint;
  readonly points: readonly (ShownWay & PlacedPoint)[];
  readonly isStop: boolean;
}

function Point({ point, points, isStop, pointed, marked, onPoint, onMark, onTake, across, up }: PointProps) {
  const words = useWords(RECIPES_WORDS);
  const measures = useMeasureWords();
  const { key, way, x, y, isAhead, isNow } = point;
  const isMarked = key === marked;
  const inWords = (measure: Measure) => measures.whole(way, measure);
  const walk = (event: KeyboardEvent<SVGGElement>) => {
    if (event.key === 'Enter') onTake(key);
    if (event.key === ' ') onMark(key);
    const next = nextPoint(points, key, event.key);
    if (event.key === ' ' || event.key === 'Enter' || next) event.preventDefault();
    if (!next) return;
    onMark(next);
    const place = event.currentTarget.parentElement;
    place?.querySelector<SVGGElement>(`[data-way="${CSS.escape(next)}"]`)?.focus();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a radio button cannot stand inside a drawing
    <g
      role="radio"
      aria-checked={isMarked}
      aria-label={`${key}: ${inWords(across)}, ${inWords(up)}${isNow ? `, ${words.isNow}` : ''}`}
      tabIndex={isStop ? 0 : -1}
      data-way={key}
      className={styles.point}
      onClick={() => onMark(key)}
      onDoubleClick={() => onTake(key)}
      onKeyDown={walk}
      onPointerEnter={() => onPoint(key)}
      onPointerLeave={() => onPoint(undefined)}
      onFocus={() => onPoint(key)}
      onBlur={() => onPoint(undefined)}
    >
      <circle cx={x} cy={y} r={14} className={styles.reach} />
      {(isMarked || key === pointed) && (
        <circle cx={x} cy={y} r={11} className={isMarked ? styles.ring : styles.hover} />
      )}
      <circle cx={x} cy={y} r={isAhead ? 6 : 4.5} className={isAhead ? styles.ahead : styles.beaten} />
      {isNow && <path d={`M${x - 10} ${y - 10}l20 20m0-20l-20 20`} className={styles.now} />}
    </g>
  );
}

function Called({ point: { key, x, y } }: { readonly point: ShownWay & PlacedPoint }) {
  const isRight = x > PLOT.width * 0.6;
  return (
    <text
      x={isRight ? x - 16 : x + 16}
      y={y - 14}
      textAnchor={isRight ? 'end' : 'start'}
      className={styles.called}
    >
      {key}
    </text>
  );
}

interface AxisProps {
  readonly side: 'across' | 'up';
  readonly measure: Measure;
  readonly scale: ReturnType<typeof plotScale>;
}

function Axis({ side, measure, scale }: AxisProps) {
  const figures = useFigures();
  const measures = useMeasureWords();
  const { perKept } = measures.shownAs(measure);
  const decimals = tickDecimals(scale.ticks.map((tick) => tick * perKept));
  const floor = PLOT.height - PLOT.bottom;
  return (
    <g className={styles.axis}>
      {scale.ticks.map((tick) => {
        const at = scale.place(tick);
        const label = figures.number(tick * perKept, decimals);
        return side === 'across' ? (
          <g key={tick}>
            <path d={`M${at} ${PLOT.top}V${floor}`} />
            <text x={at} y={floor + 18} textAnchor="middle">
              {label}
            </text>
          </g>
        ) : (
          <g key={tick}>
            <path d={`M${PLOT.left} ${at}H${PLOT.width - PLOT.right}`} />
            <text x={PLOT.left - 6} y={at + 4} textAnchor="end">
              {label}
            </text>
          </g>
        );
      })}
      {side === 'across' ? (
        <text x={PLOT.width - PLOT.right} y={PLOT.height - 10} textAnchor="end" className={styles.axisName}>
          {measures.heading(measure)} →
        </text>
      ) : (
        <text x={PLOT.left + 6} y={PLOT.top + 8} className={styles.axisName}>
          ↑ {measures.heading(measure)}
        </text>
      )}
    </g>
  );
}
