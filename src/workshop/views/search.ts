import { type BodyOf, RECORD_KINDS, type RecordKind, type StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { Actor } from '../use-case.js';

export interface SearchHit {
  readonly kind: RecordKind;
  readonly id: string;
  readonly name: string;
  readonly about: string;
  readonly state: string;
}

type Tell<Kind extends RecordKind> = (record: StoredRecord<BodyOf<Kind>>) => {
  readonly name: string;
  readonly about: string;
};

/** What can be found, in the order in which it is shown, and the words by which each is known again. */
const FOUND: { readonly [Kind in RecordKind]?: Tell<Kind> } = {
  order: ({ body }) => ({ name: body.number, about: `${body.player}, ${body.due}` }),
  request: ({ body }) => ({ name: body.player, about: body.letter.slice(0, MOST_ABOUT) }),
  set: ({ body }) => ({ name: body.name, about: '' }),
  recipe: ({ body }) => ({ name: body.name, about: body.note.slice(0, MOST_ABOUT) }),
  run: ({ body }) => ({ name: body.name, about: body.stringKey }),
  'string-lot': ({ body }) => ({ name: body.name, about: body.stringKey }),
  spool: ({ body }) => ({ name: body.name, about: body.lot }),
  wire: ({ body }) => ({ name: body.name, about: '' }),
  machine: ({ body }) => ({ name: body.name, about: '' }),
  bin: ({ body }) => ({ name: body.name, about: body.stringKey ?? '' }),
  pack: ({ body }) => ({ name: body.labelCode, about: body.setName }),
  complaint: ({ body }) => ({ name: body.player, about: body.text.slice(0, MOST_ABOUT) }),
};

const MOST_ABOUT = 80;
const MOST_OF_A_KIND = 8;

/** Records that hold the text in one of their keys, of the kinds that the asker may read; newest first within a kind. */
export async function search(
  { records }: Pick<ReadTransaction, 'records'>,
  { permissions }: Pick<Actor, 'permissions'>,
  text: string,
): Promise<readonly SearchHit[]> {
  const hits: SearchHit[] = [];
  for (const kind of Object.keys(FOUND) as (keyof typeof FOUND)[]) {
    if (!permissions.has(RECORD_KINDS[kind].readPermission)) continue;
    const tell = FOUND[kind] as Tell<RecordKind>;
    const page = await records.list(kind, { search: text, limit: MOST_OF_A_KIND });
    for (const record of page.items) hits.push({ kind, id: record.id, state: record.state, ...tell(record) });
  }
  return hits;
}
