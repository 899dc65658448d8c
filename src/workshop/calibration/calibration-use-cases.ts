import type { AnyUseCase } from '../use-case.js';
import { recalibrate } from './recalibrate.js';

/** What the shop learns from its measured strings, put in force. */
export const CALIBRATION_USE_CASES: readonly AnyUseCase[] = [recalibrate];
