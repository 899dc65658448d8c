import { invariant } from '../foundation/index.js';
import type { Movement } from './ledger.js';
import { type Consumed, piecesOf, type StringOfLot, stringThing, transfer } from './ledger-transfer.js';

/**
 * Strings that a run gave: made -> bin for the good ones, made -> scrap by reason for the others, all of the
 * run's lot; ends go from their bin into the strings. Nothing where the run gave nothing.
 */
export function makeStrings({
  string,
  runId,
  binId,
  good,
  scrap,
  ends = [],
}: {
  readonly string: StringOfLot;
  readonly runId: string;
  readonly binId: string;
  readonly good: number;
  readonly scrap: readonly { readonly reason: string; readonly count: number }[];
  readonly ends?: readonly Consumed[];
}): Movement | undefined {
  const thing = stringThing(string);
  const entries = [
    ...transfer('made', `bin/${binId}`, thing, none(good)),
    ...scrap.flatMap(({ reason, count }) => transfer('made', `scrap/${reason}`, thing, none(count))),
    ...ends.flatMap((end) => transfer(`bin/${end.binId}`, 'wound-in', piecesOf(end.item), none(end.count))),
  ];
  return entries.length === 0 ? undefined : { what: 'make', reason: '', ofKind: 'run', ofId: runId, entries };
}

/** Strings carried from one bin to another: bin -> bin, the lot stays theirs. */
export function moveStrings({
  string,
  fromBinId,
  toBinId,
  count,
}: {
  readonly string: StringOfLot;
  readonly fromBinId: string;
  readonly toBinId: string;
  readonly count: number;
}): Movement {
  invariant(fromBinId !== toBinId, 'strings are moved to another bin than they lie in');
  const entries = transfer(`bin/${fromBinId}`, `bin/${toBinId}`, stringThing(string), some(count));
  return { what: 'move', reason: '', ofKind: 'string-lot', ofId: string.lotId, entries };
}

/** Strings thrown away: bin -> scrap by reason. Where they were counted in the same touch, the movement belongs to that count. */
export function scrapStrings({
  string,
  binId,
  count,
  reason,
  tallyId,
}: {
  readonly string: StringOfLot;
  readonly binId: string;
  readonly count: number;
  readonly reason: string;
  readonly tallyId?: string | undefined;
}): Movement {
  const entries = transfer(`bin/${binId}`, `scrap/${reason}`, stringThing(string), some(count));
  const of =
    tallyId === undefined ? { ofKind: 'string-lot', ofId: string.lotId } : { ofKind: 'tally', ofId: tallyId };
  return { what: 'scrap', reason, ...of, entries };
}

/**
 * Someone counted a bin: the difference to the book goes to or comes from the account of stock-taking.
 * Nothing where the book was right.
 */
export function countDifference({
  string,
  binId,
  onBook,
  counted,
  reason,
}: {
  readonly string: StringOfLot;
  readonly binId: string;
  readonly onBook: number;
  readonly counted: number;
  readonly reason: string;
}): Movement | undefined {
  const found = none(counted) - onBook;
  if (found === 0) return undefined;
  const entries = transfer('count-difference/stock-take', `bin/${binId}`, stringThing(string), found);
  return { what: 'count', reason, ofKind: 'bin', ofId: binId, entries };
}

/** Ends, envelopes and other packing that come in: supplier -> bin. */
export function receivePieces({ item, binId, count }: Consumed): Movement {
  const entries = transfer('supplier', `bin/${binId}`, piecesOf(item), some(count));
  return { what: 'receive', reason: '', ofKind: 'bin', ofId: binId, entries };
}

function none(count: number): number {
  invariant(Number.isSafeInteger(count) && count >= 0, `a count is a whole number from 0 up, not ${count}`);
  return count;
}

function some(count: number): number {
  invariant(Number.isSafeInteger(count) && count > 0, `one or more are moved, not ${count}`);
  return count;
}
