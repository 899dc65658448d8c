import type { BodyOf } from '../../contract/index.js';

/** A spool's body once it is on no machine. */
export function offMachine(body: BodyOf<'spool'>): BodyOf<'spool'> {
  const { machineId: _, ...rest } = body;
  return rest;
}
