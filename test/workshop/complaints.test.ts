import { beforeAll, describe, expect, it } from 'vitest';
import type { Transaction } from '../../src/store/index.js';
import {
  complaintRegister,
  complaintTrace,
  correctComplaint,
  newId,
  registerComplaint,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { P12, SmallShop, W36 } from './small-shop.js';

const NOW = '2027-03-01T12:00:00.000Z';
const KEY_36 = '36 wound phosphor-bronze ball 1000 mm';
const KEY_12 = '12 plain plain-steel ball 1000 mm';

interface Lot {
  readonly id: string;
  readonly key: string;
}

/** A lot from a run on a machine, of spools; or one that lay there before runs were written down. */
async function lotOf(
  { records }: Transaction,
  name: string,
  made: {
    readonly key?: string;
    readonly run?: { machineId: string; recipeId: string };
    readonly spools?: readonly string[];
  },
): Promise<Lot> {
  const { key = KEY_36, run, spools = [] } = made;
  const spec = key === KEY_36 ? W36 : P12;
  const at = '2027-01-10T12:00:00.000Z';
  const runId = newId();
  if (run) {
    const counts = { quantity: 100, goodCount: 100, scrapCount: 0 };
    const body = {
      name: `run of ${name}`,
      recipeVersion: 1,
      spec,
      stringKey: key,
      note: '',
      spoolIds: [],
      ...counts,
      ...run,
    };
    await records.insert('run', { id: runId, state: 'closed', body: { ...body, closedAt: at }, at });
  }
  const id = newId();
  const body = { name, spec, stringKey: key, made: 100, spoolIds: [...spools], ...(run ? { runId } : {}) };
  await records.insert('string-lot', { id, state: 'released', body, at });
  return { id, key };
}

describe.each(engines())('complaints on $name', (engine) => {
  let shop: SmallShop;
  let spools: { good: string; bad: string };
  let lots: { good: Lot; bad: Lot; old: Lot };
  const packs: { id: string; labelCode: string; lots: readonly Lot[] }[] = [];

  beforeAll(async () => {
    shop = await SmallShop.open(engine);
    const { wires, machines, recipes } = shop;
    await shop.store.write(async (tx) => {
      const at = '2027-01-02T08:00:00.000Z';
      const spool = async (name: string, lot: string) => {
        const id = newId();
        const body = { name, wireId: wires.wrap, lot, tareKg: 0.5, receivedAt: at };
        await tx.records.insert('spool', { id, state: 'on-shelf', body, at });
        return id;
      };
      spools = { good: await spool('B-1', 'H77'), bad: await spool('B-2', 'H78') };
      const wound = (machineId: string) => ({ machineId, recipeId: recipes.bronze36 });
      lots = {
        good: await lotOf(tx, 'good lot', { run: wound(machines.servo), spools: [spools.good] }),
        bad: await lotOf(tx, 'bad lot', { run: wound(machines.servo), spools: [spools.bad] }),
        old: await lotOf(tx, 'old lot', { key: KEY_12 }),
      };
      const orderId = newId();
      const wanted = [{ position: 1, spec: P12, stringKey: KEY_12, recipeId: recipes.plain12 }];
      const line = { lineNumber: 1, kind: 'stock' as const, setName: 'two', quantity: 60, strings: wanted };
      const order = {
        number: 'C-1',
        player: 'Emidra Winnowbeck',
        due: '2027-01-20',
        note: '',
        lines: [line],
      };
      await tx.records.insert('order', { id: orderId, state: 'shipped', body: order, at });
      for (let copy = 1; copy <= 60; copy++) {
        const id = newId();
        const own = [lots.old, copy <= 30 ? lots.good : lots.bad];
        const picked = own.map((lot, place) => ({
          position: place + 1,
          stringKey: lot.key,
          lotId: lot.id,
          binId: shop.bins.first,
        }));
        const labelCode = `TW1:C-1:1:${copy}`;
        const sealed = { sealedAt: '2027-01-15T10:00:00.000Z', shippedAt: '2027-01-16T10:00:00.000Z' };
        const body = { orderId, lineNumber: 1, copy, labelCode, setName: 'two', wanted, picked, ...sealed };
        await tx.records.insert('pack', { id, state: 'shipped', body, at });
        packs.push({ id, labelCode, lots: own });
      }
    });
  });

  const letter = { player: 'Emidra Winnowbeck', text: 'it warbles', faultCode: 'out-of-tune' as const };
  const register = (query: Parameters<typeof complaintRegister>[1] = {}) =>
    shop.store.read((tx) => complaintRegister(tx, query, NOW));

  it('a place in the pack leads to the lot', async () => {
    const id = newId();
    const told = await shop.done(registerComplaint, { id, ...letter, packId: packs[40]!.id, position: 2 });
    expect(told.body).toMatchObject({ lotId: lots.bad.id, position: 2, faultCode: 'out-of-tune' });
  });

  it('a place that the pack has not, or without a pack, is refused', async () => {
    const packId = packs[0]!.id;
    expect(
      await shop.refused(registerComplaint, { id: newId(), ...letter, packId, position: 7 }),
    ).toMatchObject({
      code: 'complaint.position-not-in-pack',
      labelCode: packs[0]!.labelCode,
    });
    expect(await shop.refused(registerComplaint, { id: newId(), ...letter, position: 1 })).toMatchObject({
      code: 'complaint.position-without-pack',
    });
    const other = { packId, position: 1, lotId: lots.good.id };
    expect(await shop.refused(registerComplaint, { id: newId(), ...letter, ...other })).toMatchObject({
      code: 'complaint.lot-not-in-pack',
    });
  });

  it('its fault is one of the list, and may be put right later with all else that it is about', async () => {
    const id = newId();
    const free = { id, ...letter, faultCode: 'smells' as 'dull' };
    expect(await shop.refused(registerComplaint, free)).toMatchObject({ code: 'input.invalid' });
    const first = await shop.done(registerComplaint, { id, ...letter, faultCode: 'other' });
    expect(first.body).not.toHaveProperty('lotId');
    const about = { faultCode: 'buzzes' as const, packId: packs[41]!.id, position: 2 };
    const better = await shop.done(correctComplaint, { complaintId: id, expectedVersion: 1, ...about });
    expect(better).toMatchObject({
      version: 2,
      state: 'open',
      body: { ...about, lotId: lots.bad.id, text: 'it warbles' },
    });
    const stale = { complaintId: id, expectedVersion: 1, faultCode: 'dull' as const };
    expect(await shop.refused(correctComplaint, stale)).toMatchObject({ code: 'stale-version' });
  });

  it('leads from the pack to lot, run, machine and spool, and says where the records end', async () => {
    const id = newId();
    await shop.done(registerComplaint, { id, ...letter, packId: packs[42]!.id, position: 2 });
    const trace = await shop.store.read((tx) => complaintTrace(tx, id));
    expect(trace).toMatchObject({
      pack: { labelCode: packs[42]!.labelCode, order: 'C-1' },
      endsAt: 'spools',
      strings: [
        {
          position: 2,
          isMeant: true,
          lot: 'bad lot',
          sameLot: 2,
          run: { name: 'run of bad lot' },
          spools: [{ name: 'B-2', wire: 'bronze 10', lot: 'H78' }],
        },
        { position: 1, isMeant: false, lot: 'old lot', spools: [] },
      ],
    });
    const old = newId();
    await shop.done(registerComplaint, { id: old, ...letter, packId: packs[3]!.id, position: 1 });
    const ended = await shop.store.read((tx) => complaintTrace(tx, old));
    expect(ended).toMatchObject({ endsAt: 'lot', strings: [{ isMeant: true }, { isMeant: false }] });
    const nothing = newId();
    await shop.done(registerComplaint, { id: nothing, ...letter });
    expect(await shop.store.read((tx) => complaintTrace(tx, nothing))).toEqual({
      strings: [],
      endsAt: 'nothing',
    });
  });

  it('are counted per thousand strings sent, by fault and by source, and the bad lot of wire stands out', async () => {
    for (let at = 43; at < 52; at++)
      await shop.done(registerComplaint, { id: newId(), ...letter, packId: packs[at]!.id, position: 2 });
    const found = await register({ from: '2027-01-01', to: '2027-03-01' });
    // Three of the tests above and nine here are of the bad lot, one is of the old one; 60 packs of two strings.
    expect(found.all).toMatchObject({ complaints: 13, strings: 120 });
    expect(found.all!.perThousand).toBeCloseTo((13 / 120) * 1000, 9);
    expect(found.faults.map(({ fault, complaints }) => [fault, complaints])).toEqual([
      ['out-of-tune', 12],
      ['buzzes', 1],
    ]);
    const wires = found.tables.find(({ by }) => by === 'wire lot')!;
    expect(wires.p).toBeLessThan(0.01);
    expect(wires.rates[0]).toMatchObject({ name: 'bronze 10: H78', complaints: 12, strings: 30, times: 2 });
    expect(wires.rates[1]).toMatchObject({ name: 'bronze 10: H77', complaints: 0, strings: 30 });
    // All of them came from one machine: nothing can be asked of machines.
    expect(found.tables.find(({ by }) => by === 'machine')).not.toHaveProperty('p');
    expect(found.fresh).toEqual({ days: 42, strings: 0 });
  });

  it('of one fault are asked for by it, and of days without strings there is no rate', async () => {
    const buzzing = await register({ from: '2027-01-01', fault: 'buzzes' });
    expect(buzzing.all).toMatchObject({ complaints: 1, strings: 120 });
    const before = await register({ from: '2026-01-01', to: '2026-02-01' });
    expect(before).toMatchObject({ faults: [], tables: [] });
    expect(before).not.toHaveProperty('all');
  });

  it('that were written down before there was a list are read by it, their words beside', async () => {
    const id = newId();
    await shop.store.write((tx) =>
      tx.records.insert('complaint', {
        id,
        state: 'closed',
        body: { player: 'Jormin Marrowcroft', text: 'it came off', faultCode: 'loose-wrap' },
        at: '2027-02-01T08:00:00.000Z',
      }),
    );
    const { complaints } = await register({ from: '2027-01-31', to: '2027-02-02' });
    expect(complaints).toMatchObject([{ id, fault: 'wrap-loose', said: 'loose-wrap', hasTrace: false }]);
  });
});
