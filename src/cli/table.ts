export interface TextColumn<Row> {
  readonly heading: string;
  readonly cell: (row: Row) => string;
  /** Numbers stand to the right, words to the left. */
  readonly align?: 'right';
  /** Longer cells are cut with an ellipsis. */
  readonly widest?: number;
}

/** A table for a terminal: columns as wide as their widest cell, two blanks apart. */
export function textTable<Row>(rows: readonly Row[], columns: readonly TextColumn<Row>[]): string {
  const grid = [
    columns.map(({ heading }) => heading),
    ...rows.map((row) => columns.map(({ cell, widest }) => cut(cell(row), widest))),
  ];
  const widths = columns.map((_, at) => Math.max(...grid.map((cells) => width(cells[at] ?? ''))));
  const line = (cells: readonly string[]): string =>
    cells
      .map((cell, at) => pad(cell, widths[at] ?? 0, columns[at]?.align))
      .join('  ')
      .trimEnd();
  const [headings, ...body] = grid.map(line);
  return [headings, widths.map((count) => '─'.repeat(count)).join('  '), ...body].join('\n');
}

const pad = (cell: string, to: number, align: 'right' | undefined): string => {
  const blanks = ' '.repeat(Math.max(0, to - width(cell)));
  return align === 'right' ? blanks + cell : cell + blanks;
};

const cut = (cell: string, widest = Number.POSITIVE_INFINITY): string =>
  width(cell) <= widest ? cell : `${[...cell].slice(0, widest - 1).join('')}…`;

/** Letters as a terminal shows them: a letter with its accents is one. */
const width = (cell: string): number => [...cell.normalize('NFC')].length;
