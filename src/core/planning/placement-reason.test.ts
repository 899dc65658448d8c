import { describe, expect, it } from 'vitest';
import type { SetUpTraits } from '../winding/index.js';
import { placementReason } from './placement-reason.js';
import type { PlanJob } from './plan.js';

const traits = (core: string, wrap: string): SetUpTraits => ({
  coreWireId: core,
  wrapWireIds: [wrap],
  wrapAlloy: `alloy of ${wrap}`,
  lengthM: 0.98,
});
const job = (id: string, parts: Partial<PlanJob> = {}): PlanJob => ({
  id,
  traits: traits('core-16', 'wrap-8'),
  eligible: ['m', 'n'].map((machineId) => ({ machineId, processMinutes: 30 })),
  releaseMinute: 0,
  weight: 1,
  ...parts,
});
const changeOver = (from: SetUpTraits | undefined, to: SetUpTraits) => ({
  minutes: from?.coreWireId === to.coreWireId ? 0 : 10,
  scrapStrings: 0,
  costMinor: 0,
});
const reason = (
  one: PlanJob,
  { after = [], setUp, waited = false }: { after?: PlanJob[]; setUp?: SetUpTraits; waited?: boolean } = {},
) => placementReason({ job: one, after, setUp, changeOver, waited });

describe('why a lot stands where it does', () => {
  it('work under way stays', () => {
    expect(reason(job('a', { frozen: { machineId: 'm', order: 0 } }))).toEqual({ kind: 'frozen' });
  });

  it('the machine waited for its wire', () => {
    expect(reason(job('a', { releaseMinute: 70, dueMinute: 90 }), { waited: true })).toEqual({
      kind: 'released',
      releaseMinute: 70,
    });
  });

  it('it is due before everything behind it', () => {
    expect(reason(job('a', { dueMinute: 90 }), { after: [job('b', { dueMinute: 95 }), job('bin')] })).toEqual(
      {
        kind: 'due-first',
        dueMinute: 90,
      },
    );
  });

  it('it keeps the core that is on the machine, and a lot due earlier would not', () => {
    const rival = job('b', { dueMinute: 50, traits: traits('core-18', 'wrap-8') });
    const kept = reason(job('a', { dueMinute: 90 }), { after: [rival], setUp: traits('core-16', 'wrap-9') });
    expect(kept).toEqual({ kind: 'same-set-up', keeps: ['core', 'length'] });
  });

  it('keeping the set-up is no reason where the lot due earlier would keep as much', () => {
    const rival = job('b', { dueMinute: 50 });
    const weighed = reason(job('a', { dueMinute: 90 }), {
      after: [rival],
      setUp: traits('core-16', 'wrap-8'),
    });
    expect(weighed).toEqual({ kind: 'weighed', aheadOf: 'b' });
  });

  it('names the earliest of several lots it was weighed against', () => {
    const after = [job('b', { dueMinute: 60 }), job('c', { dueMinute: 50 }), job('d', { dueMinute: 70 })];
    expect(reason(job('a', { dueMinute: 90 }), { after })).toEqual({ kind: 'weighed', aheadOf: 'c' });
  });

  it('no other machine can make it', () => {
    const only = job('a', { dueMinute: 90, eligible: [{ machineId: 'm', processMinutes: 30 }] });
    expect(reason(only, { after: [job('b', { dueMinute: 50 })] })).toEqual({ kind: 'only-machine' });
  });

  it('nobody waits for it: it fills a bin', () => {
    expect(reason(job('a'))).toEqual({ kind: 'fills-bin' });
    expect(reason(job('a'), { setUp: traits('core-16', 'wrap-9') })).toMatchObject({ kind: 'same-set-up' });
  });

  it('a plain string keeps no wrap, since it has none', () => {
    const plain = { coreWireId: 'core-16', wrapWireIds: [], wrapAlloy: '', lengthM: 0.98 };
    expect(reason(job('a', { traits: plain }), { setUp: plain })).toEqual({
      kind: 'same-set-up',
      keeps: ['core', 'length'],
    });
  });
});
