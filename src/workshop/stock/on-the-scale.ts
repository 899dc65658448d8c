import { mgFromKg } from '../../core/stock/index.js';
import { refuse } from '../refusal.js';
import type { SpoolRecord } from './spool-book.js';

/** Wire on a spool by the scale, and what its record then says of the weighing. */
export interface OnTheScale {
  readonly foundMg: number;
  readonly weighed: { readonly grossKg: number; readonly at: string };
}

/**
 * Reads a weighing. Refuses a spool lighter than when empty, and one heavier than at its last weighing, since
 * wire does not grow: unless someone says why (the other weighing was wrong).
 */
export function onTheScale(
  { id, body }: SpoolRecord,
  scale: { readonly grossKg: number; readonly at: string; readonly reason?: string | undefined },
): OnTheScale {
  const { grossKg, at, reason } = scale;
  const spool = { spoolId: id, spoolName: body.name, grossKg };
  const { tareKg, weighed: before } = body;
  if (grossKg < tareKg) refuse({ code: 'spool.lighter-than-empty', ...spool, tareKg });
  if (before && grossKg > before.grossKg && reason === undefined) {
    refuse({ code: 'spool.heavier-than-before', ...spool, beforeKg: before.grossKg, beforeAt: before.at });
  }
  return { foundMg: mgFromKg(grossKg - tareKg), weighed: { grossKg, at } };
}
