/** What a dial is measured for: traverse per spindle turn (m), or the pull that a tension scale gives (N). */
export type DialQuantity = 'traverse' | 'pull';

/** One reading at a number of a dial, come up to from below. */
export interface DialReading {
  readonly id: string;
  readonly dial: number;
  /** Metres per turn, or newtons. */
  readonly value: number;
  /** Of the instrument alone, as a share of the value, one standard deviation. */
  readonly instrumentShare: number;
  /** Taken out by a person as a slip; kept, but not counted. */
  readonly isStruck?: boolean;
}

/** A row of a table that says what a number of the dial gives. */
export interface DialValue {
  readonly dial: number;
  readonly value: number;
}

/** What a hand read at a number of the dial: how far the guide went in so many turns, or a pull on a hanging scale. */
export type ReadOff =
  | { readonly turns: number; readonly startM: number; readonly endM: number }
  | { readonly pullN: number };

/** The value that was read: |end - start| / turns, or the pull; undefined where nothing moved. */
export function valueRead(read: ReadOff): number | undefined {
  if ('pullN' in read) return read.pullN;
  const perTurnM = Math.abs(read.endM - read.startM) / read.turns;
  return Number.isFinite(perTurnM) && perTurnM > 0 ? perTurnM : undefined;
}

/**
 * A reading with its instrument's share of uncertainty. `readingError` is one standard deviation of one reading (m, N):
 * the travel is the difference of two, so sqrt(2) of it over the travel (JCGM 100:2008, 5.1.2).
 */
export function asDialReading(
  entered: {
    readonly readingId: string;
    readonly dial: number;
    readonly read: ReadOff;
    readonly isStruck?: boolean;
  },
  readingError: number,
): DialReading | undefined {
  const { readingId, dial, read, isStruck } = entered;
  const value = valueRead(read);
  if (value === undefined) return undefined;
  const instrumentShare =
    'pullN' in read ? readingError / value : (Math.SQRT2 * readingError) / (read.turns * value);
  return { id: readingId, dial, value, instrumentShare, ...(isStruck ? { isStruck } : {}) };
}
