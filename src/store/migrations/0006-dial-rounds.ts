import { createRecords } from './0001-first-shop.js';
import type { Migration } from './migration.js';

/** Rounds in which a machine's dial was measured. */
export const dialRounds: Migration = {
  number: 6,
  name: 'dial-rounds',
  up: (trx, dialect) => createRecords(trx, dialect, ['dial_rounds', [['machine_id', 'text', 'machines']]]),
};
