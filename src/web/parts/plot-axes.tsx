import { useFigures } from '../sight/figures.js';
import plot from './plot.module.css';
import { type PlotScale, tickDecimals } from './plot-scale.js';

interface PlotAxesProps {
  readonly xs: PlotScale;
  readonly ys: PlotScale;
  readonly frame: {
    readonly width: number;
    readonly height: number;
    readonly left: number;
    readonly right: number;
    readonly bottom: number;
  };
  /** What goes across, and what goes up, with their units. */
  readonly across: string;
  readonly up: string;
}

/** Ruled lines and figures of a plot, and what its axes are. */
export function PlotAxes({ xs, ys, frame, across, up }: PlotAxesProps) {
  const figures = useFigures();
  const { width, height, left, right } = frame;
  const floor = height - frame.bottom;
  return (
    <g className={plot.axes}>
      {xs.ticks.map((tick) => (
        <text key={tick} x={xs.place(tick)} y={floor + 16} textAnchor="middle">
          {figures.number(tick, tickDecimals(xs.ticks))}
        </text>
      ))}
      {ys.ticks.map((tick) => (
        <g key={tick}>
          <path d={`M${left} ${ys.place(tick)}H${width - right}`} />
          <text x={left - 8} y={ys.place(tick) + 4} textAnchor="end">
            {figures.number(tick, tickDecimals(ys.ticks))}
          </text>
        </g>
      ))}
      <text x={width - right} y={height - 4} textAnchor="end" className={plot.name}>
        {across}
      </text>
      <text x={left} y={14} className={plot.name}>
        {up}
      </text>
    </g>
  );
}
