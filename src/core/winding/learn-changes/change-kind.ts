import type { ChangedPart } from '../changed-part.js';

/** What is changed in setting a machine up, the length apart: it is a stop that is moved. */
export type ChangeKind = 'length' | 'core' | 'wrap' | 'core+wrap' | 'wrap+alloy' | 'core+wrap+alloy';

/** The kinds of change, the smallest first. */
export const CHANGE_KINDS: readonly ChangeKind[] = [
  'length',
  'core',
  'wrap',
  'core+wrap',
  'wrap+alloy',
  'core+wrap+alloy',
];

/** The kind of a change; undefined where nothing is changed. Another alloy is always another wrap. */
export function changeKind(changes: readonly ChangedPart[]): ChangeKind | undefined {
  if (changes.length === 0) return undefined;
  const core = changes.includes('core');
  if (changes.includes('alloy')) return core ? 'core+wrap+alloy' : 'wrap+alloy';
  if (changes.includes('wrap')) return core ? 'core+wrap' : 'wrap';
  return core ? 'core' : 'length';
}
