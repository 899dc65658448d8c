import { standingChecks } from '../../../core/winding/index.js';
import type { KeptCheck } from './use-end-checks.js';

/** All checks of one kind of end in one wire. */
export interface PulledKind {
  readonly wireId: string;
  readonly end: KeptCheck['end'];
  readonly rows: readonly KeptCheck[];
}

/** Checks that were pulled, by wire and end; those with the most pulls first. */
export function kindsOfEnd(all: readonly KeptCheck[]): readonly PulledKind[] {
  const kinds = new Map<string, KeptCheck[]>();
  for (const row of standingChecks(all)) {
    if (!row.pull) continue;
    const key = `${row.wireId} ${row.end}`;
    kinds.set(key, [...(kinds.get(key) ?? []), row]);
  }
  return [...kinds.values()]
    .map((rows) => ({ wireId: rows[0]!.wireId, end: rows[0]!.end, rows }))
    .toSorted((one, other) => other.rows.length - one.rows.length);
}
