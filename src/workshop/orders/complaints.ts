import {
  answerComplaint as answering,
  closeComplaint as closing,
  correctComplaint as correcting,
  type InputOf,
  registerComplaint as registering,
  reopenComplaint as reopening,
} from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { COMPLAINT_LIFE } from '../../core/stock/index.js';
import { needRecord, recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase, type Work } from '../use-case.js';

/** A complaint with what it is about, where that is known: a pack leads to its lots, and they to wire and machine. */
export const registerComplaint = useCase(registering, async (work, { id, player, text, ...told }) => {
  const { tx, now } = work;
  const body = { player, text, ...(await aboutOf(work, told)) };
  return succeed(await tx.records.insert('complaint', { id, state: COMPLAINT_LIFE.initial, body, at: now }));
});

/** What a complaint is about may be understood later than it is written down, in whatever state it stands. */
export const correctComplaint = useCase(
  correcting,
  async (work, { complaintId, expectedVersion, ...told }) => {
    const record = await complaintAsSeen(work, { complaintId, expectedVersion });
    const { player, text, answer } = record.body;
    const body = {
      player,
      text,
      ...(await aboutOf(work, told)),
      ...(answer === undefined ? {} : { answer }),
    };
    const change = { id: complaintId, expectedVersion, body, at: work.now };
    return succeed(await work.tx.records.update('complaint', change));
  },
);

type About = Omit<InputOf<typeof registering>, 'id' | 'player' | 'text'>;

/** Pack and lot must be there, the lot one of the pack's; a place in the pack leads to the lot. */
async function aboutOf({ tx }: Work, { faultCode, packId, lotId, position }: About): Promise<About> {
  const pack = packId === undefined ? undefined : await needRecord(tx, 'pack', packId);
  if (lotId !== undefined) await needRecord(tx, 'string-lot', lotId);
  if (position !== undefined && !pack) refuse({ code: 'complaint.position-without-pack', position });
  const inPack = pack?.body.picked ?? [];
  const labelCode = pack?.body.labelCode;
  const picked = position === undefined ? undefined : inPack.find((string) => string.position === position);
  if (position !== undefined && !picked)
    refuse({ code: 'complaint.position-not-in-pack', packId, labelCode, position });
  const lot = lotId ?? picked?.lotId;
  const isOfPack = picked ? picked.lotId === lot : inPack.some((string) => string.lotId === lot);
  if (pack && lot !== undefined && !isOfPack)
    refuse({ code: 'complaint.lot-not-in-pack', packId, labelCode, lotId: lot });
  return {
    faultCode,
    ...(packId === undefined ? {} : { packId }),
    ...(lot === undefined ? {} : { lotId: lot }),
    ...(position === undefined ? {} : { position }),
  };
}

export const answerComplaint = useCase(answering, async (work, { answer, ...seen }) => {
  const record = await complaintAsSeen(work, seen);
  const body = { ...record.body, answer };
  return succeed(await stepRecord(work, 'complaint', { record, life: COMPLAINT_LIFE, step: 'answer', body }));
});

export const closeComplaint = useCase(closing, async (work, seen) => {
  const record = await complaintAsSeen(work, seen);
  return succeed(await stepRecord(work, 'complaint', { record, life: COMPLAINT_LIFE, step: 'close' }));
});

export const reopenComplaint = useCase(reopening, async (work, seen) => {
  const record = await complaintAsSeen(work, seen);
  return succeed(await stepRecord(work, 'complaint', { record, life: COMPLAINT_LIFE, step: 'reopen' }));
});

const complaintAsSeen = (
  { tx }: Work,
  { complaintId, expectedVersion }: { readonly complaintId: string; readonly expectedVersion: number },
) => recordAsSeen(tx, 'complaint', { id: complaintId, expectedVersion });
