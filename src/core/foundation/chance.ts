/** A source of chance that gives the same numbers for the same seed: the core knows no other kind. */
export interface Chance {
  /** Uniform in [0, 1). */
  next(): number;
  /** Whole number, uniform in [low, high], both ends included. */
  whole(low: number, high: number): number;
  /** One of the items, each as likely as the others. */
  pick<T>(items: readonly T[]): T;
}

/**
 * Seeded generator (mulberry32, public domain, T. Ettinger): 32 bits of state, good enough for
 * drawing a demo and for search, not for secrets.
 */
export function seededChance(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  return {
    next,
    whole: (low, high) => low + Math.floor(next() * (high - low + 1)),
    pick: (items) => {
      const item = items[Math.floor(next() * items.length)];
      if (item === undefined) throw new RangeError('Cannot pick one of nothing');
      return item;
    },
  };
}
