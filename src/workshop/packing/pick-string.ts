import type { BodyOf, StoredRecord } from '../../contract/index.js';
import { pickString as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import type { StringSpec } from '../../core/sets/index.js';
import { pickString as pickMovement } from '../../core/stock/index.js';
import { needRecord, recordAsSeen } from '../record-change.js';
import { refuse } from '../refusal.js';
import { stringsInBins } from '../shop/shelf.js';
import { post } from '../stock/post.js';
import { useCase, type Work } from '../use-case.js';
import { type Lot, lotFacts } from './lots-not-released.js';
import { needOpen } from './need-open.js';
import type { Pack } from './packs-of-order.js';

/** A string from a bin into an open pack, where it is the string that is wanted there. */
export const pickString = useCase(
  definition,
  async (work, { packId, expectedVersion, position, lotId, binId }) => {
    const { tx, now } = work;
    const pack = await recordAsSeen(tx, 'pack', { id: packId, expectedVersion });
    needOpen(pack);
    const wanted = freePlace(pack, position);
    const lot = await needRecord(tx, 'string-lot', lotId);
    const bin = await needRecord(tx, 'bin', binId);
    needSameKind(wanted, lot, { packId, position });
    needReleased(lot, packId);
    await needInBin(work, lot, bin);
    const string = { stringKey: wanted.stringKey, lotId };
    await post(work, pickMovement({ string, binId, orderId: pack.body.orderId, packId }));
    const picked = [...pack.body.picked, { position, stringKey: wanted.stringKey, lotId, binId }].sort(
      (a, b) => a.position - b.position,
    );
    const body = { ...pack.body, picked };
    return succeed(
      await tx.records.update('pack', { id: packId, expectedVersion, state: 'open', body, at: now }),
    );
  },
);

type Wanted = Pack['body']['wanted'][number];

function freePlace({ id, body }: Pack, position: number): Wanted {
  const wanted = body.wanted.find((each) => each.position === position);
  if (!wanted)
    return refuse({ code: 'pack.no-such-position', packId: id, position, strings: body.wanted.length });
  const before = body.picked.find((each) => each.position === position);
  if (before) return refuse({ code: 'pack.position-filled', packId: id, position, lotId: before.lotId });
  return wanted;
}

/** The wrong string is told by what differs, so that the hand knows what to look for. */
function needSameKind(
  wanted: Wanted,
  { id, body }: Lot,
  place: { readonly packId: string; readonly position: number },
): void {
  if (body.stringKey === wanted.stringKey) return;
  refuse({
    code: 'pack.wrong-string',
    ...place,
    lotId: id,
    wanted: wanted.stringKey,
    given: body.stringKey,
    differs: TRAITS.filter((trait) => wanted.spec[trait] !== body.spec[trait]),
  });
}

const TRAITS = [
  'gaugeThou',
  'kind',
  'material',
  'end',
  'lengthM',
] as const satisfies readonly (keyof StringSpec)[];

function needReleased(lot: Lot, packId: string): void {
  if (lot.state !== 'released') refuse({ code: 'pack.lots-not-released', packId, lots: [lotFacts(lot)] });
}

/** Another packer may have taken the last one; other bins that have the same string are told. */
async function needInBin({ tx }: Work, lot: Lot, bin: StoredRecord<BodyOf<'bin'>>): Promise<void> {
  const { stringKey } = lot.body;
  if ((await tx.ledger.balance(`bin/${bin.id}`, `string/${stringKey}`, lot.id)) > 0) return;
  const lying = await stringsInBins(tx, await tx.records.all('bin'), {
    item: `string/${stringKey}`,
    isWanted: ({ state }) => state === 'released',
  });
  refuse({
    code: 'pack.bin-empty',
    binId: bin.id,
    bin: bin.body.name,
    lotId: lot.id,
    lot: lot.body.name,
    stringKey,
    elsewhere: lying.map((each) => ({
      binId: each.bin.id,
      bin: each.bin.body.name,
      lotId: each.lot.id,
      lot: each.lot.body.name,
      count: each.count,
    })),
  });
}
