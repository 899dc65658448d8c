import type { SetUpSheet } from '../../../core/winding/index.js';

/** What instruments should read of a string of so long. */
export const expectedOf = (sheet: SetUpSheet, lengthM: number) => ({
  diameterM: sheet.meanDiameterM.value,
  massKg: sheet.unitWeightKgPerM.value * lengthM,
});
