import type { ComplaintRegister } from '../../../contract/index.js';

type Table = ComplaintRegister['tables'][number];

/** Asked at this level: of shops where nothing is amiss one in twenty is told of a sort that is uneven. */
export const LEVEL = 0.05;

/** Sources with more than their share, of those sorts alone that are uneven as a whole: the chance is made good in both steps. */
export const standingOut = (
  tables: readonly Table[],
): readonly { readonly by: string; readonly rate: Table['rates'][number] }[] =>
  tables
    .filter(({ p }) => p !== undefined && p <= LEVEL)
    .flatMap(({ by, rates }) =>
      rates
        .filter(({ p, times = 0 }) => p !== undefined && p <= LEVEL && times > 1)
        .map((rate) => ({ by, rate })),
    );
