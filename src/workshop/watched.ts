import type { JournalEntry, NewEvent, Transaction } from '../store/index.js';

export type Touched = JournalEntry['touched'][number];

/** A transaction that keeps note of everything written through it. */
export interface Watched {
  readonly tx: Transaction;
  /** What was written so far, each record once, at its last version. */
  readonly touched: () => readonly Touched[];
}

/**
 * Watches a transaction. Records are noted by kind, id and version, movements and trial strings by their own id;
 * measurements, end checks and tallies by the run (or lot) that they belong to, so that the history of a run shows them.
 */
export function watched(tx: Transaction): Watched {
  const noted = new Map<string, Touched>();
  const note = (kind: string, id: string, version = 1) => noted.set(`${kind}/${id}`, { kind, id, version });
  return {
    tx: overlaid(tx, {
      records: watchedRecords(tx.records, note),
      ledger: watchedLedger(tx.ledger, note),
      readings: watchedReadings(tx.readings, note),
      cautionReadings: overlaid(tx.cautionReadings, {
        add: async (row) => {
          await tx.cautionReadings.add(row);
          note('caution-reading', row.id);
        },
      }),
    }),
    touched: () => [...noted.values()],
  };
}

/** The events that tell other screens of it. */
export const eventsOf = (
  touched: readonly Touched[],
  { useCase, at }: { readonly useCase: string; readonly at: string },
): readonly NewEvent[] =>
  touched.map(({ kind, id, version }) => ({ topic: kind, recordId: id, version, useCase, at }));

type Note = (kind: string, id: string, version?: number) => void;

const watchedRecords = (records: Transaction['records'], note: Note): Transaction['records'] =>
  overlaid(records, {
    insert: async (kind, record) => {
      const stored = await records.insert(kind, record);
      note(kind, stored.id, stored.version);
      return stored;
    },
    insertAll: async (kind, all) => {
      await records.insertAll(kind, all);
      for (const { id } of all) note(kind, id);
    },
    update: async (kind, change) => {
      const stored = await records.update(kind, change);
      note(kind, stored.id, stored.version);
      return stored;
    },
  });

const watchedLedger = (ledger: Transaction['ledger'], note: Note): Transaction['ledger'] =>
  overlaid(ledger, {
    post: async (movement) => {
      await ledger.post(movement);
      note('movement', movement.id);
    },
  });

const watchedReadings = (readings: Transaction['readings'], note: Note): Transaction['readings'] =>
  overlaid(readings, {
    addTrialString: async (row) => {
      await readings.addTrialString(row);
      note('trial-string', row.id);
    },
    setVerdict: async (id, verdict) => {
      await readings.setVerdict(id, verdict);
      note('trial-string', id);
    },
    addMeasurements: async (rows) => {
      await readings.addMeasurements(rows);
      for (const { runId } of rows) note('measurement', runId);
    },
    voidEntry: async (row) => {
      await readings.voidEntry(row);
      note(row.ofKind, row.runId ?? row.lotId ?? row.entryId);
    },
    addEndChecks: async (rows) => {
      await readings.addEndChecks(rows);
      for (const { runId } of rows) note('end-check', runId);
    },
    addTally: async (row) => {
      await readings.addTally(row);
      note('tally', row.runId ?? row.lotId ?? row.id);
    },
  });

/** The same object with some of its methods changed, whether it is a plain one or of a class. */
const overlaid = <Whole extends object>(whole: Whole, changed: Partial<Whole>): Whole =>
  new Proxy(whole, {
    get(target, name) {
      const value = name in changed ? Reflect.get(changed, name) : Reflect.get(target, name, target);
      return typeof value === 'function' ? value.bind(target) : value;
    },
  });
