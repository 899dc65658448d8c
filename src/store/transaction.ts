import { createAccess } from './access.js';
import { createCautionReadings } from './caution-readings.js';
import type { Dialect } from './dialect.js';
import { createEvents } from './events.js';
import { createJournal } from './journal.js';
import { createLedger } from './ledger.js';
import { createMappings } from './mappings.js';
import { createQualityReader } from './quality-reader.js';
import { createReadings } from './readings.js';
import type { bodyCheck } from './record-bodies.js';
import { createRecords } from './records.js';
import { createRepeats } from './repeats.js';
import type { Transaction } from './store.js';
import type { Sql } from './tables.js';
import { createWholeTables } from './whole-tables.js';

/** Everything that can be done within one transaction of the database. */
export const createTransaction = (
  trx: Sql,
  dialect: Dialect,
  checkBody: ReturnType<typeof bodyCheck>,
): Transaction => ({
  records: createRecords(trx, dialect, checkBody),
  ledger: createLedger(trx as unknown as Parameters<typeof createLedger>[0]),
  readings: createReadings(trx),
  cautionReadings: createCautionReadings(trx),
  quality: createQualityReader(trx),
  journal: createJournal(trx),
  events: createEvents(trx),
  access: createAccess(trx),
  repeats: createRepeats(trx),
  mappings: createMappings(trx),
  tables: createWholeTables(trx),
});
