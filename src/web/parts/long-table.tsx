import { useVirtualizer } from '@tanstack/react-virtual';
import { memo, type ReactNode, useEffect, useRef } from 'react';
import styles from './long-table.module.css';

export interface LongColumn<Row> {
  readonly heading: string;
  readonly cell: (row: Row) => ReactNode;
  /** Width as a share of the table: `2` is twice `1`. */
  readonly share?: number;
  readonly figures?: boolean;
}

interface LongTableProps<Row> {
  readonly caption: string;
  readonly columns: readonly LongColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string;
  /** Of many columns: on a narrow screen it moves sideways rather than be cut short. */
  readonly isWide?: boolean;
  /** Brings more, where there is more; called as the end comes near. */
  readonly onNearEnd?: (() => void) | undefined;
}

const ROW_PX = 52;
const SPARE_ROWS = 8;

/** A table of any length: only what is in sight is drawn. Rows are of one height; what is longer than two lines is cut off with dots. */
export function LongTable<Row>(props: LongTableProps<Row>) {
  const { caption, columns, rows, rowKey, isWide = false, onNearEnd } = props;
  const place = useRef<HTMLDivElement>(null);
  const virtual = useVirtualizer({
    count: rows.length,
    getScrollElement: () => place.current,
    estimateSize: () => ROW_PX,
    overscan: SPARE_ROWS,
  });
  const shares = columns.reduce((sum, { share = 1 }) => sum + share, 0);
  const seen = virtual.getVirtualItems();
  const last = seen.at(-1)?.index ?? 0;
  const isNearEnd = last >= rows.length - SPARE_ROWS * 2;
  useEffect(() => {
    if (isNearEnd) onNearEnd?.();
  }, [isNearEnd, onNearEnd]);
  const above = seen[0]?.start ?? 0;
  const below = virtual.getTotalSize() - (seen.at(-1)?.end ?? 0);
  return (
    // A group, no landmark: it stands in a section of the same name as a rule.
    <div ref={place} className={styles.place} {...{ role: 'group', 'aria-label': caption, tabIndex: 0 }}>
      <table
        className={isWide ? `${styles.table} ${styles.wide}` : styles.table}
        aria-rowcount={rows.length + 1}
      >
        <caption className="unseen">{caption}</caption>
        <colgroup>
          {columns.map(({ heading, share = 1 }) => (
            <col key={heading} width={`${(share / shares) * 100}%`} />
          ))}
        </colgroup>
        <thead>
          <tr>
            {columns.map(({ heading, figures }) => (
              <th key={heading} scope="col" className={figures ? styles.figures : undefined}>
                {heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <Gap height={above} across={columns.length} />
          {seen.map(({ index }) => {
            const row = rows[index]!;
            return <Row key={rowKey(row)} row={row} index={index} columns={columns} />;
          })}
          <Gap height={below} across={columns.length} />
        </tbody>
      </table>
    </div>
  );
}

interface RowProps<Row> {
  readonly row: Row;
  readonly index: number;
  readonly columns: readonly LongColumn<Row>[];
}

/** A row that stays in sight while the others move need not be drawn again. */
const Row = memo(function Row<Of>({ row, index, columns }: RowProps<Of>) {
  return (
    <tr className={styles.row} aria-rowindex={index + 2}>
      {columns.map(({ heading, cell, figures }) => (
        <td key={heading} className={figures ? styles.figures : undefined}>
          <div className={styles.cell}>{cell(row)}</div>
        </td>
      ))}
    </tr>
  );
}) as <Of>(props: RowProps<Of>) => ReactNode;

/** Holds the place of the rows that are not drawn. */
function Gap({ height, across }: { readonly height: number; readonly across: number }) {
  if (height <= 0) return null;
  return (
    <tr className={styles.gap}>
      <td colSpan={across} height={height} />
    </tr>
  );
}
