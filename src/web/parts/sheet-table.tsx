import type { ReactNode } from 'react';
import styles from './sheet-table.module.css';

/** A column of a table: its heading, and what stands in it for a row. */
export interface SheetColumn<Row> {
  readonly heading: string;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand to the right. */
  readonly figures?: boolean;
  /** Names the row. */
  readonly names?: boolean;
  readonly wide?: boolean;
}

interface SheetTableProps<Row> {
  /** Read out before the table; seen where `showCaption` says so. */
  readonly caption: string;
  readonly columns: readonly SheetColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string | number;
  readonly foot?: ReactNode;
}

/** A table on ruled paper. Where it is wider than its place it can be moved sideways, by keyboard too. */
export function SheetTable<Row>({ caption, columns, rows, rowKey, foot }: SheetTableProps<Row>) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what moves sideways must be reachable by keyboard
    <section className={styles.place} aria-label={caption} tabIndex={0}>
      <table className={styles.table}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <th key={column.heading} scope="col" className={styleOf(column)}>
                {column.heading}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={rowKey(row)}>
              {columns.map((column) =>
                column.names ? (
                  <th key={column.heading} scope="row" className={styleOf(column)}>
                    {column.cell(row)}
                  </th>
                ) : (
                  <td key={column.heading} className={styleOf(column)}>
                    {column.cell(row)}
                  </td>
                ),
              )}
            </tr>
          ))}
        </tbody>
        {foot && <tfoot>{foot}</tfoot>}
      </table>
    </section>
  );
}

function styleOf<Row>({ figures, wide }: SheetColumn<Row>): string | undefined {
  if (figures) return styles.figures;
  return wide ? styles.wide : undefined;
}
