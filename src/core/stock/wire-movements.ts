import { invariant } from '../foundation/index.js';
import type { Account, Entry, Movement } from './ledger.js';
import { transfer } from './ledger-transfer.js';
import { lengthLeaving, mmFromMg, type SpoolBook } from './wire-quantities.js';

/** A spool comes in: supplier -> spool, by weight and, by its unit weight, by length. */
export function receiveWire({
  spoolId,
  wireId,
  mg,
  unitWeightKgPerM,
}: {
  readonly spoolId: string;
  readonly wireId: string;
  /** Without the spool itself. */
  readonly mg: number;
  readonly unitWeightKgPerM: number;
}): Movement {
  invariant(mg > 0, `a spool that comes in has wire on it, not ${mg} mg`);
  const mm = mmFromMg(mg, unitWeightKgPerM);
  const entries = wireEntries('supplier', `spool/${spoolId}`, { spoolId, wireId, mg, mm });
  return { what: 'receive', reason: '', ofKind: 'spool', ofId: spoolId, entries };
}

/**
 * Wire that a run took off a spool: spool -> wound into strings, and spool -> scrap by reason. Nothing where
 * none was used. More than the book has is let through here: the ledger refuses it.
 */
export function takeWire({
  spool,
  runId,
  woundMg,
  scrap,
}: {
  /** As the ledger has it before. */
  readonly spool: SpoolBook;
  readonly runId: string;
  readonly woundMg: number;
  readonly scrap: readonly { readonly reason: string; readonly mg: number }[];
}): Movement | undefined {
  const uses: readonly WireUsed[] = [
    { to: 'wound-in', mg: woundMg },
    ...scrap.map(({ reason, mg }) => ({ to: `scrap/${reason}` as const, mg })),
  ];
  const entries = takeInTurn(spool, uses);
  if (entries.length === 0) return undefined;
  return { what: 'use', reason: '', ofKind: 'run', ofId: runId, entries };
}

interface WireUsed {
  readonly to: Account;
  readonly mg: number;
}

/** One after the other, so that the lengths of the parts make the length of the whole. */
function takeInTurn(spool: SpoolBook, uses: readonly WireUsed[]): readonly Entry[] {
  const entries: Entry[] = [];
  let left = spool;
  for (const { to, mg } of uses) {
    invariant(mg >= 0, `wire is used, not made: ${mg} mg`);
    if (mg === 0) continue;
    const part = { ...spool, mg, mm: lengthLeaving(left, mg) };
    entries.push(...wireEntries(`spool/${spool.spoolId}`, to, part));
    left = { ...left, mg: left.mg - mg, mm: left.mm - part.mm };
  }
  return entries;
}

/**
 * The scale tells the truth: the difference between it and the book goes to or comes from the account of
 * weighing differences. Wire found has the length that its unit weight gives it. Nothing where they agree.
 */
export function weighDifference({
  spool,
  foundMg,
  reason,
}: {
  /** As the ledger has it before. */
  readonly spool: SpoolBook;
  readonly foundMg: number;
  readonly reason: string;
}): Movement | undefined {
  invariant(foundMg >= 0, `a scale does not find less than no wire: ${foundMg} mg`);
  const mg = foundMg - spool.mg;
  if (mg === 0) return undefined;
  const mm = mg > 0 ? mmFromMg(mg, spool.unitWeightKgPerM) : -lengthLeaving(spool, -mg);
  const entries = wireEntries('count-difference/weighing', `spool/${spool.spoolId}`, { ...spool, mg, mm });
  return { what: 'count', reason, ofKind: 'spool', ofId: spool.spoolId, entries };
}

type WireMoved = Omit<SpoolBook, 'unitWeightKgPerM'>;

const wireEntries = (
  from: Account,
  to: Account,
  { spoolId, wireId, mg, mm }: WireMoved,
): readonly Entry[] => [
  ...transfer(from, to, { item: `wire/${wireId}`, lot: spoolId, unit: 'mg' }, mg),
  ...transfer(from, to, { item: `wire/${wireId}`, lot: spoolId, unit: 'mm' }, mm),
];
