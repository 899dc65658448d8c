import type { RecordOf } from '../../api/use-records.js';

type Spool = RecordOf<'spool'>;

/** What was scanned at a machine, and whether it may go on. */
export type SpoolFound =
  | { readonly kind: 'right'; readonly spool: Spool }
  | { readonly kind: 'wrong-wire'; readonly spool: Spool }
  | { readonly kind: 'several'; readonly spools: readonly Spool[] }
  | { readonly kind: 'unknown' }
  | { readonly kind: 'quarantined' | 'empty' | 'elsewhere' | 'already'; readonly spool: Spool };

export interface SpoolSought {
  readonly spools: readonly Spool[];
  /** Wires that the run takes. */
  readonly wireIds: readonly string[];
  readonly machineId: string;
  /** Spools that are on the run, or chosen for it, already. */
  readonly onIt: readonly string[];
}

/** The spool that a label names: by its name, else by its lot. Of several of a lot, those that the run could take. */
export function findSpool(text: string, sought: SpoolSought): SpoolFound {
  const asked = plain(text);
  const named = sought.spools.filter(({ body }) => plain(body.name) === asked);
  const ofLot = sought.spools.filter(({ body }) => plain(body.lot) === asked);
  const found = named.length > 0 ? named : ofLot;
  const [first] = found;
  if (!first) return { kind: 'unknown' };
  if (found.length === 1) return judged(first, sought);
  const usable = found.filter((spool) => judged(spool, sought).kind === 'right');
  if (usable.length === 1) return { kind: 'right', spool: usable[0]! };
  return usable.length > 1 ? { kind: 'several', spools: usable } : judged(first, sought);
}

function judged(spool: Spool, { wireIds, machineId, onIt }: SpoolSought): SpoolFound {
  if (!wireIds.includes(spool.body.wireId)) return { kind: 'wrong-wire', spool };
  if (onIt.includes(spool.id)) return { kind: 'already', spool };
  if (spool.state === 'quarantined' || spool.state === 'empty') return { kind: spool.state, spool };
  const { machineId: where } = spool.body;
  if (spool.state === 'on-machine' && where !== undefined && where !== machineId)
    return { kind: 'elsewhere', spool };
  return { kind: 'right', spool };
}

const plain = (text: string): string => text.trim().toLowerCase().replace(/\s+/g, ' ');

/** Spools of a wire that may go on a machine: from the shelf, or there already for a paused run. */
export const mountable = (
  spools: readonly Spool[],
  { wireId, machineId }: { readonly wireId: string; readonly machineId: string },
): readonly Spool[] =>
  spools.filter(
    ({ state, body }) =>
      body.wireId === wireId &&
      (state === 'on-shelf' || (state === 'on-machine' && body.machineId === machineId)),
  );
