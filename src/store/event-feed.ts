import type { StoredEvent } from './store.js';

const AT_ONCE = 500;

type Listener = (events: readonly StoredEvent[]) => void;

/** Where the feed reads, and whom it tells of trouble. */
export interface FeedSource {
  since(number: number, limit: number): Promise<readonly StoredEvent[]>;
  last(): Promise<number>;
  onTrouble(thrown: unknown): void;
}

/**
 * Tells listeners of committed events, in order and each once, whoever wrote them. It is only ever poked ("something
 * may have been written") and reads on from where it stood, so a poke too many or a lost one in a row does no harm.
 */
export class EventFeed {
  readonly #source: FeedSource;
  readonly #listeners = new Set<Listener>();
  #told: number;
  #reading: Promise<void> | undefined;
  #isPoked = false;

  constructor(source: FeedSource, last: number) {
    this.#source = source;
    this.#told = last;
  }

  listen(listener: Listener): () => void {
    // Each its own, should the same function listen twice.
    const own: Listener = (events) => listener(events);
    this.#listeners.add(own);
    return () => this.#listeners.delete(own);
  }

  poke(): void {
    this.#isPoked = true;
    this.#reading ??= this.#read().finally(() => {
      this.#reading = undefined;
    });
  }

  /** When what is being told now has been told. */
  async settled(): Promise<void> {
    await this.#reading;
  }

  async #read(): Promise<void> {
    while (this.#isPoked) {
      this.#isPoked = false;
      try {
        if (this.#listeners.size === 0) await this.#passOver();
        else await this.#tellAll();
      } catch (thrown) {
        // The database may be away; the next poke, at the latest when it is back, reads on.
        this.#source.onTrouble(thrown);
      }
    }
  }

  /** Nobody listens: what there is need not be read. Whoever begins to listen meanwhile is told what came meanwhile. */
  async #passOver(): Promise<void> {
    const last = await this.#source.last();
    if (this.#listeners.size === 0) this.#told = last;
    else await this.#tellAll();
  }

  async #tellAll(): Promise<void> {
    for (;;) {
      const events = await this.#source.since(this.#told, AT_ONCE);
      const last = events.at(-1);
      if (last === undefined) return;
      this.#told = last.number;
      for (const listener of this.#listeners) this.#tell(listener, events);
      if (events.length < AT_ONCE) return;
    }
  }

  /** One listener's fault is not another's. */
  #tell(listener: Listener, events: readonly StoredEvent[]): void {
    try {
      listener(events);
    } catch (thrown) {
      this.#source.onTrouble(thrown);
    }
  }
}
