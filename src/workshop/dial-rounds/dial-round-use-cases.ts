import type { AnyUseCase } from '../use-case.js';
import { beginDialRound } from './begin-dial-round.js';
import { recordDialReading, strikeDialReading } from './dial-readings.js';
import { adoptDialRound, dropDialRound, undoDialRound } from './settle-dial-round.js';

/** Measuring what the numbers of a machine's dial give. */
export const DIAL_ROUND_USE_CASES: readonly AnyUseCase[] = [
  beginDialRound,
  recordDialReading,
  strikeDialReading,
  adoptDialRound,
  undoDialRound,
  dropDialRound,
];
