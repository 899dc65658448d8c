import type { BodyOf, RecordKind, StoredRecord, UseCaseDefinition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { foldName } from '../../core/orders/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { saveRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { UseCase, WorkshopFault } from '../use-case.js';

/** What is to be kept: a new record, or the next version of one. */
export interface Saved<Kind extends RecordKind> {
  readonly id: string;
  readonly expectedVersion?: number | undefined;
  readonly body: BodyOf<Kind>;
}

/** Looks for what must not be kept; undefined where it may. */
export type Check<Kind extends RecordKind> = (
  tx: ReadTransaction,
  saved: Saved<Kind>,
) => Promise<WorkshopFault | undefined>;

/** The use case that keeps records of a kind, once every check has nothing to say. */
export const saving = <Kind extends RecordKind, Definition extends UseCaseDefinition>(
  definition: Definition,
  kind: Kind,
  checks: readonly Check<Kind>[],
): UseCase<Definition> => ({
  definition,
  run: async (work, input) => {
    const saved = input as unknown as Saved<Kind>;
    for (const check of checks) {
      const fault = await check(work.tx, saved);
      if (fault) refuse(fault);
    }
    return succeed((await saveRecord(work, kind, saved)) as never);
  },
});

/** Orders call these by name, however it is spelt, so no two of a kind may be called alike. */
export const nameIsItsOwn =
  <Kind extends NamedKind>(kind: Kind): Check<Kind> =>
  async (tx, { id, body: { name } }) => {
    const others = (await tx.records.all(kind)) as readonly StoredRecord<BodyOf<NamedKind>>[];
    const folded = foldName(name);
    const other = others.find((each) => each.id !== id && foldName(each.body.name) === folded);
    return other && { code: 'taken', kind, key: 'name', value: other.body.name };
  };

type NamedKind = 'instrument' | 'tuning' | 'set';
