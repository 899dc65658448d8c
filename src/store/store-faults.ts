/** A write over a newer version than the writer had seen. */
export class StaleVersion extends Error {
  override readonly name = 'StaleVersion';
  constructor(
    readonly kind: string,
    readonly id: string,
    readonly expectedVersion: number,
    /** The record as it stands now, whole; undefined where there is none of that id. */
    readonly current: unknown,
  ) {
    super(`${kind} ${id} does not stand at version ${expectedVersion} any more`);
  }
}

/** A movement that would take more from an account than lies there. */
export class Overdrawn extends Error {
  override readonly name = 'Overdrawn';
  constructor(
    readonly account: string,
    readonly item: string,
    readonly lot: string,
    readonly missing: number,
  ) {
    super(`${account} lacks ${missing} of ${item}`);
  }
}

/** A record whose id or whose name, which must be its own, another already has. */
export class Taken extends Error {
  override readonly name = 'Taken';
  constructor(
    readonly kind: string,
    readonly key: string,
    readonly value: string,
  ) {
    super(`another ${kind} already has the ${key} ${value}`);
  }
}

/** A cursor that no page of this list gave out. */
export class UnreadableCursor extends Error {
  override readonly name = 'UnreadableCursor';
  constructor(readonly cursor: string) {
    super(`no list ended at ${cursor}`);
  }
}

/** The database cannot take or give anything now. `mend` is for people; trying again later may do. */
export class StoreUnavailable extends Error {
  override readonly name = 'StoreUnavailable';
  constructor(
    readonly code:
      | 'store.disk-full'
      | 'store.read-only'
      | 'store.locked'
      | 'store.lost'
      | 'store.newer'
      | 'store.damaged',
    readonly detail: string,
    options?: ErrorOptions,
  ) {
    super(`${code}: ${detail}`, options);
  }
}
