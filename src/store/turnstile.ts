/** Lets a number of works in at once; the others wait in the order in which they came, as long as it takes. */
export class Turnstile {
  #free: number;
  readonly #waiting: (() => void)[] = [];

  constructor(places: number) {
    this.#free = places;
  }

  async pass<T>(work: () => Promise<T>): Promise<T> {
    if (this.#free > 0) this.#free -= 1;
    else await new Promise<void>((resolve) => this.#waiting.push(resolve));
    try {
      return await work();
    } finally {
      const next = this.#waiting.shift();
      if (next) next();
      else this.#free += 1;
    }
  }
}
