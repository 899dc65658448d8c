import { beforeAll, describe, expect, it } from 'vitest';
import type { PlanView } from '../../src/contract/index.js';
import { arrangementEffects, arranger } from '../../src/core/day/index.js';
import {
  DEMO_DATE,
  freezePlan,
  needsSeen,
  newId,
  planSeen,
  rearrangePlan,
  receiveSpool,
  shopView,
  startRun,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { cornerShop, type Desk, deskOf } from './desk.js';

const NOW = `${DEMO_DATE}T08:00:00.000Z`;

for (const engine of engines()) {
  describe(`a plan whose runs are put elsewhere in ${engine.name}`, () => {
    let desk: Desk;

    const seen = (): Promise<PlanView> => desk.store.read((tx) => planSeen(tx, DEMO_DATE, NOW));
    const settled = async () => {
      const view = await seen();
      if (!view.settled?.movable) throw new Error('a plan is in force, and can be moved');
      return { ...view.settled, movable: view.settled.movable, view };
    };
    type Settled = Awaited<ReturnType<typeof settled>>;
    const lanesOf = ({ movable, view }: Settled) =>
      Object.entries(view.machineIds).map(([name, machineId]) => ({
        machineId,
        lotIds: movable.lots.filter((lot) => lot.machineId === name).map(({ lotId }) => lotId),
      }));

    beforeAll(async () => {
      desk = await deskOf(await engine.open(), await cornerShop());
      await desk.must(freezePlan, { id: newId(), date: DEMO_DATE });
    });

    it('has the times and reasons that the core foretells, and keeps its runs', async () => {
      const before = await settled();
      const lanes = lanesOf(before);
      const lane = lanes.find(({ lotIds }) => lotIds.length > 1)!;
      const [first] = lane.lotIds;
      lane.lotIds.reverse();
      const shop = await desk.store.read((tx) => shopView(tx));
      const nameOf = new Map(Object.entries(before.view.machineIds).map(([name, id]) => [id, name]));
      const { arrange, orderNow } = arranger({ shop, ...before.movable });
      const told = lanes.map(({ machineId, lotIds }) => ({ machineId: nameOf.get(machineId)!, lotIds }));
      const foretold = arrange(told);
      if (!foretold.ok) throw new Error(foretold.fault.code);
      const done = await desk.must(rearrangePlan, {
        planId: before.id,
        expectedVersion: before.version,
        lanes,
      });
      expect(done.plan.version).toBe(before.version + 1);
      const after = await settled();
      const times = ({
        runs,
      }: {
        readonly runs: readonly { readonly lotId: string; readonly machineId: string }[];
      }) => Object.fromEntries(runs.map(({ lotId, ...run }) => [lotId, run.machineId]));
      expect(times(after.view.day.plan)).toEqual(times(foretold.value));
      for (const run of foretold.value.runs) {
        const line = done.plan.body.runs.find(({ lotId }) => lotId === run.lotId)!;
        expect(line.quantity).toBe(run.quantity);
        expect(line.reason).toEqual(run.reason);
      }
      expect(done.plan.body.runs.find(({ lotId }) => lotId === first)?.reason).toEqual({ kind: 'by-hand' });
      const standing = arrange(orderNow);
      if (!standing.ok) throw new Error(standing.fault.code);
      const effects = arrangementEffects(standing.value, foretold.value, before.movable.lots);
      expect(effects.moved.map(({ lotId }) => lotId)).toContain(first);
      expect(effects.setUpMinutes.before).toBeGreaterThan(0);
    });

    it('is refused as stale to whoever saw it before', async () => {
      const now = await settled();
      const fault = await desk.refused(rearrangePlan, {
        planId: now.id,
        expectedVersion: now.version - 1,
        lanes: lanesOf(now),
      });
      expect(fault).toMatchObject({ code: 'stale-version' });
    });

    it('refuses a machine that cannot make a lot, with its reasons, and lots left out', async () => {
      const now = await settled();
      const lanes = lanesOf(now);
      const benchId = Object.entries(now.view.machineIds).find(([name]) => name.includes('bench'))![1];
      const from = lanes.find(({ machineId, lotIds }) => machineId !== benchId && lotIds.length > 0)!;
      const lotId = from.lotIds.pop()!;
      const ask = { planId: now.id, expectedVersion: now.version };
      expect(await desk.refused(rearrangePlan, { ...ask, lanes })).toMatchObject({
        code: 'rearrange.lots-differ',
        missing: [lotId],
      });
      lanes.find(({ machineId }) => machineId === benchId)!.lotIds.push(lotId);
      expect(await desk.refused(rearrangePlan, { ...ask, lanes })).toMatchObject({
        code: 'rearrange.machine-not-able',
        lotId,
        reasons: [{ code: 'winding.wrong-station' }],
      });
    });

    it('leaves a run alone that was begun meanwhile, and names it', async () => {
      const before = await settled();
      const [lotId, { id: runId }] = Object.entries(before.runs).find(
        ([, { state }]) => state === 'planned',
      )!;
      const lanes = lanesOf(before);
      await begin(runId);
      const fault = await desk.refused(rearrangePlan, {
        planId: before.id,
        expectedVersion: before.version,
        lanes,
      });
      expect(fault).toMatchObject({ code: 'rearrange.lots-differ', begun: [lotId] });
      const after = await settled();
      expect(after.movable.lots.map((lot) => lot.lotId)).not.toContain(lotId);
      const done = await desk.must(rearrangePlan, {
        planId: after.id,
        expectedVersion: after.version,
        lanes: lanesOf(after),
      });
      expect(done.plan.body.runs.map((line) => line.lotId)).toContain(lotId);
    });

    it('is past moving once another took its place', async () => {
      const old = await settled();
      await desk.must(freezePlan, { id: newId(), date: DEMO_DATE });
      const plan = await desk.store.read((tx) => tx.records.get('plan', old.id));
      const fault = await desk.refused(rearrangePlan, {
        planId: old.id,
        expectedVersion: plan!.version,
        lanes: lanesOf(old),
      });
      expect(fault).toMatchObject({ code: 'rearrange.not-in-force', date: DEMO_DATE });
    });

    async function begin(runId: string): Promise<void> {
      const run = (await desk.store.read((tx) => tx.records.get('run', runId)))!;
      const recipe = (await desk.store.read((tx) => tx.records.get('recipe', run.body.recipeId)))!;
      const spoolIds: string[] = [];
      for (const wireId of [recipe.body.coreWireId, ...recipe.body.wrapWireIds]) {
        const id = newId();
        await desk.must(receiveSpool, { id, name: `spool ${id}`, wireId, lot: 'A', grossKg: 3, tareKg: 0.2 });
        spoolIds.push(id);
      }
      await desk.must(startRun, { runId, expectedVersion: run.version, spoolIds });
    }
  });

  describe(`what needs a person in ${engine.name}`, () => {
    it('is a dry room that nobody read, wire that is used faster than it lies there, by the shop’s own rule where it has one', async () => {
      const desk = await deskOf(await engine.open(), await cornerShop());
      const everything = { permissions: new Set(['stock.read'] as const) };
      const needs = () => desk.store.read((tx) => needsSeen(tx, { actor: everything, now: NOW }));
      const before = await needs();
      expect(before.needs).toContainEqual({ kind: 'dry-room-silent', urgency: 'soon', room: '' });
      expect(before.needs.filter(({ kind }) => kind === 'wire-low')).toEqual([]);
      const nothing = await desk.store.read((tx) =>
        needsSeen(tx, { actor: { permissions: new Set() }, now: NOW }),
      );
      expect(nothing.needs).toEqual([]);
    });
  });
}
