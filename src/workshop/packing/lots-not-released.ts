import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { Pack } from './packs-of-order.js';

export type Lot = StoredRecord<BodyOf<'string-lot'>>;

/** Lots in packs that were put on hold after their strings were picked: nothing of them may leave. */
export async function lotsNotReleased(
  tx: ReadTransaction,
  packs: readonly Pack[],
): Promise<readonly LotFacts[]> {
  const lotIds = new Set(packs.flatMap(({ body }) => body.picked.map(({ lotId }) => lotId)));
  const found: LotFacts[] = [];
  for (const lotId of lotIds) {
    const lot = await tx.records.get('string-lot', lotId);
    if (lot && lot.state !== 'released') found.push(lotFacts(lot));
  }
  return found;
}

/** What a refusal tells of a lot. */
interface LotFacts {
  readonly lotId: string;
  readonly name: string;
  readonly state: string;
  readonly holdReason?: string;
}

export const lotFacts = ({ id, state, body }: Lot): LotFacts => ({
  lotId: id,
  name: body.name,
  state,
  ...(body.holdReason === undefined ? {} : { holdReason: body.holdReason }),
});
