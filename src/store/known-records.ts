import type { RecordKind, StoredRecord } from '../contract/index.js';

type Known = StoredRecord | undefined;

/**
 * Records got within one transaction, so that none is fetched and read twice. Nobody else changes any before the
 * transaction ends: a reader sees one moment, and writers queue. What the transaction itself writes is forgotten.
 */
export class KnownRecords {
  readonly #known = new Map<string, Known>();

  async get(kind: RecordKind, id: string, fetch: () => Promise<Known>): Promise<Known> {
    const key = `${kind}/${id}`;
    if (this.#known.has(key)) return this.#known.get(key);
    const record = await fetch();
    if (this.#known.size >= MOST_KNOWN) this.#known.clear();
    this.#known.set(key, record);
    return record;
  }

  forget(kind: RecordKind, id: string): void {
    this.#known.delete(`${kind}/${id}`);
  }
}

/** A long transaction must not hold the whole shop in memory. */
const MOST_KNOWN = 2000;
