import type { LyingStrings } from '../../../contract/index.js';
import type { RecordOf } from '../../api/use-records.js';

export type BinRecord = RecordOf<'bin'>;

/** A kind of string: where it lies, how much of it may be packed, and how much there should be. */
export interface KindLine {
  readonly stringKey: string;
  readonly bins: readonly BinRecord[];
  readonly lying: readonly LyingStrings[];
  readonly released: number;
  readonly inCheck: number;
  readonly onHold: number;
  /** Of all bins that are for it; 0 where it is made to order. */
  readonly reorderLevel: number;
  /** Where the walk through the bins first meets it. */
  readonly walkOrder: number;
}

/** Every kind of string that lies in a bin or that a bin is for, in the order of the walk. */
export function kindsInBins(bins: readonly BinRecord[], lying: readonly LyingStrings[]): readonly KindLine[] {
  const byId = new Map(bins.map((bin) => [bin.id, bin]));
  const keys = new Set([
    ...bins.flatMap(({ body }) => (body.stringKey === undefined ? [] : [body.stringKey])),
    ...lying.map(({ stringKey }) => stringKey),
  ]);
  return [...keys]
    .map((stringKey): KindLine => {
      const ofKind = lying.filter((one) => one.stringKey === stringKey);
      const forIt = bins.filter(({ body }) => body.stringKey === stringKey);
      const holding = ofKind.flatMap(({ binId }) => byId.get(binId) ?? []);
      const both = [...new Set([...forIt, ...holding])];
      const count = (state: string) => sum(ofKind.filter((one) => one.state === state));
      return {
        stringKey,
        bins: both,
        lying: ofKind,
        released: count('released'),
        inCheck: count('in-check'),
        onHold: count('on-hold'),
        reorderLevel: forIt.reduce((total, { body }) => total + body.reorderLevel, 0),
        walkOrder: Math.min(...both.map(({ body }) => body.walkOrder)),
      };
    })
    .toSorted((a, b) => a.walkOrder - b.walkOrder || (a.stringKey < b.stringKey ? -1 : 1));
}

/** Whether fewer may be packed than there should be. */
export const isBelowLevel = ({ released, reorderLevel }: KindLine): boolean => released < reorderLevel;

export interface StringsWish {
  readonly text: string;
  readonly onlyShort: boolean;
}

/** Kinds whose words, bins or lots hold a text. */
export function wishedKinds(
  kinds: readonly KindLine[],
  { text, onlyShort }: StringsWish,
  inWords: (stringKey: string) => string,
): readonly KindLine[] {
  const sought = text.trim().toLowerCase();
  return kinds.filter((kind) => {
    const held = [
      inWords(kind.stringKey),
      ...kind.bins.map(({ body }) => body.name),
      ...kind.lying.map(({ lot }) => lot),
    ];
    return (
      (!onlyShort || isBelowLevel(kind)) &&
      (sought === '' || held.some((name) => name.toLowerCase().includes(sought)))
    );
  });
}

const sum = (lying: readonly LyingStrings[]): number => lying.reduce((total, { count }) => total + count, 0);
