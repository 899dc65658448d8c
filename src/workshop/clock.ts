import type { ReadTransaction, Store } from '../store/index.js';

/** Tells the moment: ISO 8601, UTC, milliseconds. */
export interface Clock {
  readonly now: () => string;
}

/** How far the computer's clock stands behind what is already written. */
export interface SetBack {
  readonly computerSays: string;
  readonly lastWritten: string;
  readonly behindMs: number;
}

export interface ShopClock extends Clock {
  /** Left undefined while the computer's clock is ahead of everything written. */
  readonly setBack: () => SetBack | undefined;
}

export const computerClock: Clock = { now: () => new Date().toISOString() };

/**
 * The shop's clock: the computer's, held at the last moment written while the computer's is behind it, so that
 * nothing is ever written as earlier than what it follows. That of an invented shop goes on from its last moment
 * instead: its last day is today, whenever it is opened.
 */
export async function shopClock(store: Store, computer: Clock = computerClock): Promise<ShopClock> {
  const written = await store.read(lastWritten);
  return (await store.read(isInvented)) ? goingOn(written, computer) : neverBack(written, computer);
}

async function isInvented({ records }: Pick<ReadTransaction, 'records'>): Promise<boolean> {
  const [settled] = await records.all('settings');
  return settled?.body.invented ?? false;
}

function goingOn(written: string, computer: Clock): ShopClock {
  const aheadMs = Date.parse(written) - Date.parse(computer.now());
  let last = written;
  return {
    now: () => {
      last = later(last, new Date(Date.parse(computer.now()) + aheadMs).toISOString());
      return last;
    },
    setBack: () => undefined,
  };
}

function neverBack(written: string, computer: Clock): ShopClock {
  let last = written;
  return {
    now: () => {
      last = later(last, computer.now());
      return last;
    },
    setBack: () => {
      const computerSays = computer.now();
      if (computerSays >= last) return undefined;
      return { computerSays, lastWritten: last, behindMs: Date.parse(last) - Date.parse(computerSays) };
    },
  };
}

/** The moment of the last change that anyone wrote; before all others where nothing is written. */
export async function lastWritten({ events }: Pick<ReadTransaction, 'events'>): Promise<string> {
  return (await events.newest())?.at ?? BEFORE_ALL;
}

const BEFORE_ALL = '0000-00-00T00:00:00.000Z';

export const later = (one: string, other: string): string => (one > other ? one : other);
