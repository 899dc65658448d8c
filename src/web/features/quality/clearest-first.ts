import type { QualityView } from '../../../contract/index.js';

type Group = QualityView['groups'][number];

/** One in twenty by chance, made good already for the number of groups. */
const PROVEN = 0.05;

export const isProven = ({ against }: Group): boolean => against !== undefined && against.p < PROVEN;

/** Those that surely differ come first, by how far; the others by how many runs they have. */
export const clearestFirst = (groups: readonly Group[]): readonly Group[] =>
  groups.toSorted(
    (a, b) =>
      Number(isProven(b)) - Number(isProven(a)) || (isProven(a) ? far(b) - far(a) : 0) || b.runs - a.runs,
  );

const far = ({ against }: Group): number => Math.abs(against?.difference ?? 0);
