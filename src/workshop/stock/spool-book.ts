import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { ALLOYS, wireUnitWeightKgPerM } from '../../core/materials/index.js';
import type { SpoolBook } from '../../core/stock/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';

export type SpoolRecord = StoredRecord<BodyOf<'spool'>>;
export type WireRecord = StoredRecord<BodyOf<'wire'>>;

/** A spool, what it holds by the ledger, and the kind of wire on it. */
export interface SpoolOnBook {
  readonly record: SpoolRecord;
  readonly wire: WireRecord;
  readonly book: SpoolBook;
}

export async function spoolOnBook(
  { records, ledger }: Pick<ReadTransaction, 'records' | 'ledger'>,
  record: SpoolRecord,
): Promise<SpoolOnBook> {
  const wire = await needRecord({ records }, 'wire', record.body.wireId);
  const balances = await ledger.balances({ account: `spool/${record.id}`, item: `wire/${wire.id}` });
  const held = (unit: 'mg' | 'mm') =>
    balances.find((balance) => balance.lot === record.id && balance.unit === unit)?.quantity ?? 0;
  const book = {
    spoolId: record.id,
    wireId: wire.id,
    unitWeightKgPerM: unitWeightKgPerM(wire),
    mg: held('mg'),
    mm: held('mm'),
  };
  return { record, wire, book };
}

/** What a metre of the wire weighs, kg/m, by its size and alloy. */
export const unitWeightKgPerM = ({ body }: WireRecord): number =>
  wireUnitWeightKgPerM({ ...body, densityKgPerM3: ALLOYS[body.alloy].densityKgPerM3.value });
