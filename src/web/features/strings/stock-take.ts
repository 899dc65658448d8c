import type { LyingStrings } from '../../../contract/index.js';
import { type AmountRule, readAmount } from '../../parts/read-amount.js';

export const COUNT_RULE: AmountRule = { units: { '': 1 }, bare: '', least: 0, most: 1_000_000, whole: true };

/** A lot of a bin while stock is taken. */
export interface CountLine {
  readonly lotId: string;
  readonly lot: string;
  readonly stringKey: string;
  readonly state: string;
  readonly onBook: number;
  /** Undefined where nothing was typed, or nothing that is a count. */
  readonly counted: number | undefined;
}

export interface StockTake {
  readonly lines: readonly CountLine[];
  readonly counted: number;
  readonly differing: number;
  /** Whether it can be written: something was counted, all of it can be read, and what differs has a reason. */
  readonly isWritable: boolean;
}

/** What was counted against the books. Lots that nobody counted stay as they are. */
export function stockTake(
  lying: readonly Pick<LyingStrings, 'lotId' | 'lot' | 'stringKey' | 'state' | 'count'>[],
  typed: Readonly<Record<string, string>>,
  reason: string,
): StockTake {
  const lines = lying.map(({ lotId, lot, stringKey, state, count }): CountLine => {
    const read = readAmount(typed[lotId] ?? '', COUNT_RULE);
    return { lotId, lot, stringKey, state, onBook: count, counted: read.ok ? read.value : undefined };
  });
  const counted = lines.filter((line) => line.counted !== undefined);
  const differing = counted.filter((line) => line.counted !== line.onBook).length;
  const isReadable = lines.every(
    (line) => line.counted !== undefined || (typed[line.lotId] ?? '').trim() === '',
  );
  return {
    lines,
    counted: counted.length,
    differing,
    isWritable: counted.length > 0 && isReadable && (differing === 0 || reason.trim() !== ''),
  };
}
