import { beforeAll, beforeEach, describe, expect, it } from 'vitest';
import type { BodyOf, StoredRecord } from '../../src/contract/index.js';
import { stringKey } from '../../src/core/sets/index.js';
import {
  enterLot,
  holdLot,
  newId,
  openPacks,
  pickString,
  saveBin,
  saveOrder,
  sealPack,
  shipOrder,
  unpickString,
  voidPack,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { cornerShop, type Desk, deskOf, expectLedgerTrue } from './desk.js';

type Pack = StoredRecord<BodyOf<'pack'>>;
type Order = StoredRecord<BodyOf<'order'>>;

const SET = 'Meadow six, 10';

for (const engine of engines()) {
  describe(`packing in ${engine.name}`, () => {
    let desk: Desk;
    let order: Order;
    let packs: readonly Pack[];
    let number: string;
    let places: Places;
    let orders = 1;

    beforeAll(async () => {
      desk = await deskOf(await engine.open(), await cornerShop());
    });

    beforeEach(async () => {
      number = `P-${orders++}`;
      places = await fillBins(desk, number);
      order = await orderOf(desk, 2, number);
      const opened = await desk.must(openPacks, { orderId: order.id, expectedVersion: order.version });
      ({ order, packs } = opened);
    });

    it('opens a pack for each set, with a label of its own, and the order is in packing', () => {
      expect(order.state).toBe('packing');
      expect(packs.map(({ state, body }) => [state, body.labelCode, body.copy, body.wanted.length])).toEqual([
        ['open', `TW1:${number}:1:1`, 1, 6],
        ['open', `TW1:${number}:1:2`, 2, 6],
      ]);
    });

    it('opens no second pack for a set, but another for one whose pack was given up', async () => {
      const again = { orderId: order.id, expectedVersion: order.version };
      expect(await desk.refused(openPacks, again)).toMatchObject({ code: 'order.packs-all-open', packs: 2 });
      await desk.must(voidPack, { packId: packs[0]!.id, expectedVersion: 1, reason: 'label torn' });
      const opened = await desk.must(openPacks, again);
      expect(opened.packs.map(({ body }) => body.copy).sort()).toEqual([1, 2]);
      expect(opened.packs.map(({ id }) => id)).not.toContain(packs[0]!.id);
    });

    it('carries a string bin -> order when it is picked, and back when it is laid back', async () => {
      const [pack] = packs;
      const place = placeOf(places, pack!, 1);
      const before = await lying(desk, place);
      const picked = await desk.must(pickString, {
        packId: pack!.id,
        expectedVersion: 1,
        position: 1,
        ...place,
      });
      expect(picked.body.picked).toEqual([
        { position: 1, stringKey: pack!.body.wanted[0]!.stringKey, ...place },
      ]);
      expect(await lying(desk, place)).toBe(before - 1);
      expect(await inAccount(desk, `order/${order.id}`)).toBe(1);
      const laid = await desk.must(unpickString, { packId: pack!.id, expectedVersion: 2, position: 1 });
      expect(laid.body.picked).toEqual([]);
      expect(await lying(desk, place)).toBe(before);
      expect(await inAccount(desk, `order/${order.id}`)).toBe(0);
      expect(
        await desk.refused(unpickString, { packId: pack!.id, expectedVersion: 3, position: 1 }),
      ).toMatchObject({ code: 'pack.nothing-picked', position: 1 });
    });

    it('refuses the wrong string, and says what differs', async () => {
      const [pack] = packs;
      const place = placeOf(places, pack!, 2);
      expect(
        await desk.refused(pickString, { packId: pack!.id, expectedVersion: 1, position: 1, ...place }),
      ).toMatchObject({
        code: 'pack.wrong-string',
        position: 1,
        wanted: '10 plain plain-steel ball 1000 mm',
        given: '13 plain plain-steel ball 1000 mm',
        differs: ['gaugeThou'],
      });
    });

    it('refuses a string of the right gauge that is cut to another length or wound in another metal', async () => {
      const [pack] = packs;
      const { spec } = pack!.body.wanted[3]!;
      const binId = await freeBin(desk);
      for (const [change, differs] of [
        [{ lengthM: 1.25 }, ['lengthM']],
        [{ material: 'pure-nickel', end: 'loop' }, ['material', 'end']],
      ] as const) {
        const lotId = newId();
        const odd = { id: lotId, name: `odd ${lotId}`, spec: { ...spec, ...change }, binId, counted: 3 };
        await desk.must(enterLot, { ...odd, reason: 'found' });
        const pick = { packId: pack!.id, expectedVersion: 1, position: 4, lotId, binId };
        expect(await desk.refused(pickString, pick)).toMatchObject({ code: 'pack.wrong-string', differs });
      }
    });

    it('refuses a position that the set does not have, and one that is filled', async () => {
      const [pack] = packs;
      const place = placeOf(places, pack!, 1);
      const pick = { packId: pack!.id, expectedVersion: 1, ...place };
      expect(await desk.refused(pickString, { ...pick, position: 7 })).toMatchObject({
        code: 'pack.no-such-position',
        strings: 6,
      });
      await desk.must(pickString, { ...pick, position: 1 });
      expect(await desk.refused(pickString, { ...pick, expectedVersion: 2, position: 1 })).toMatchObject({
        code: 'pack.position-filled',
        lotId: place.lotId,
      });
    });

    it('refuses a lot on hold, with the reason, also when it was picked before it was held', async () => {
      const [pack, other] = packs;
      const place = placeOf(places, pack!, 6);
      await pickAll(desk, places, pack!);
      const lot = await desk.store.read((tx) => tx.records.get('string-lot', place.lotId));
      await desk.must(holdLot, { lotId: lot!.id, expectedVersion: lot!.version, reason: 'reads flat' });
      const held = { state: 'on-hold', holdReason: 'reads flat', lotId: lot!.id };
      expect(
        await desk.refused(pickString, { packId: other!.id, expectedVersion: 1, position: 6, ...place }),
      ).toMatchObject({ code: 'pack.lots-not-released', lots: [held] });
      expect(await desk.refused(sealPack, { packId: pack!.id, expectedVersion: 7 })).toMatchObject({
        code: 'pack.lots-not-released',
        lots: [held],
      });
    });

    it('refuses an empty bin, and says where else the string lies', async () => {
      const [pack] = packs;
      const place = placeOf(places, pack!, 1);
      const binId = await freeBin(desk);
      const pick = { packId: pack!.id, expectedVersion: 1, position: 1, lotId: place.lotId, binId };
      const fault = await desk.refused(pickString, pick);
      expect(fault).toMatchObject({ code: 'pack.bin-empty', binId });
      expect(fault.elsewhere).toContainEqual(
        expect.objectContaining({ ...place, count: await lying(desk, place) }),
      );
    });

    it('gives the last string to one of two packers who reach for it, and refuses the other', async () => {
      const { spec } = packs[0]!.body.wanted[0]!;
      const binId = await freeBin(desk);
      const lotId = newId();
      await desk.must(enterLot, { id: lotId, name: 'the last', spec, binId, counted: 1, reason: 'found' });
      const answers = await Promise.all(
        packs.map(({ id }) =>
          desk.ask(pickString, { packId: id, expectedVersion: 1, position: 1, lotId, binId }),
        ),
      );
      expect(answers.filter(({ ok }) => ok)).toHaveLength(1);
      expect(answers.flatMap((answer) => (answer.ok ? [] : [answer.fault.code]))).toEqual(['pack.bin-empty']);
      expect(await lying(desk, { lotId, binId })).toBe(0);
      expect(await inAccount(desk, `order/${order.id}`)).toBe(1);
    });

    it('seals a whole pack: six strings and a set are its own', async () => {
      const [pack] = packs;
      expect(await desk.refused(sealPack, { packId: pack!.id, expectedVersion: 1 })).toMatchObject({
        code: 'pack.positions-missing',
        missing: pack!.body.wanted.map(({ position, stringKey: key }) => ({ position, stringKey: key })),
      });
      const sealed = await pickAndSeal(desk, places, pack!);
      expect(sealed.state).toBe('sealed');
      const holds = await desk.store.read((tx) => tx.ledger.balances({ account: `pack/${pack!.id}` }));
      expect(holds.filter(({ item }) => item.startsWith('string/')).length).toBe(6);
      expect(holds.filter(({ item }) => item === `set/${SET}`)).toMatchObject([{ quantity: 1 }]);
      expect(await inAccount(desk, `order/${order.id}`)).toBe(0);
    });

    it('neither fills nor empties nor seals a sealed pack', async () => {
      const [pack] = packs;
      const { version } = await pickAndSeal(desk, places, pack!);
      const seen = { packId: pack!.id, expectedVersion: version };
      const place = placeOf(places, pack!, 1);
      for (const fault of [
        await desk.refused(pickString, { ...seen, position: 1, ...place }),
        await desk.refused(unpickString, { ...seen, position: 1 }),
      ])
        expect(fault).toMatchObject({ code: 'pack.not-open', state: 'sealed', allowed: ['ship', 'void'] });
      expect(await desk.refused(sealPack, seen)).toMatchObject({
        code: 'lifecycle.step-refused',
        step: 'seal',
        state: 'sealed',
      });
    });

    it('lays every string of a pack that is given up back where it came from, open or sealed', async () => {
      const [one, other] = packs;
      const start = await bins(desk);
      const before = await setsMade(desk);
      const open = await pickAll(desk, places, one!);
      const sealed = await pickAndSeal(desk, places, other!);
      expect(await bins(desk)).not.toEqual(start);
      await desk.must(voidPack, { packId: open.id, expectedVersion: open.version, reason: 'order changed' });
      await desk.must(voidPack, { packId: sealed.id, expectedVersion: sealed.version, reason: 'wrong bag' });
      expect(await bins(desk)).toEqual(start);
      for (const { id } of packs) expect(await inAccount(desk, `pack/${id}`)).toBe(0);
      expect(await setsMade(desk)).toBe(before);
    });

    it('ships a whole order: it is the customer’s, and its life and that of its packs end', async () => {
      const before = await customers(desk);
      for (const pack of packs) await pickAndSeal(desk, places, pack);
      const sent = await desk.must(shipOrder, {
        orderId: order.id,
        expectedVersion: order.version,
        partial: false,
      });
      expect(sent.order.state).toBe('shipped');
      expect(sent.shipped.map(({ state }) => state)).toEqual(['shipped', 'shipped']);
      expect(await customers(desk)).toEqual({ strings: before.strings + 12, sets: before.sets + 2 });
      await expectLedgerTrue(desk);
      expect(
        await desk.refused(voidPack, { packId: packs[0]!.id, expectedVersion: 9, reason: 'too late' }),
      ).toMatchObject({ code: 'lifecycle.step-refused', state: 'shipped', allowed: [] });
    });

    it('ships part of an order only when told to, and the rest after it', async () => {
      const ship = (version: number, partial: boolean) => ({
        orderId: order.id,
        expectedVersion: version,
        partial,
      });
      expect(await desk.refused(shipOrder, ship(order.version, true))).toMatchObject({
        code: 'order.nothing-to-ship',
      });
      await pickAndSeal(desk, places, packs[0]!);
      expect(await desk.refused(shipOrder, ship(order.version, false))).toMatchObject({
        code: 'order.not-all-sealed',
        unready: [{ lineNumber: 1, copy: 2, setName: SET }],
      });
      const part = await desk.must(shipOrder, ship(order.version, true));
      expect(part.order.state).toBe('packing');
      expect(part.shipped).toHaveLength(1);
      expect(await desk.refused(shipOrder, ship(order.version, true))).toMatchObject({
        code: 'stale-version',
      });
      await pickAndSeal(desk, places, packs[1]!);
      const rest = await desk.must(shipOrder, ship(part.order.version, false));
      expect(rest.order.state).toBe('shipped');
      expect(rest.shipped.map(({ id }) => id)).toEqual([packs[1]!.id]);
    });

    it('keeps a parcel back whose strings were put on hold after it was sealed', async () => {
      for (const pack of packs) await pickAndSeal(desk, places, pack);
      const { lotId } = placeOf(places, packs[0]!, 4);
      const lot = await desk.store.read((tx) => tx.records.get('string-lot', lotId));
      await desk.must(holdLot, { lotId, expectedVersion: lot!.version, reason: 'wrap slips' });
      expect(
        await desk.refused(shipOrder, { orderId: order.id, expectedVersion: order.version, partial: false }),
      ).toMatchObject({ code: 'order.lots-not-released', lots: [{ lotId, holdReason: 'wrap slips' }] });
    });

    it('does not ship an order that nobody began to pack', async () => {
      const fresh = await orderOf(desk, 1, `${number} b`);
      expect(
        await desk.refused(shipOrder, { orderId: fresh.id, expectedVersion: 1, partial: true }),
      ).toMatchObject({ code: 'lifecycle.step-refused', of: 'order', state: 'received' });
    });

    it('tells the second of two packers who pick into one pack that it has changed', async () => {
      const [pack] = packs;
      const one = placeOf(places, pack!, 1);
      const two = placeOf(places, pack!, 2);
      await desk.must(pickString, { packId: pack!.id, expectedVersion: 1, position: 1, ...one });
      expect(
        await desk.refused(pickString, { packId: pack!.id, expectedVersion: 1, position: 2, ...two }),
      ).toMatchObject({ code: 'stale-version', current: { version: 2 } });
    });
  });
}

type Places = ReadonlyMap<string, Place>;

/** A lot of every string of the set in its bin, and where it lies. */
async function fillBins(desk: Desk, name: string): Promise<Places> {
  const { all, set } = await desk.store.read(async (tx) => ({
    all: await tx.records.all('bin'),
    set: await tx.records.find('set', { name: SET }),
  }));
  const places = new Map<string, Place>();
  for (const spec of set!.body.strings) {
    const key = stringKey(spec);
    const place = { lotId: newId(), binId: all.find(({ body }) => body.stringKey === key)!.id };
    const lot = { id: place.lotId, name: `${name} ${key}`, spec, binId: place.binId, counted: 20 };
    await desk.must(enterLot, { ...lot, reason: 'for the test' });
    places.set(key, place);
  }
  return places;
}

const orderOf = (desk: Desk, quantity: number, number: string): Promise<Order> =>
  desk.must(saveOrder, {
    id: newId(),
    number,
    player: 'Perrin Oddlestone',
    due: '2027-03-05',
    note: '',
    lines: [{ quantity, wanted: { kind: 'stock', setName: SET } }],
  });

interface Place {
  readonly lotId: string;
  readonly binId: string;
}

/** Where a string of a pack lies, as a person would look for it. */
const placeOf = (places: Places, { body }: Pack, position: number): Place =>
  places.get(body.wanted.find((string) => string.position === position)!.stringKey)!;

async function pickAll(desk: Desk, places: Places, pack: Pack): Promise<Pack> {
  let picked = pack;
  for (const { position } of pack.body.wanted)
    picked = await desk.must(pickString, {
      packId: pack.id,
      expectedVersion: picked.version,
      position,
      ...placeOf(places, pack, position),
    });
  return picked;
}

async function pickAndSeal(desk: Desk, places: Places, pack: Pack): Promise<Pack> {
  const { id, version } = await pickAll(desk, places, pack);
  return desk.must(sealPack, { packId: id, expectedVersion: version });
}

async function freeBin(desk: Desk): Promise<string> {
  const id = newId();
  await desk.must(saveBin, { id, body: { name: `free ${id}`, walkOrder: 999, reorderLevel: 0 } });
  return id;
}

const lying = (desk: Desk, { lotId, binId }: Place): Promise<number> =>
  desk.store.read(async (tx) => sum(await tx.ledger.balances({ account: `bin/${binId}`, lot: lotId })));

const inAccount = (desk: Desk, account: string): Promise<number> =>
  desk.store.read(async (tx) => sum(await tx.ledger.balances({ account })));

const setsMade = (desk: Desk): Promise<number> =>
  desk.store.read((tx) => tx.ledger.balance('made', `set/${SET}`));

async function customers(desk: Desk) {
  const rows = await desk.store.read((tx) => tx.ledger.balances({ account: 'customer' }));
  return {
    strings: sum(rows.filter(({ item }) => item.startsWith('string/'))),
    sets: sum(rows.filter(({ item }) => item === `set/${SET}`)),
  };
}

const bins = (desk: Desk) => desk.store.read((tx) => tx.ledger.balances({ accountPrefix: 'bin/' }));

const sum = (rows: readonly { readonly quantity: number }[]): number =>
  rows.reduce((total, { quantity }) => total + quantity, 0);
