import { describe, expect, it } from 'vitest';
import { permissionsOf } from '../../src/contract/index.js';
import type { Transaction } from '../../src/store/index.js';
import {
  countStrings,
  freeSpool,
  moveStrings,
  newId,
  quarantineSpool,
  receiveSpool,
  recordDryRoom,
  scrapStrings,
  weighSpool,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

const KEY = '36 wound phosphor-bronze ball 1000 mm';

describe.each(engines())('stock on $name', (engine) => {
  const open = () => SmallShop.open(engine);

  const mgOf = async (shop: SmallShop, account: string) =>
    (await shop.balances({ account })).find(({ unit }) => unit === 'mg')?.quantity ?? 0;

  /** A released lot of so many strings in the first bin, put there as the ledger would. */
  async function lot(shop: SmallShop, count: number): Promise<string> {
    const id = newId();
    const at = shop.clock.now();
    await shop.store.write(async ({ records, ledger }: Transaction) => {
      const body = { name: `lot ${id}`, spec: W36, stringKey: KEY, made: count, spoolIds: [] };
      await records.insert('string-lot', { id, state: 'released', body, at });
      const entry = { item: `string/${KEY}`, lot: id, unit: 'pieces' } as const;
      await ledger.post({
        id: newId(),
        at,
        by: 'console',
        what: 'make',
        reason: '',
        ofKind: 'string-lot',
        ofId: id,
        entries: [
          { account: 'made', ...entry, quantity: -count },
          { account: `bin/${shop.bins.first}`, ...entry, quantity: count },
        ],
      });
    });
    return id;
  }

  describe('a spool that comes in', () => {
    it('lies on the shelf with its wire from the supplier, by weight and by length', async () => {
      const shop = await open();
      const id = newId();
      const certificate = { number: 'C-7', tensilePa: 2.5e9 };
      const record = await shop.done(receiveSpool, {
        id,
        wireId: shop.wires.plain,
        name: 'P-1',
        lot: 'H2210',
        grossKg: 2.75,
        tareKg: 0.75,
        certificate,
      });
      expect(record).toMatchObject({
        id,
        version: 1,
        state: 'on-shelf',
        body: { lot: 'H2210', certificate },
      });
      const held = await shop.balances({ account: `spool/${id}` });
      // 0.3048 mm of steel at 7.85 g/cm3, by hand: 0.5728 g/m, so 2 kg are 3492 m.
      expect(held).toMatchObject([
        { unit: 'mg', quantity: 2_000_000 },
        { unit: 'mm', quantity: expect.closeTo((2 / ((Math.PI / 4) * 0.3048e-3 ** 2 * 7850)) * 1000, -3) },
      ]);
      expect(await mgOf(shop, 'supplier')).toBe(-2_000_000);
    });

    it('is refused without wire on it, of unknown wire, or by a name that another has', async () => {
      const shop = await open();
      const spool = { id: newId(), wireId: shop.wires.core, name: 'C-1', lot: 'H1', grossKg: 2, tareKg: 0.5 };
      expect((await shop.refused(receiveSpool, { ...spool, tareKg: 2 })).code).toBe('spool.nothing-on-it');
      expect((await shop.refused(receiveSpool, { ...spool, wireId: newId() })).code).toBe('record.missing');
      await shop.done(receiveSpool, spool);
      expect(await shop.refused(receiveSpool, { ...spool, id: newId() })).toMatchObject({
        code: 'taken',
        key: 'name',
        value: 'C-1',
      });
    });
  });

  describe('a spool that is weighed', () => {
    it('holds what the scale says; the difference stands as such, with its reason', async () => {
      const shop = await open();
      const spoolId = await shop.spool(shop.wires.core, 2);
      const weigh = { spoolId, expectedVersion: 1, grossKg: 2.4 };
      const { record, differenceMg } = await shop.done(weighSpool, weigh);
      expect(differenceMg).toBe(-100_000);
      expect(record).toMatchObject({ version: 2, state: 'on-shelf', body: { weighed: { grossKg: 2.4 } } });
      expect(await mgOf(shop, `spool/${spoolId}`)).toBe(1_900_000);
      expect(await mgOf(shop, 'count-difference/weighing')).toBe(100_000);
    });

    it('heavier than before is refused, unless someone says why', async () => {
      const shop = await open();
      const spoolId = await shop.spool(shop.wires.core, 2);
      const weigh = { spoolId, expectedVersion: 1, grossKg: 2.6 };
      expect(await shop.refused(weighSpool, weigh)).toMatchObject({
        code: 'spool.heavier-than-before',
        grossKg: 2.6,
        beforeKg: 2.5,
      });
      const { differenceMg } = await shop.done(weighSpool, { ...weigh, reason: 'scale was off at goods-in' });
      expect(differenceMg).toBe(100_000);
      const { items } = await shop.store.read(({ ledger }) =>
        ledger.movements({ account: `spool/${spoolId}`, limit: 1 }),
      );
      expect(items).toMatchObject([{ what: 'count', reason: 'scale was off at goods-in' }]);
    });

    it('is done with where nothing is left, and is not weighed again', async () => {
      const shop = await open();
      const spoolId = await shop.spool(shop.wires.core, 2);
      const { record } = await shop.done(weighSpool, { spoolId, expectedVersion: 1, grossKg: 0.5 });
      expect(record.state).toBe('empty');
      expect(await shop.balances({ account: `spool/${spoolId}` })).toEqual([]);
      const again = { spoolId, expectedVersion: 2, grossKg: 0.5 };
      expect((await shop.refused(weighSpool, again)).code).toBe('spool.empty');
    });

    it('is refused below its empty weight, and to who saw an older version', async () => {
      const shop = await open();
      const spoolId = await shop.spool(shop.wires.core, 2);
      const weigh = { spoolId, expectedVersion: 1, grossKg: 0.4 };
      expect((await shop.refused(weighSpool, weigh)).code).toBe('spool.lighter-than-empty');
      await shop.done(weighSpool, { ...weigh, grossKg: 2.4 });
      expect(await shop.refused(weighSpool, { ...weigh, grossKg: 2.3 })).toMatchObject({
        code: 'stale-version',
        expectedVersion: 1,
        current: { version: 2 },
      });
    });
  });

  it('a spool goes into quarantine with a reason, and out of it', async () => {
    const shop = await open();
    const spoolId = await shop.spool(shop.wires.core, 2);
    const held = await shop.done(quarantineSpool, { spoolId, expectedVersion: 1, reason: 'rust' });
    expect(held).toMatchObject({ state: 'quarantined', body: { holdReason: 'rust' } });
    const twice = { spoolId, expectedVersion: 2, reason: 'rust' };
    expect(await shop.refused(quarantineSpool, twice)).toMatchObject({
      code: 'lifecycle.step-refused',
      of: 'spool',
      allowed: ['free'],
    });
    const freed = await shop.done(freeSpool, { spoolId, expectedVersion: 2, reason: 'wiped' });
    expect(freed.state).toBe('on-shelf');
    expect(freed.body).not.toHaveProperty('holdReason');
  });

  describe('strings in bins', () => {
    it('are carried from one to another, no more than lie there', async () => {
      const shop = await open();
      const lotId = await lot(shop, 12);
      const move = { lotId, fromBinId: shop.bins.first, toBinId: shop.bins.second, count: 5 };
      expect(await shop.done(moveStrings, move)).toEqual({ fromBin: 7, toBin: 5 });
      expect(await shop.refused(moveStrings, { ...move, count: 8 })).toMatchObject({
        code: 'bin.too-few',
        binName: 'A1',
        there: 7,
        wanted: 8,
      });
      const round = { ...move, toBinId: shop.bins.first };
      expect((await shop.refused(moveStrings, round)).code).toBe('bin.same');
      const wrongBin = { ...move, toBinId: shop.bins.plain12 };
      expect(await shop.refused(moveStrings, wrongBin)).toMatchObject({
        code: 'bin.for-other-strings',
        stringKey: KEY,
      });
    });

    it('are counted: the count stands, and the difference is written', async () => {
      const shop = await open();
      const lotId = await lot(shop, 12);
      const count = { binId: shop.bins.first, lotId, counted: 11, reason: 'yearly' };
      expect(await shop.done(countStrings, count)).toEqual({ counted: 11, difference: -1 });
      expect(await shop.balances({ account: 'count-difference/stock-take' })).toMatchObject([
        { quantity: 1 },
      ]);
      expect(await shop.done(countStrings, count)).toEqual({ counted: 11, difference: 0 });
      expect(await shop.done(countStrings, { ...count, counted: 14 })).toEqual({
        counted: 14,
        difference: 3,
      });
      const elsewhere = { ...count, binId: shop.bins.plain12, counted: 1 };
      expect((await shop.refused(countStrings, elsewhere)).code).toBe('bin.for-other-strings');
    });

    it('are thrown away by reason', async () => {
      const shop = await open();
      const lotId = await lot(shop, 12);
      const scrap = { lotId, binId: shop.bins.first, count: 2, reason: 'kink' };
      expect(await shop.done(scrapStrings, scrap)).toEqual({ left: 10 });
      expect(await shop.balances({ account: 'scrap/kink' })).toMatchObject([{ lot: lotId, quantity: 2 }]);
      expect((await shop.refused(scrapStrings, { ...scrap, count: 11 })).code).toBe('bin.too-few');
    });

    it('cannot be taken twice by two people at once', async () => {
      const shop = await open();
      const lotId = await lot(shop, 5);
      const move = { lotId, fromBinId: shop.bins.first, toBinId: shop.bins.second, count: 4 };
      const both = await Promise.all([shop.ask(moveStrings, move), shop.ask(moveStrings, move)]);
      expect(both.map(({ ok }) => ok).sort()).toEqual([false, true]);
      expect(await shop.balances({ accountPrefix: 'bin/' })).toEqual(
        expect.arrayContaining([
          expect.objectContaining({ account: `bin/${shop.bins.first}`, quantity: 1 }),
          expect.objectContaining({ account: `bin/${shop.bins.second}`, quantity: 4 }),
        ]),
      );
    });
  });

  it('the climate of the dry room is written down as at this moment', async () => {
    const shop = await open();
    const reading = { id: newId(), room: 'drying', temperatureC: 21.5, relativeHumidity: 0.35 };
    const record = await shop.done(recordDryRoom, reading);
    expect(record.body).toEqual({
      at: record.createdAt,
      room: 'drying',
      temperatureC: 21.5,
      relativeHumidity: 0.35,
    });
  });

  it('who may not is told which permission is missing', async () => {
    const shop = await open();
    const spoolId = await shop.spool(shop.wires.core, 2);
    const actor = { by: 'person/x', permissions: permissionsOf(['coiler']) };
    const weigh = { spoolId, expectedVersion: 1, grossKg: 2.4 };
    expect(await shop.refused(weighSpool, weigh, { actor })).toEqual({
      code: 'permission.missing',
      permission: 'wire.weigh',
    });
  });
});
