import { describe, expect, it } from 'vitest';
import { dialTableOf } from '../../src/core/winding/index.js';
import {
  adoptDialRound,
  beginDialRound,
  dropDialRound,
  newId,
  recordDialReading,
  saveMachine,
  strikeDialReading,
  undoDialRound,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { SmallShop } from './small-shop.js';

const DIALS = [10, 30, 60, 90];
const ERROR_M = 5e-5;

describe.each(engines())('measuring a dial on $name', (engine) => {
  const begin = (shop: SmallShop, id = newId()) =>
    shop.done(beginDialRound, {
      id,
      machineId: shop.machines.gear,
      quantity: 'traverse',
      dials: [...DIALS].reverse(),
      readingError: ERROR_M,
      wantedShare: 0.002,
    });

  const read = (shop: SmallShop, roundId: string, dial: number, perTurnM: number, readingId = newId()) =>
    shop.done(recordDialReading, {
      roundId,
      readingId,
      dial,
      read: { turns: 200, startM: 0.05, endM: 0.05 + 200 * perTurnM },
      instrument: 'steel rule',
    });

  const tableNow = async (shop: SmallShop) => {
    const machine = await shop.store.read(({ records }) => records.get('machine', shop.machines.gear));
    return dialTableOf(machine!.body, 'traverse')!;
  };

  it('keeps who read what and with what, and strikes a slip without losing it', async () => {
    const shop = await SmallShop.open(engine);
    const { id, body } = await begin(shop);
    expect(body.dials).toEqual(DIALS);
    const slip = newId();
    await read(shop, id, 10, 2e-4, slip);
    const struck = await shop.done(strikeDialReading, { roundId: id, readingId: slip, isStruck: true });
    expect(struck.body.readings).toMatchObject([
      { readingId: slip, dial: 10, instrument: 'steel rule', by: `person/${shop.winder}`, isStruck: true },
    ]);
  });

  it('sets the machine by what was measured in somebody’s name, and takes that back', async () => {
    const shop = await SmallShop.open(engine);
    const before = await tableNow(shop);
    const { id } = await begin(shop);
    let version = 1;
    for (const dial of DIALS) {
      const was = before.find((row) => row.dial === dial)!.value;
      await read(shop, id, dial, was * 1.01);
      version = (await read(shop, id, dial, was * 1.012)).version;
    }
    const adopted = await shop.done(adoptDialRound, { id, expectedVersion: version });
    expect(adopted.round).toMatchObject({ state: 'adopted', body: { adopted: { before } } });
    const after = await tableNow(shop);
    after.forEach(({ value }, at) => {
      expect(value / before[at]!.value).toBeCloseTo(1.011, 6);
    });
    const undone = await shop.done(undoDialRound, { id, expectedVersion: adopted.round.version });
    expect(undone.round.state).toBe('open');
    expect(await tableNow(shop)).toEqual(before);
  });

  it('does not take back what somebody changed since', async () => {
    const shop = await SmallShop.open(engine);
    const { id } = await begin(shop);
    for (const { dial, value } of await tableNow(shop)) await read(shop, id, dial, value);
    const { round, machine } = await shop.done(adoptDialRound, { id, expectedVersion: 5 });
    const body = {
      ...machine.body,
      dialTable: [...(machine.body as never as { dialTable: [] }).dialTable].slice(1),
    };
    await shop.done(saveMachine, { id: machine.id, expectedVersion: machine.version, body });
    const refused = await shop.refused(undoDialRound, { id, expectedVersion: round.version });
    expect(refused.code).toBe('dial-round.changed-since');
  });

  it('refuses what makes no sense', async () => {
    const shop = await SmallShop.open(engine);
    const { id } = await begin(shop);
    const wish = {
      machineId: shop.machines.gear,
      quantity: 'traverse' as const,
      dials: [1, 2],
      readingError: 1,
      wantedShare: 0.01,
    };
    expect((await shop.refused(beginDialRound, { ...wish, id: newId() })).code).toBe(
      'dial-round.already-open',
    );
    for (const machineId of [shop.machines.servo, shop.machines.bench])
      expect((await shop.refused(beginDialRound, { ...wish, machineId, id: newId() })).code).toBe(
        'dial-round.no-such-dial',
      );
    const once = { ...wish, machineId: shop.machines.servo, quantity: 'pull' as const, dials: [3, 3] };
    expect((await shop.refused(beginDialRound, { ...once, id: newId() })).code).toBe(
      'dial-round.too-few-numbers',
    );
    const entered = { roundId: id, readingId: newId(), dial: 10, instrument: 'rule' };
    expect((await shop.refused(recordDialReading, { ...entered, read: { pullN: 3 } })).code).toBe(
      'dial-round.other-quantity',
    );
    expect(
      (await shop.refused(recordDialReading, { ...entered, read: { turns: 9, startM: 1, endM: 1 } })).code,
    ).toBe('dial-round.nothing-moved');
    await read(shop, id, 10, 1e-4);
    expect(await shop.refused(adoptDialRound, { id, expectedVersion: 2 })).toMatchObject({
      code: 'dial-round.unfinished',
      missing: [30, 60, 90],
    });
    const winder = { actor: shop.as('winder') };
    expect((await shop.refused(adoptDialRound, { id, expectedVersion: 2 }, winder)).code).toBe(
      'permission.missing',
    );
    await shop.done(dropDialRound, { id, expectedVersion: 2 });
    expect(
      (await shop.refused(recordDialReading, { ...entered, read: { turns: 9, startM: 1, endM: 2 } })).code,
    ).toBe('dial-round.not-open');
  });

  it('writes a tension scale down, and takes it off again', async () => {
    const shop = await SmallShop.open(engine);
    const id = newId();
    const machineId = shop.machines.servo;
    await shop.done(beginDialRound, {
      id,
      machineId,
      quantity: 'pull',
      dials: [2, 4],
      readingError: 0.05,
      wantedShare: 0.01,
    });
    for (const dial of [2, 4])
      await shop.done(recordDialReading, {
        roundId: id,
        readingId: newId(),
        dial,
        read: { pullN: 3 * dial },
        instrument: 'hanging scale',
      });
    const { machine, round } = await shop.done(adoptDialRound, { id, expectedVersion: 3 });
    expect(machine.body).toMatchObject({
      pullTable: [
        { dial: 2, pullN: 6 },
        { dial: 4, pullN: 12 },
      ],
    });
    const undone = await shop.done(undoDialRound, { id, expectedVersion: round.version });
    expect(undone.machine.body).not.toHaveProperty('pullTable');
  });
});
