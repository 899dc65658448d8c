import { scrapStrings as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { scrapStrings as scrapMovement } from '../../core/stock/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { post } from './post.js';
import { refuseTooMany, stringsInBin } from './strings-in-bin.js';

/** Throws strings of a lot away: what coiling finds wrong with them. `tallyId`: the count that they were rejected by. */
export const scrapStrings = useCase(definition, async (work, { lotId, binId, count, reason, tallyId }) => {
  const { tx } = work;
  const lot = await needRecord(tx, 'string-lot', lotId);
  const bin = await needRecord(tx, 'bin', binId);
  await refuseTooMany(tx, { bin, lot, count });
  const string = { stringKey: lot.body.stringKey, lotId };
  await post(work, scrapMovement({ string, binId, count, reason, tallyId }));
  return succeed({ left: await stringsInBin(tx, { binId, lot }) });
});
