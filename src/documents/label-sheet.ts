import { pointsFromMetres } from './look.js';
import type { Frame } from './pen.js';

/** How labels lie on an A4 sheet. */
export interface LabelSheet {
  readonly columns: number;
  readonly rows: number;
  readonly labelWidthM: number;
  readonly labelHeightM: number;
  /** From the sheet's edges to the first label. */
  readonly leftMarginM: number;
  readonly topMarginM: number;
  readonly columnGapM: number;
  readonly rowGapM: number;
  /** Inside a label, free of print: more than most printers leave white at the sheet's edge. */
  readonly sidePaddingM: number;
  readonly topPaddingM: number;
}

/** Twenty-four labels of 70 mm by 37 mm, edge to edge. */
export const LABELS_3_BY_8: LabelSheet = {
  columns: 3,
  rows: 8,
  labelWidthM: 0.07,
  labelHeightM: 0.037,
  leftMarginM: 0,
  topMarginM: 0.0005,
  columnGapM: 0,
  rowGapM: 0,
  sidePaddingM: 0.0045,
  topPaddingM: 0.0035,
};

/** Where the print of the label at `place` goes; places run along the rows from the upper left. */
export function labelFrame(sheet: LabelSheet, place: number): Frame {
  const column = place % sheet.columns;
  const row = Math.floor(place / sheet.columns);
  const leftM = sheet.leftMarginM + column * (sheet.labelWidthM + sheet.columnGapM) + sheet.sidePaddingM;
  const topM = sheet.topMarginM + row * (sheet.labelHeightM + sheet.rowGapM) + sheet.topPaddingM;
  return {
    x: pointsFromMetres(leftM),
    y: pointsFromMetres(topM),
    width: pointsFromMetres(sheet.labelWidthM - 2 * sheet.sidePaddingM),
    height: pointsFromMetres(sheet.labelHeightM - 2 * sheet.topPaddingM),
  };
}
