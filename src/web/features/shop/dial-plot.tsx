import { type DialRow, dialFit } from '../../../core/winding/index.js';
import desk from '../../parts/desk.module.css';
import { Picture } from '../../parts/picture.js';
import plot from '../../parts/plot.module.css';
import { PlotAxes } from '../../parts/plot-axes.js';
import { plotScale } from '../../parts/plot-scale.js';
import { type SheetColumn, SheetTable } from '../../parts/sheet-table.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { SHOP_WORDS } from '../../words/shop.js';
import { WEAR_WORDS } from '../../words/wear.js';
import { type DialCurve, dialCurve } from './dial-curve.js';
import styles from './dial-plot.module.css';

interface DialPlotProps {
  readonly rows: readonly DialRow[];
}

const PLOT = { width: 720, left: 70, right: 20, top: 26 } as const;
const CURVE = { height: 300, bottom: 40 } as const;
const OFF = { height: 150, bottom: 34 } as const;

/** The calibration of a gearbox: measured rows, the curve that is set by, and how far each row stands off the trend of all. */
export function DialPlot({ rows }: DialPlotProps) {
  const { machine: words } = useWords(SHOP_WORDS);
  const curve = dialCurve(rows);
  if (!curve) return <NoCurve rows={rows} />;
  return (
    <div className={desk.part}>
      <Picture
        title={words.calibration}
        picture={
          <div className={desk.stack}>
            <CurvePlot rows={rows} curve={curve} />
            {curve.residuals.length > 0 && <OffPlot curve={curve} />}
          </div>
        }
        table={<DialTable rows={rows} curve={curve} />}
        caption={<p className="quiet small">{words.calibrationCaption}</p>}
      />
    </div>
  );
}

/** Says which rows go against the others, by the nearest table that keeps one direction. */
function NoCurve({ rows }: DialPlotProps) {
  const { machine: words } = useWords(SHOP_WORDS);
  const wear = useWords(WEAR_WORDS);
  const figures = useFigures();
  const against = dialFit(rows)?.against ?? [];
  return (
    <p className="care">
      {words.noCurve}
      {against.length > 0 && ` ${wear.against(against.map((dial) => figures.number(dial, 1)).join(', '))}`}
    </p>
  );
}

interface CurveProps {
  readonly rows: readonly DialRow[];
  readonly curve: DialCurve;
}

function CurvePlot({ rows, curve }: CurveProps) {
  const { machine: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const mm = rows.map(({ traversePerTurnM }) => traversePerTurnM * 1000);
  const xs = acrossScale(rows);
  const ys = plotScale(mm, [CURVE.height - CURVE.bottom, PLOT.top]);
  return (
    <svg
      viewBox={`0 0 ${PLOT.width} ${CURVE.height}`}
      role="img"
      aria-label={words.calibrationName(
        rows.length,
        figures.number(Math.min(...mm), 4),
        figures.number(Math.max(...mm), 4),
      )}
      className={`${plot.plot} ${plot.bounded}`}
    >
      <PlotAxes
        xs={xs}
        ys={ys}
        frame={{ ...PLOT, ...CURVE }}
        across={words.axisDial}
        up={words.axisTraverse}
      />
      <path
        d={curve.points
          .map(
            ({ dial, traversePerTurnM }, at) =>
              `${at === 0 ? 'M' : 'L'}${xs.place(dial)} ${ys.place(traversePerTurnM * 1000)}`,
          )
          .join('')}
        className={styles.curve}
      />
      {rows.map(({ dial, traversePerTurnM }) => (
        <circle
          key={dial}
          cx={xs.place(dial)}
          cy={ys.place(traversePerTurnM * 1000)}
          r={5}
          className={styles.row}
        />
      ))}
    </svg>
  );
}

function OffPlot({ curve: { points, residuals } }: { readonly curve: DialCurve }) {
  const { machine: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const xs = acrossScale(points);
  const ys = plotScale([0, ...residuals.map(({ offM }) => offM * 1e6)], [OFF.height - OFF.bottom, PLOT.top]);
  const worst = residuals.toSorted((a, b) => Math.abs(b.offM) - Math.abs(a.offM))[0]!;
  return (
    <svg
      viewBox={`0 0 ${PLOT.width} ${OFF.height}`}
      role="img"
      aria-label={words.residualName(figures.number(worst.offM * 1e6, 2), String(worst.dial))}
      className={`${plot.plot} ${plot.bounded}`}
    >
      <PlotAxes xs={xs} ys={ys} frame={{ ...PLOT, ...OFF }} across={words.axisDial} up={words.axisOff} />
      <path d={`M${PLOT.left} ${ys.place(0)}H${PLOT.width - PLOT.right}`} className={styles.zero} />
      {residuals.map(({ dial, offM }) => (
        <g key={dial}>
          <path
            d={`M${xs.place(dial)} ${ys.place(0)}V${ys.place(offM * 1e6)}`}
            className={dial === worst.dial ? styles.worst : styles.off}
          />
          <circle cx={xs.place(dial)} cy={ys.place(offM * 1e6)} r={4} className={styles.row} />
        </g>
      ))}
    </svg>
  );
}

const acrossScale = (rows: readonly { readonly dial: number }[]) =>
  plotScale(
    rows.map(({ dial }) => dial),
    [PLOT.left, PLOT.width - PLOT.right],
  );

function DialTable({ rows, curve }: CurveProps) {
  const { machine: words } = useWords(SHOP_WORDS);
  const figures = useFigures();
  const offOf = (dial: number) => curve.residuals.find((one) => one.dial === dial)?.offM;
  const columns: readonly SheetColumn<DialRow>[] = [
    { heading: words.rowColumns.dial, names: true, cell: ({ dial }) => dial },
    {
      heading: words.rowColumns.traverse,
      figures: true,
      cell: ({ traversePerTurnM }) => figures.number(traversePerTurnM * 1000, 4),
    },
    {
      heading: words.rowColumns.off,
      figures: true,
      cell: ({ dial }) => {
        const offM = offOf(dial);
        return offM === undefined ? '—' : figures.number(offM * 1e6, 2);
      },
    },
  ];
  return <SheetTable caption={words.calibration} columns={columns} rows={rows} rowKey={({ dial }) => dial} />;
}
