import { countStrings as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { countDifference } from '../../core/stock/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { post } from './post.js';
import { refuseOtherKind, stringsInBin } from './strings-in-bin.js';

/** Takes stock: what was counted stands, and the difference from the book is written with its reason. */
export const countStrings = useCase(definition, async (work, { binId, lotId, counted, reason }) => {
  const { tx } = work;
  const lot = await needRecord(tx, 'string-lot', lotId);
  const bin = await needRecord(tx, 'bin', binId);
  const onBook = await stringsInBin(tx, { binId, lot });
  if (counted > onBook) refuseOtherKind(bin, lot.body.stringKey);
  const string = { stringKey: lot.body.stringKey, lotId };
  await post(work, countDifference({ string, binId, onBook, counted, reason }));
  return succeed({ counted, difference: counted - onBook });
});
