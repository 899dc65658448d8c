import { type Permission, RECORD_KINDS, type RecordKind } from '../../contract/index.js';
import type { Actor } from '../../workshop/index.js';

/** Whether someone may hear that a thing changed: only who may read it. */
export function mayHearOf({ permissions }: Actor, topic: string): boolean {
  const needed = READINGS[topic] ?? RECORD_KINDS[topic as RecordKind]?.readPermission;
  return needed !== undefined && permissions.has(needed);
}

const READINGS: Readonly<Record<string, Permission>> = {
  movement: 'stock.read',
  measurement: 'run.read',
  'end-check': 'run.read',
  'trial-string': 'run.read',
  tally: 'run.read',
  'caution-reading': 'run.read',
};
