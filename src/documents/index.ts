export { dayPlanPdf } from './day-plan.js';
export { LABELS_3_BY_8, type LabelSheet } from './label-sheet.js';
export { labelsPdf } from './labels.js';
export { type LabelledPack, packLabelsPdf } from './pack-labels.js';
export { packingRollPdf } from './packing-roll.js';
export { type CardToPrint, playerCardPdf } from './player-card.js';
export { setUpSheetsPdf } from './set-up-sheets.js';
