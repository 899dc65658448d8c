import { firstShop } from './0001-first-shop.js';
import { dialIn } from './0002-dial-in.js';
import { cautionsRead } from './0003-cautions-read.js';
import { voidedEntries } from './0004-voided-entries.js';
import { endChecks } from './0005-end-checks.js';
import { dialRounds } from './0006-dial-rounds.js';
import { qualitySums } from './0007-quality-sums.js';
import type { Migration } from './migration.js';

/** Every step, in order; the last one's number is the form of database that this program knows. */
export const MIGRATIONS: readonly Migration[] = [
  firstShop,
  dialIn,
  cautionsRead,
  voidedEntries,
  endChecks,
  dialRounds,
  qualitySums,
];
