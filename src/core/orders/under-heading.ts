import type { Column, ColumnMap } from './columns.js';
import type { OrderFault } from './resolved.js';

/** A fault found while resolving points to a column by our name for it: the file's own heading is put there. */
export const underHeading = (fault: OrderFault, { headingOf }: ColumnMap): OrderFault => {
  const heading = headingOf[fault.column as Column];
  return heading === undefined ? fault : { ...fault, column: heading };
};
