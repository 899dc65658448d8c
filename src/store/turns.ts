import { setImmediate as nextTurn } from 'node:timers/promises';

const LONGEST_TURN_MS = 10;

/**
 * Lets others have their turn. SQLite answers at once, so a long row of questions would never come to where Node looks
 * at sockets and timers: an import of ten thousand rows would leave all tablets waiting.
 */
export class Turns {
  #since = performance.now();

  /** To be awaited after each piece of work; most times it costs a look at the clock. */
  giveWay(): Promise<void> | undefined {
    if (performance.now() - this.#since < LONGEST_TURN_MS) return undefined;
    return nextTurn().then(() => {
      this.#since = performance.now();
    });
  }
}
