export { dayPlanPdf } from './day-plan.js';
export { LABELS_3_BY_8, type LabelSheet } from './label-sheet.js';
export { labelsPdf } from './labels.js';
export { packingRollPdf } from './packing-roll.js';
export { setUpSheetsPdf } from './set-up-sheets.js';
