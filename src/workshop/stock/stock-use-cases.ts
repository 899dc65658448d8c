import type { AnyUseCase } from '../use-case.js';
import { countStrings } from './count-strings.js';
import { moveStrings } from './move-strings.js';
import { freeSpool, quarantineSpool } from './quarantine-spool.js';
import { receiveSpool } from './receive-spool.js';
import { recordDryRoom } from './record-dry-room.js';
import { scrapStrings } from './scrap-strings.js';
import { weighSpool } from './weigh-spool.js';

export const STOCK_USE_CASES: readonly AnyUseCase[] = [
  receiveSpool,
  weighSpool,
  quarantineSpool,
  freeSpool,
  moveStrings,
  countStrings,
  scrapStrings,
  recordDryRoom,
];
