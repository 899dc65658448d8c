import { useMemo } from 'react';
import { type JointStrength, jointStrength, PROOF_SHARE, pullsOf } from '../../../core/winding/index.js';
import { useReading } from '../../api/use-records.js';
import type { ShownCheck } from './use-end-checks.js';

/** So many of the latest checks of a wire are looked at. */
const LATEST = 500;

interface KindOfEnd {
  /** The record of the wire. */
  readonly wireId: string;
  readonly end: 'ball' | 'loop';
  /** The bench that made it. */
  readonly machineId: string;
}

/** What the pulls of one kind of end in one wire say, what waits on this screen included. */
export function useJoint(
  { wireId, end, machineId }: KindOfEnd,
  coming: readonly ShownCheck[],
): JointStrength {
  const kept = useReading('end-checks', { wireId, limit: LATEST }, { enabled: wireId !== '' }).data?.items;
  return useMemo(() => {
    const known = (kept ?? []).filter((row) => row.end === end && row.machineId === machineId).toReversed();
    const ids = new Set(known.map(({ id }) => id));
    return jointStrength(pullsOf([...known, ...coming.filter(({ id }) => !ids.has(id))]), PROOF_SHARE);
  }, [kept, end, machineId, coming]);
}
