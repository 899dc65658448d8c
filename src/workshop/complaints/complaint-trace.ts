import type { BodyOf, ComplaintTrace, StoredRecord } from '../../contract/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';

type TracedString = ComplaintTrace['strings'][number];

interface StringOfPack {
  readonly lotId: string;
  readonly position?: number;
  readonly isMeant: boolean;
}

/** From a complaint to its pack, the lots of its strings, their runs and machines, and the spools of wire in them. */
export async function complaintTrace(tx: ReadTransaction, complaintId: string): Promise<ComplaintTrace> {
  const { body } = await needRecord(tx, 'complaint', complaintId);
  const pack = body.packId === undefined ? undefined : await tx.records.get('pack', body.packId);
  const others = (await tx.records.all('complaint')).filter(({ id }) => id !== complaintId);
  const strings: TracedString[] = [];
  for (const string of stringsMeant(body, pack)) {
    const traced = await stringTrace(tx, string);
    if (!traced) continue;
    const sameLot = others.filter((other) => other.body.lotId === string.lotId).length;
    strings.push({ ...traced, sameLot });
  }
  return { ...(pack ? { pack: await shownPack(tx, pack) } : {}), strings, endsAt: endOf(pack, strings) };
}

/** Of a pack all strings, the ones that are meant first; of a lot without a pack the lot alone. */
function stringsMeant(
  { lotId, position }: BodyOf<'complaint'>,
  pack: StoredRecord<BodyOf<'pack'>> | undefined,
): readonly StringOfPack[] {
  if (!pack) return lotId === undefined ? [] : [{ lotId, isMeant: true }];
  return pack.body.picked
    .map((picked) => ({
      lotId: picked.lotId,
      position: picked.position,
      isMeant: position === undefined ? picked.lotId === lotId : picked.position === position,
    }))
    .sort((a, b) => Number(b.isMeant) - Number(a.isMeant) || a.position - b.position);
}

async function stringTrace(
  { records }: ReadTransaction,
  { lotId, position, isMeant }: StringOfPack,
): Promise<Omit<TracedString, 'sameLot'> | undefined> {
  const lot = await records.get('string-lot', lotId);
  if (!lot) return undefined;
  const run = lot.body.runId === undefined ? undefined : await records.get('run', lot.body.runId);
  const machine = run && (await records.get('machine', run.body.machineId));
  const spools: TracedString['spools'] = [];
  for (const id of lot.body.spoolIds) {
    const spool = await records.get('spool', id);
    const wire = spool && (await records.get('wire', spool.body.wireId));
    if (spool) spools.push({ id, name: spool.body.name, wire: wire?.body.name ?? '?', lot: spool.body.lot });
  }
  return {
    ...(position === undefined ? {} : { position }),
    isMeant,
    stringKey: lot.body.stringKey,
    lotId,
    lot: lot.body.name,
    lotState: lot.state,
    ...(run
      ? {
          run: {
            id: run.id,
            name: run.body.name,
            machine: machine?.body.name ?? '?',
            ...(run.body.closedAt === undefined ? {} : { closedAt: run.body.closedAt }),
          },
        }
      : {}),
    spools,
  };
}

async function shownPack(
  { records }: ReadTransaction,
  { id, body }: StoredRecord<BodyOf<'pack'>>,
): Promise<NonNullable<ComplaintTrace['pack']>> {
  const order = await records.get('order', body.orderId);
  const { labelCode, setName, shippedAt, orderId } = body;
  return {
    id,
    labelCode,
    setName,
    ...(shippedAt === undefined ? {} : { shippedAt }),
    orderId,
    order: order?.body.number ?? '?',
    player: order?.body.player ?? '',
  };
}

function endOf(pack: unknown, strings: readonly TracedString[]): ComplaintTrace['endsAt'] {
  const meant = strings.filter(({ isMeant }) => isMeant);
  const looked = meant.length > 0 ? meant : strings;
  if (looked.length === 0) return pack ? 'pack' : 'nothing';
  if (looked.some(({ spools }) => spools.length > 0)) return 'spools';
  return looked.some(({ run }) => run) ? 'run' : 'lot';
}
