import { AsyncLocalStorage } from 'node:async_hooks';

/**
 * Finds the store being asked from within one of its own transactions. On SQLite a write there would wait for itself
 * for ever, and a read would see old data; so both are a programmer's fault at once, on either engine.
 */
export class InsideTransaction {
  readonly #current = new AsyncLocalStorage<{ isOpen: boolean }>();

  async run<T>(work: () => Promise<T>): Promise<T> {
    if (this.#current.getStore()?.isOpen)
      throw new Error('the store was asked from within a transaction: use the `tx` that it gave');
    return await work();
  }

  /** Marks what runs within as a transaction; what it leaves running behind it is no longer one. */
  async mark<T>(work: () => Promise<T>): Promise<T> {
    const transaction = { isOpen: true };
    try {
      return await this.#current.run(transaction, work);
    } finally {
      transaction.isOpen = false;
    }
  }

  /** To be told when the store is closed: a storage that was ever used burdens every promise of the process until then. */
  end(): void {
    this.#current.disable();
  }
}
