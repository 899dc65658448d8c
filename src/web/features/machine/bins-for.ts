import type { RecordOf } from '../../api/use-records.js';

type Bin = RecordOf<'bin'>;

/** Bins that may take a kind of string: those kept for it, then those for any. */
export function binsFor(
  bins: readonly Bin[],
  stringKey: string,
): { readonly own: readonly Bin[]; readonly free: readonly Bin[] } {
  const inOrder = bins.toSorted((one, other) => one.body.walkOrder - other.body.walkOrder);
  return {
    own: inOrder.filter(({ body }) => body.stringKey === stringKey),
    free: inOrder.filter(({ body }) => body.stringKey === undefined),
  };
}
