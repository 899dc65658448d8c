import type { Column, ColumnMap, TableRow } from './columns.js';
import type { OrderFault, OrderFaultCode } from './resolved.js';

/** The cells of one row by what they hold, and the faults that point to them. */
export interface CellReader {
  /** Text of the cell, trimmed; empty where the file has no such column or the cell is blank. */
  text(column: Column): string;
  fault(column: Column | undefined, code: OrderFaultCode, facts?: OrderFault['facts']): OrderFault;
}

/** A reader of a row whose file's headings mean what `columns` says. */
export function cellReader(row: TableRow, columns: ColumnMap): CellReader {
  const text = (column: Column): string => {
    const heading = columns.headingOf[column];
    return heading === undefined ? '' : (row.cells[heading] ?? '').trim();
  };
  return {
    text,
    fault: (column, code, facts = {}) => {
      const heading = column && (columns.headingOf[column] ?? column);
      const orderId = text('order');
      return {
        line: row.line,
        code,
        facts,
        ...(heading === undefined ? {} : { column: heading }),
        ...(orderId === '' ? {} : { orderId }),
        ...(column === undefined ? {} : { read: text(column) }),
      };
    },
  };
}
