import type { ReactNode } from 'react';
import styles from './sheet-table.module.css';
import { Sideways } from './sideways.js';

/** A column of a table: its heading, and what stands in it for a row. */
export interface SheetColumn<Row> {
  readonly heading: string;
  readonly cell: (row: Row) => ReactNode;
  /** Figures stand to the right. */
  readonly figures?: boolean;
  /** Names the row. */
  readonly names?: boolean;
  readonly wide?: boolean;
  /** Its words stay on one line. */
  readonly whole?: boolean;
}

interface SheetTableProps<Row> {
  /** Read out before the table. */
  readonly caption: string;
  readonly columns: readonly SheetColumn<Row>[];
  readonly rows: readonly Row[];
  readonly rowKey: (row: Row) => string | number;
  readonly foot?: ReactNode;
  /** Cells of a row stand at its middle, not on its first line: right beside drawings. */
  readonly middle?: boolean;
}

/** A table on ruled paper. */
export function SheetTable<Row>({
  caption,
  columns,
  rows,
  rowKey,
  foot,
  middle = false,
}: SheetTableProps<Row>) {
  return (
    <Sideways label={caption}>
      <table className={middle ? `${styles.table} ${styles.middle}` : styles.table}>
        <caption className="unseen">{caption}</caption>
        <thead>
          <tr>
            {columns.map((column) => (
              <Heading key={column.heading} words={column.heading} style={styleOf(column)} />
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
    </Sideways>
  );
}

/** A column of things to press has no name to read out. */
const Heading = ({ words, style }: { readonly words: string; readonly style: string | undefined }) =>
  words === '' ? (
    <td className={style} />
  ) : (
    <th scope="col" className={style}>
      {words}
    </th>
  );

function styleOf<Row>({ figures, wide, whole }: SheetColumn<Row>): string | undefined {
  if (figures) return styles.figures;
  if (whole) return styles.whole;
  return wide ? styles.wide : undefined;
}
