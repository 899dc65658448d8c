import type { ReadingAnswer } from '../../../contract/index.js';
import type { RecordOf } from '../../api/use-records.js';
import { isOf, type QueuedEntry } from '../../outbox/index.js';
import { byReason, type Reason, type Tally } from '../../parts/tallies.js';

type Lot = RecordOf<'string-lot'>;

/** What the coiler has looked at of a lot. */
export interface LotCount {
  readonly good: number;
  readonly rejects: readonly Reason[];
  readonly rejected: number;
  /** Made, and not counted at coiling yet. */
  readonly left: number;
}

export function lotCount(tallies: readonly Tally[], made: number): LotCount {
  const own = tallies.filter(({ station }) => station === 'coiler');
  const good = own.reduce((sum, { outcome, count }) => sum + (outcome === 'good' ? count : 0), 0);
  const rejects = byReason(own.filter(({ outcome }) => outcome === 'scrap'));
  const rejected = rejects.reduce((sum, { count }) => sum + count, 0);
  return { good, rejects, rejected, left: Math.max(0, made - good - rejected) };
}

/** Where strings of a lot lie, the fullest first; what was rejected here and is not booked yet is taken off. */
export interface LyingIn {
  readonly binId: string;
  readonly count: number;
}

export function lyingIn(
  balances: ReadingAnswer<'balances'>['items'],
  coming: readonly QueuedEntry[],
  lotId: string,
): readonly LyingIn[] {
  const taken = (binId: string) =>
    coming.reduce(
      (sum, entry) =>
        entry.state !== 'done' &&
        isOf(entry, 'scrap-strings') &&
        entry.input.lotId === lotId &&
        entry.input.binId === binId
          ? sum + entry.input.count
          : sum,
      0,
    );
  return balances
    .filter(({ account, unit }) => account.startsWith('bin/') && unit === 'pieces')
    .map(({ account, quantity }) => {
      const binId = account.slice('bin/'.length);
      return { binId, count: quantity - taken(binId) };
    })
    .filter(({ count }) => count > 0)
    .toSorted((one, other) => other.count - one.count);
}

/** A lot as it will be once the shop has done what was entered here. */
export const lotAsComing = (lot: Lot, coming: readonly QueuedEntry[]): Lot => coming.reduce(stepped, lot);

function stepped(lot: Lot, entry: QueuedEntry): Lot {
  const isNext = (input: { readonly lotId: string; readonly expectedVersion: number }) =>
    input.lotId === lot.id && input.expectedVersion >= lot.version;
  if (isOf(entry, 'release-lot') && isNext(entry.input))
    return { ...lot, version: lot.version + 1, state: 'released' };
  if (isOf(entry, 'hold-lot') && isNext(entry.input)) {
    const body = { ...lot.body, holdReason: entry.input.reason };
    return { ...lot, version: lot.version + 1, state: 'on-hold', body };
  }
  return lot;
}

/** The lot that a label names. */
export const lotCalled = (text: string, lots: readonly Lot[]): Lot | undefined =>
  lots.find(({ body }) => body.name.toLowerCase() === text.trim().toLowerCase());
