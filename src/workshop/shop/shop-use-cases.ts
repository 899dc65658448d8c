import type { AnyUseCase } from '../use-case.js';
import { enterLot } from './enter-lot.js';
import {
  saveBin,
  saveInstrument,
  saveMachine,
  saveSet,
  saveSettings,
  saveTuning,
  saveWire,
} from './save-shop-records.js';

/** What the shop is made of, entered and changed. */
export const SHOP_USE_CASES: readonly AnyUseCase[] = [
  saveSettings,
  saveWire,
  saveMachine,
  saveBin,
  saveInstrument,
  saveTuning,
  saveSet,
  enterLot,
];
