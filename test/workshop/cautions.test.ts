import { describe, expect, it } from 'vitest';
import { permissionsOf } from '../../src/contract/index.js';
import { CAUTIONS_EDITION } from '../../src/core/winding/index.js';
import { acknowledgeCautions, myCautions, newId, planRun, startRun } from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

describe.each(engines())('cautions at a machine on $name', (engine) => {
  const read = (machineId: string) => ({
    id: newId(),
    machineId,
    cautions: ['rotating-spindle' as const, 'local-rules' as const],
    edition: CAUTIONS_EDITION,
  });
  const known = (shop: SmallShop, machineId: string, personId = shop.winder) =>
    shop.store.read((tx) => myCautions(tx, { machineId, personId }));

  it('are written down for one person and one machine, and told to that person', async () => {
    const shop = await SmallShop.open(engine);
    const { servo, gear } = shop.machines;
    expect(await known(shop, servo)).toEqual({ acknowledged: [] });
    const { at } = await shop.done(acknowledgeCautions, read(servo));
    const { acknowledged } = await known(shop, servo);
    expect(acknowledged).toEqual([
      { cautions: ['rotating-spindle', 'local-rules'], edition: CAUTIONS_EDITION, on: at.slice(0, 10) },
    ]);
    expect(await known(shop, gear)).toEqual({ acknowledged: [] });
    expect(await known(shop, servo, newId())).toEqual({ acknowledged: [] });
    const { items } = await shop.store.read(({ journal }) => journal.list({ limit: 1 }));
    expect(items[0]).toMatchObject({ useCase: 'acknowledge-cautions', by: `person/${shop.winder}` });
  });

  it('are acknowledged by people alone, at machines that there are', async () => {
    const shop = await SmallShop.open(engine);
    const permissions = permissionsOf(['owner']);
    for (const actor of [
      { by: 'console', permissions },
      { by: `token/${newId()}`, personId: shop.winder, permissions },
    ])
      expect(await shop.refused(acknowledgeCautions, read(shop.machines.servo), { actor })).toMatchObject({
        code: 'access.session-needed',
      });
    expect(await shop.refused(acknowledgeCautions, read(newId()))).toMatchObject({ code: 'record.missing' });
  });

  it('hold no run up: it starts unread, and the day of the start is told', async () => {
    const shop = await SmallShop.open(engine);
    const { servo: machineId } = shop.machines;
    const core = await shop.spool(shop.wires.core, 2, 'core one');
    const wrap = await shop.spool(shop.wires.wrap, 1, 'wrap one');
    const runId = newId();
    const { bronze36: recipeId } = shop.recipes;
    await shop.done(planRun, { id: runId, name: 'run', recipeId, machineId, spec: W36, quantity: 10 });
    const started = await shop.done(startRun, { runId, expectedVersion: 1, spoolIds: [wrap, core] });
    expect(await known(shop, machineId)).toEqual({
      acknowledged: [],
      lastStart: started.body.startedAt?.slice(0, 10),
    });
  });
});
