import {
  answerComplaint as answering,
  closeComplaint as closing,
  registerComplaint as registering,
  reopenComplaint as reopening,
} from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { COMPLAINT_LIFE } from '../../core/stock/index.js';
import { needRecord, recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase, type Work } from '../use-case.js';

/** A complaint with what it is about, where that is known: a pack leads to its lots, and they to wire and machine. */
export const registerComplaint = useCase(registering, async (work, { id, ...body }) => {
  const { tx, now } = work;
  const { packId, lotId } = body;
  const pack = packId === undefined ? undefined : await needRecord(tx, 'pack', packId);
  if (lotId !== undefined) await needRecord(tx, 'string-lot', lotId);
  if (pack && lotId !== undefined && !pack.body.picked.some((string) => string.lotId === lotId))
    refuse({ code: 'complaint.lot-not-in-pack', packId, labelCode: pack.body.labelCode, lotId });
  return succeed(await tx.records.insert('complaint', { id, state: COMPLAINT_LIFE.initial, body, at: now }));
});

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
