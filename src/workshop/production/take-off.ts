import { takeWire, weighDifference } from '../../core/stock/index.js';
import type { RunRecord } from '../stock/live-runs.js';
import { post } from '../stock/post.js';
import { spoolOnBook } from '../stock/spool-book.js';
import type { Work } from '../use-case.js';
import { dismount } from './mount.js';
import type { SpoolTaken } from './wire-taken.js';

/** Strings by what became of them. */
export interface Made {
  readonly good: number;
  readonly scrap: readonly { readonly reason: string; readonly count: number }[];
}

/** Wire of a run that made no string at all: what setting up used. */
const NO_STRING = 'no-string-made';

/** Posts what a run took off a spool, scrapped strings with their share of it, and takes the spool off the machine. */
export async function takeOff(work: Work, run: RunRecord, taken: SpoolTaken, made: Made): Promise<WireUsed> {
  const { record, scale, mg, how, wire } = taken;
  const leftMg = scale ? scale.foundMg : taken.book.mg - mg;
  // The books were short: what was found and what was used must both have been there.
  if (leftMg + mg > taken.book.mg) {
    await post(work, weighDifference({ spool: taken.book, foundMg: leftMg + mg, reason: 'weighing' }));
  }
  const { book: spool } = await spoolOnBook(work.tx, record);
  await post(work, takeWire({ spool, runId: run.id, ...shares(mg, made) }));
  const { book } = await spoolOnBook(work.tx, record);
  await dismount(work, { record, run, weighed: scale?.weighed, isUsedUp: book.mg === 0 });
  return { wireId: wire.id, spoolId: record.id, mg, mm: spool.mm - book.mm, how };
}

export interface WireUsed {
  readonly wireId: string;
  readonly spoolId: string;
  readonly mg: number;
  readonly mm: number;
  readonly how: 'weighed' | 'computed';
}

/** Every string has the same share; what does not divide stays with the good ones. */
function shares(
  mg: number,
  { good, scrap }: Made,
): Pick<Parameters<typeof takeWire>[0], 'woundMg' | 'scrap'> {
  const strings = scrap.reduce((sum, { count }) => sum + count, good);
  if (strings === 0) return { woundMg: 0, scrap: [{ reason: NO_STRING, mg }] };
  const scrapped = scrap.map(({ reason, count }) => ({ reason, mg: Math.floor((mg * count) / strings) }));
  return { woundMg: scrapped.reduce((left, share) => left - share.mg, mg), scrap: scrapped };
}
