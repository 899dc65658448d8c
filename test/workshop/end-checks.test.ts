import { describe, expect, it } from 'vitest';
import { coreEndSheet, pullsOf } from '../../src/core/winding/index.js';
import { newId, planRun, receiveSpool, recordEndChecks, startRun } from '../../src/workshop/index.js';
import { BENCH, bronze36, specOf } from '../fixtures/winders.js';
import { engines } from '../store/harness.js';
import { P12, SmallShop, W36 } from './small-shop.js';

describe.each(engines())('checks of ends on $name', (engine) => {
  const open = () => SmallShop.open(engine);

  async function plainRun(shop: SmallShop, certificate?: { readonly tensilePa: number }) {
    const runId = newId();
    const { plain12: recipeId } = shop.recipes;
    await shop.done(planRun, {
      id: runId,
      name: `run ${runId}`,
      recipeId,
      machineId: shop.machines.bench,
      spec: P12,
      quantity: 20,
    });
    const spoolId = newId();
    await shop.done(receiveSpool, {
      ...{ id: spoolId, wireId: shop.wires.plain, name: `spool ${spoolId}`, lot: 'H1' },
      ...{ grossKg: 2, tareKg: 0.5 },
      ...(certificate && { certificate }),
    });
    await shop.done(startRun, { runId, expectedVersion: 1, spoolIds: [spoolId] });
    return { runId, spoolId };
  }

  const found = (shop: SmallShop, query: { readonly runId?: string; readonly wireId?: string }) =>
    shop.store.read(async ({ readings }) => (await readings.endChecks({ ...query, limit: 50 })).items);

  it('are kept with bench, wire, spool and the strength that they are judged by', async () => {
    const shop = await open();
    const { runId, spoolId } = await plainRun(shop);
    const rows = [
      { id: newId(), runId, twists: 9, tailM: 0.0005, seat: 'straight' as const, lengthM: 1.001 },
      { id: newId(), runId, pull: { forceN: 125, came: 'held' as const }, gauge: 'pull gauge 1' },
    ];
    expect(await shop.done(recordEndChecks, { rows })).toEqual({ written: 2 });
    const [first, second] = await found(shop, { runId });
    const { bench: machineId } = shop.machines;
    expect(first).toMatchObject({ machineId, wireId: shop.wires.plain, spoolId, end: 'ball', twists: 9 });
    expect(first).not.toHaveProperty('pull');
    // Least breaking force of 12 thou of ASTM A228 wire, 189.7 N.
    expect(second!.leastBreakingN).toBeCloseTo(189.7, 1);
    expect(second).toMatchObject({ strengthFrom: 'standard', gauge: 'pull gauge 1', insteadOf: null });
    expect(second).not.toHaveProperty('twists');
    const { items } = await shop.store.read(({ journal }) => journal.list({ recordId: runId, limit: 1 }));
    expect(items[0]).toMatchObject({ useCase: 'record-end-checks', touched: [{ kind: 'end-check' }] });
  });

  it('are judged by the certificate of the spool that lies on the bench', async () => {
    const shop = await open();
    const { runId } = await plainRun(shop, { tensilePa: 2.9e9 });
    await shop.done(recordEndChecks, {
      rows: [{ id: newId(), runId, pull: { forceN: 140, came: 'held' } }],
    });
    const [check] = await found(shop, { runId });
    expect(check!.strengthFrom).toBe('certificate');
    expect(check!.leastBreakingN).toBeCloseTo(2.9e9 * (Math.PI / 4) * (12 * 25.4e-6) ** 2, 6);
  });

  it('of cores belong to the run that will be wound, and name the bench', async () => {
    const shop = await open();
    const runId = newId();
    const { bronze36: recipeId } = shop.recipes;
    await shop.done(planRun, {
      ...{ id: runId, name: 'wound', recipeId, machineId: shop.machines.servo, spec: W36, quantity: 10 },
    });
    const row = { runId, twists: 7 };
    expect(await shop.refused(recordEndChecks, { rows: [{ id: newId(), ...row }] })).toMatchObject({
      code: 'end-check.not-a-bench',
      machineName: 'Servo one',
    });
    const { bench: machineId } = shop.machines;
    const spoolId = await shop.spool(shop.wires.core, 1);
    await shop.done(recordEndChecks, { rows: [{ id: newId(), ...row, machineId, spoolId }] });
    expect(await found(shop, { wireId: shop.wires.core })).toMatchObject([{ runId, machineId, spoolId }]);
    const wrong = await shop.spool(shop.wires.wrap, 1);
    expect(
      await shop.refused(recordEndChecks, { rows: [{ id: newId(), ...row, machineId, spoolId: wrong }] }),
    ).toMatchObject({ code: 'run.spool-of-other-wire' });
    const sheet = coreEndSheet({
      bench: BENCH,
      recipe: bronze36('hex'),
      spec: specOf(bronze36('hex')),
      quantity: 10,
    });
    expect(sheet.ok && sheet.value.of).toBe('core');
  });

  it('are refused, all together, where one says nothing or cannot be', async () => {
    const shop = await open();
    const { runId } = await plainRun(shop);
    const good = { id: newId(), runId, twists: 8 };
    expect(
      await shop.refused(recordEndChecks, { rows: [good, { id: newId(), runId, gauge: 'x' }] }),
    ).toMatchObject({ code: 'end-check.empty' });
    expect(
      await shop.refused(recordEndChecks, {
        rows: [good, { id: newId(), runId, pull: { forceN: 1250, came: 'held' } }],
      }),
    ).toMatchObject({ code: 'end-check.impossible', thing: 'pull', value: 1250 });
    expect(await found(shop, { runId })).toEqual([]);
  });

  it('give way to a later word about the same end, and to being taken back; nothing is erased', async () => {
    const shop = await open();
    const { runId } = await plainRun(shop);
    const [first, second] = [newId(), newId()];
    const pull = (forceN: number) => ({ pull: { forceN, came: 'held' as const } });
    await shop.done(recordEndChecks, {
      rows: [
        { id: first, runId, ...pull(12.5) },
        { id: second, runId, ...pull(126) },
      ],
    });
    await shop.done(recordEndChecks, { rows: [{ id: newId(), runId, ...pull(125), insteadOf: first }] });
    await shop.done(recordEndChecks, { rows: [{ id: newId(), runId, insteadOf: second }] });
    const rows = await found(shop, { runId });
    expect(rows).toHaveLength(4);
    expect(pullsOf(rows).map(({ forceN }) => forceN)).toEqual([125]);
    expect(
      await shop.refused(recordEndChecks, { rows: [{ id: newId(), runId, insteadOf: newId() }] }),
    ).toMatchObject({ code: 'record.missing', kind: 'end-check' });
  });

  it('are of those who run machines', async () => {
    const shop = await open();
    const { runId } = await plainRun(shop);
    const rows = [{ id: newId(), runId, twists: 8 }];
    expect((await shop.refused(recordEndChecks, { rows }, { actor: shop.as('packer') })).code).toBe(
      'permission.missing',
    );
    expect((await shop.ask(recordEndChecks, { rows }, { actor: shop.as('winder') })).ok).toBe(true);
  });
});
