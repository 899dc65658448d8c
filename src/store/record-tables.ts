import { RECORD_KINDS, type RecordKind } from '../contract/index.js';

/** Kinds of record whose name or number must be their own, since people call them by it. */
const OWN_NAME: Readonly<Partial<Record<RecordKind, string>>> = {
  wire: 'name',
  spool: 'name',
  machine: 'name',
  person: 'name',
  instrument: 'name',
  tuning: 'name',
  set: 'name',
  recipe: 'name',
  bin: 'name',
  order: 'number',
};

/** A kind's table and which columns its body's keys go to. */
export interface RecordTable {
  readonly kind: RecordKind;
  readonly table: string;
  readonly keys: readonly { readonly field: string; readonly column: string }[];
  /** The key that no two records share. */
  readonly own: { readonly field: string; readonly column: string } | undefined;
}

/** The table of a kind of record: `string-lot` -> `string_lots`, its key `runId` -> `run_id`. */
export const recordTable = (kind: RecordKind): RecordTable => TABLES[kind];

function tableOf(kind: RecordKind): RecordTable {
  const { collection, keys } = RECORD_KINDS[kind];
  const own = OWN_NAME[kind];
  return {
    kind,
    table: collection.replaceAll('-', '_'),
    keys: keys.map(keyColumn),
    own: own === undefined ? undefined : keyColumn(own),
  };
}

const keyColumn = (field: string) => ({
  field,
  column: field.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`),
});

const TABLES = Object.fromEntries(
  (Object.keys(RECORD_KINDS) as RecordKind[]).map((kind) => [kind, tableOf(kind)]),
) as Readonly<Record<RecordKind, RecordTable>>;
