import type { AnyUseCase } from '../use-case.js';
import { abandonRun } from './abandon-run.js';
import { acknowledgeCautions } from './acknowledge-cautions.js';
import { changeSpool } from './change-spool.js';
import { closeRun } from './close-run.js';
import { holdLot, releaseLot, scrapLot } from './judge-lot.js';
import { pauseRun, resumeRun } from './pause-run.js';
import { planRun } from './plan-run.js';
import { recordEndChecks } from './record-end-checks.js';
import { recordMeasurements } from './record-measurements.js';
import { recordTally } from './record-tally.js';
import { recordRunSettings } from './run-settings.js';
import { saveRecipe } from './save-recipe.js';
import { startRun } from './start-run.js';
import { stepRecipe } from './step-recipe.js';
import { judgeTrialString, recordTrialString } from './trial-strings.js';
import { voidMeasurement, voidTally, voidTrialString } from './void-entry.js';

export const PRODUCTION_USE_CASES: readonly AnyUseCase[] = [
  saveRecipe,
  stepRecipe,
  planRun,
  acknowledgeCautions,
  startRun,
  pauseRun,
  resumeRun,
  changeSpool,
  recordRunSettings,
  recordTrialString,
  judgeTrialString,
  recordMeasurements,
  recordEndChecks,
  recordTally,
  voidTally,
  voidMeasurement,
  voidTrialString,
  closeRun,
  abandonRun,
  releaseLot,
  holdLot,
  scrapLot,
];
