import type { ComplaintRegister } from '../../../contract/index.js';

/** What the address says of which complaints are listed. */
export interface ListWish {
  readonly state?: string;
  readonly fault?: string;
  readonly text?: string;
  readonly days?: string;
}

type Row = ComplaintRegister['complaints'][number];

/** Complaints of a state that hold a text in player, string or lot; the fault was asked of the shop. */
export function narrowComplaints(
  rows: readonly Row[],
  { state, text = '' }: ListWish,
  stringInWords: (stringKey: string) => string,
): readonly Row[] {
  const sought = text.trim().toLowerCase();
  const holds = ({ player, stringKey, lot = '' }: Row): boolean =>
    [player, stringKey === undefined ? '' : stringInWords(stringKey), lot].some((each) =>
      each.toLowerCase().includes(sought),
    );
  return rows.filter(
    (row) => (state === undefined || state === 'all' || row.state === state) && (sought === '' || holds(row)),
  );
}
