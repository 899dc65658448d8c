import {
  holdLot as holdDefinition,
  releaseLot as releaseDefinition,
  scrapLot as scrapDefinition,
} from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { STRING_LOT_LIFE, scrapStrings } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { post } from '../stock/post.js';
import type { LotRecord } from '../stock/strings-in-bin.js';
import { useCase } from '../use-case.js';

/** Lets a lot be packed, in somebody's name. */
export const releaseLot = useCase(releaseDefinition, async (work, input) => {
  const record = await recordAsSeen(work.tx, 'string-lot', { ...input, id: input.lotId });
  const { personId } = work.actor;
  const body = { ...withoutWords(record), ...(personId === undefined ? {} : { releasedBy: personId }) };
  return succeed(
    await stepRecord(work, 'string-lot', { record, life: STRING_LOT_LIFE, step: 'release', body }),
  );
});

/** Keeps a lot from being packed. */
export const holdLot = useCase(holdDefinition, async (work, input) => {
  const record = await recordAsSeen(work.tx, 'string-lot', { ...input, id: input.lotId });
  const body = { ...withoutWords(record), holdReason: input.reason };
  return succeed(await stepRecord(work, 'string-lot', { record, life: STRING_LOT_LIFE, step: 'hold', body }));
});

/** Throws a lot away, from every bin that it lies in. */
export const scrapLot = useCase(scrapDefinition, async (work, input) => {
  const { tx } = work;
  const seen = await recordAsSeen(tx, 'string-lot', { ...input, id: input.lotId });
  const change = { record: seen, life: STRING_LOT_LIFE, step: 'scrap', body: seen.body } as const;
  const record = await stepRecord(work, 'string-lot', change);
  const { stringKey } = record.body;
  const lying = await tx.ledger.balances({
    accountPrefix: 'bin/',
    item: `string/${stringKey}`,
    lot: record.id,
  });
  for (const { account, quantity: count } of lying) {
    const binId = account.slice('bin/'.length);
    const string = { stringKey, lotId: record.id };
    await post(work, scrapStrings({ string, binId, count, reason: input.reason }));
  }
  return succeed({ record, scrapped: lying.reduce((sum, { quantity }) => sum + quantity, 0) });
});

/** What was said of a lot's last judgement goes with the next one. */
function withoutWords({ body }: LotRecord): LotRecord['body'] {
  const { holdReason: _, releasedBy: __, ...rest } = body;
  return rest;
}
