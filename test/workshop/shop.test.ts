import { beforeAll, describe, expect, it } from 'vitest';
import type { Shop } from '../../src/core/day/index.js';
import { stringKey } from '../../src/core/sets/index.js';
import {
  demoShop,
  enterLot,
  freeSpool,
  newId,
  quarantineSpool,
  saveBin,
  saveInstrument,
  saveMachine,
  saveSet,
  saveSettings,
  saveTuning,
  saveWire,
  shopView,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { cornerShop, type Desk, deskAt, deskOf } from './desk.js';

const ENGINES = engines();

for (const engine of ENGINES) {
  describe(`a shop kept in ${engine.name}`, () => {
    let file: Shop;
    let desk: Desk;
    let seen: Shop;
    beforeAll(async () => {
      file = await cornerShop();
      desk = await deskOf(await engine.open(), file);
      seen = await desk.store.read(shopView);
    });

    it('that was taken in from a file shows the same wires, recipes, sets, instruments, tunings and rules', () => {
      expect(seen.name).toBe(file.name);
      expect(seen.invented).toBe(true);
      expect(seen.rules).toEqual(file.rules);
      expect(seen.rates).toEqual(file.rates);
      expect(seen.wires).toEqual(file.wires);
      expect(seen.recipes).toEqual(file.recipes);
      expect(seen.instruments).toEqual(file.instruments);
      expect(seen.tunings.map(({ name, tuning }) => [name, tuning.pitches])).toEqual(
        file.tunings.map(({ name, tuning }) => [name, tuning.pitches]),
      );
      expect(seen.sets.map(({ name, strings }) => [name, strings])).toEqual(
        file.sets.map(({ name, strings }) => [name, strings]),
      );
      expect(seen.machines.map(({ id: _, ...machine }) => machine)).toEqual(
        file.machines.map(({ id: _, ...machine }) => machine),
      );
      expect(seen.bins).toEqual(file.bins);
    });

    it('shows the wire of every spool to the milligram', () => {
      const sorted = (shop: Shop) => [...shop.spools].sort((a, b) => (a.id < b.id ? -1 : 1));
      const [kept, given] = [
        sorted(seen),
        sorted({ ...file, spools: file.spools.filter((s) => s.netKg > 0) }),
      ];
      expect(kept.map(({ id, wireId, lot }) => [id, wireId, lot])).toEqual(
        given.map(({ id, wireId, lot }) => [id, wireId, lot]),
      );
      kept.forEach(({ netKg }, at) => {
        expect(Math.abs(netKg - given[at]!.netKg)).toBeLessThanOrEqual(0.5e-6);
      });
    });

    it('does not count on a spool in quarantine', async () => {
      const [spool] = await desk.store.read((tx) => tx.records.all('spool'));
      const seenSpool = { spoolId: spool!.id, reason: 'rust' };
      const kept = await desk.must(quarantineSpool, { ...seenSpool, expectedVersion: spool!.version });
      const names = async () => (await desk.store.read(shopView)).spools.map(({ id }) => id);
      expect(await names()).not.toContain(spool!.body.name);
      await desk.must(freeSpool, { ...seenSpool, expectedVersion: kept.version });
      expect(await names()).toContain(spool!.body.name);
    });

    it('shows the strings of every bin and to what level it is kept filled', () => {
      const heap = (shop: Shop) => {
        const bins = new Map<string, { count: number; level: number }>();
        for (const { spec, count, binId, reorderLevel } of shop.strings) {
          const key = `${binId}: ${stringKey(spec)}`;
          const before = bins.get(key) ?? { count: 0, level: 0 };
          bins.set(key, { count: before.count + count, level: Math.max(before.level, reorderLevel) });
        }
        return Object.fromEntries(bins);
      };
      expect(heap(seen)).toEqual(heap(file));
    });

    it('shows what each machine was set up for when the records began', () => {
      const named = file.setUpNow.map(({ machineId, ...rest }) => ({
        machineId: file.machines.find(({ id }) => id === machineId)!.name,
        ...rest,
      }));
      expect(named.length).toBeGreaterThan(0);
      expect([...seen.setUpNow].sort(byMachine)).toEqual(named.sort(byMachine));
    });

    it('leaves no trace of the set-ups in the wire', async () => {
      const scrap = await desk.store.read((tx) => tx.ledger.balances({ accountPrefix: 'scrap/' }));
      expect(scrap).toEqual([]);
    });

    it('asks for strings of a bin’s kind when the last are gone, though no lot of it is there', async () => {
      const spec = {
        gaugeThou: 12,
        kind: 'plain',
        material: 'plain-steel',
        end: 'ball',
        lengthM: 1,
      } as const;
      const body = { name: 'rack 9 bin 1', walkOrder: 900, stringKey: stringKey(spec), reorderLevel: 24 };
      await desk.must(saveBin, { id: newId(), body });
      const { strings } = await desk.store.read(shopView);
      expect(strings.filter(({ binId }) => binId === body.name)).toEqual([
        { spec, count: 0, binId: body.name, lot: '', reorderLevel: 24 },
      ]);
    });

    it('refuses a second set called like one that is there, however it is spelt', async () => {
      const body = { name: '  meadow SIX,  10', strings: [...file.sets[0]!.strings] };
      expect(await desk.refused(saveSet, { id: newId(), body })).toMatchObject({
        code: 'taken',
        kind: 'set',
        value: 'Meadow six, 10',
      });
    });

    it('refuses a set with a string that nobody would make', async () => {
      const [plain, ...rest] = file.sets[0]!.strings;
      const tooThick = { ...plain!, gaugeThou: 26 };
      const wrongMetal = { ...rest.at(-1)!, material: 'plain-steel' } as const;
      const tooThin = { ...rest.at(-1)!, gaugeThou: 12 };
      const refusal = (string: typeof plain) =>
        desk.refused(saveSet, { id: newId(), body: { name: 'odd', strings: [string!] } });
      expect(await refusal(tooThick)).toMatchObject({ because: 'too-thick-plain', position: 1 });
      expect(await refusal(wrongMetal)).toMatchObject({ because: 'material' });
      expect(await refusal(tooThin)).toMatchObject({ because: 'too-thin-wound' });
    });

    it('refuses a change of a wire that would falsify the recipes made of it, and lets its price change', async () => {
      const { wires } = await desk.store.read(async (tx) => ({ wires: await tx.records.all('wire') }));
      const wire = wires.find(({ body }) => body.name === file.recipes[0]!.coreWireId)!;
      const change = (body: Partial<typeof wire.body>) => ({
        id: wire.id,
        expectedVersion: wire.version,
        body: { ...wire.body, ...body },
      });
      expect(await desk.refused(saveWire, change({ sizeM: wire.body.sizeM * 1.1 }))).toMatchObject({
        code: 'wire.recipes-differ',
        name: wire.body.name,
      });
      const dearer = await desk.must(saveWire, change({ priceMinorPerKg: 1600 }));
      expect(dearer).toMatchObject({ version: 2, body: { priceMinorPerKg: 1600 } });
      expect(await desk.refused(saveWire, change({ priceMinorPerKg: 1700 }))).toMatchObject({
        code: 'stale-version',
        expectedVersion: 1,
        current: { version: 2 },
      });
    });

    it('refuses core wire whose strength nothing judges', async () => {
      const { strengthTable: _, id, ...wire } = file.wires.find(({ use }) => use === 'core')!;
      expect(await desk.refused(saveWire, { id: newId(), body: { ...wire, name: `${id} bare` } })).toEqual({
        code: 'wire.without-strength',
        name: `${id} bare`,
      });
    });

    it('refuses a machine whose day ends after midnight or whose limits are crossed', async () => {
      const [machine] = await desk.store.read((tx) => tx.records.all('machine'));
      const body = { ...machine!.body, name: 'night owl', minutesPerDay: 1300 };
      expect(await desk.refused(saveMachine, { id: newId(), body })).toMatchObject({
        code: 'machine.flawed',
        flaws: [{ kind: 'day-past-midnight' }],
      });
      const crossed = { ...machine!.body, name: 'crossed', gaugesThou: { least: 60, most: 20 } };
      expect(await desk.refused(saveMachine, { id: newId(), body: crossed })).toMatchObject({
        flaws: [{ kind: 'limits-crossed', limits: 'gaugesThou' }],
      });
    });

    it('is settled once: a second record is refused, and a day that a machine cannot end is too', async () => {
      const [settled] = await desk.store.read((tx) => tx.records.all('settings'));
      expect(await desk.refused(saveSettings, { id: newId(), body: settled!.body })).toEqual({
        code: 'settings.already',
        id: settled!.id,
      });
      const late = { ...settled!.body, rules: { ...settled!.body.rules, dayStartsAtMinute: 1200 } };
      const change = { id: settled!.id, expectedVersion: 1, body: late };
      expect(await desk.refused(saveSettings, change)).toMatchObject({ code: 'settings.flawed' });
    });

    it('refuses a bin that is kept filled with nothing in particular, or with a kind that cannot be read', async () => {
      const bin = { name: 'rack 9 bin 2', walkOrder: 901 };
      expect(await desk.refused(saveBin, { id: newId(), body: { ...bin, reorderLevel: 12 } })).toMatchObject({
        code: 'bin.level-without-kind',
      });
      const body = { ...bin, reorderLevel: 12, stringKey: 'a thick one' };
      expect(await desk.refused(saveBin, { id: newId(), body })).toMatchObject({
        code: 'bin.kind-unreadable',
      });
    });

    it('refuses an instrument whose strings stretch over less than they sound, or over too few lengths', async () => {
      const body = { name: 'short neck', scaleLengthsM: [0.6, 0.6], stretchingLengthsM: [0.8, 0.5] };
      expect(await desk.refused(saveInstrument, { id: newId(), body })).toMatchObject({
        code: 'instrument.stretching-too-short',
        position: 2,
      });
      const few = { ...body, stretchingLengthsM: [0.8] };
      expect(await desk.refused(saveInstrument, { id: newId(), body: few })).toMatchObject({
        code: 'instrument.lengths-do-not-match',
        scales: 2,
        stretching: 1,
      });
    });

    it('refuses a tuning of a name that is taken', async () => {
      const [tuning] = file.tunings;
      const body = { name: tuning!.name.toUpperCase(), pitches: [{ midi: 64, cents: 0 }], referenceHz: 440 };
      expect(await desk.refused(saveTuning, { id: newId(), body })).toMatchObject({ code: 'taken' });
    });

    it('enters strings found on the shelf as a released lot, with their count in the ledger', async () => {
      const [bin] = await desk.store.read((tx) => tx.records.all('bin', { name: file.bins[0]!.id }));
      const { spec } = file.strings.find(({ binId }) => binId === file.bins[0]!.id)!;
      const id = newId();
      const lot = { id, name: 'found', spec, binId: bin!.id, counted: 7, reason: 'behind the rack' };
      const made = await desk.must(enterLot, lot);
      expect(made).toMatchObject({ state: 'released', body: { made: 7, stringKey: stringKey(spec) } });
      const lies = await desk.store.read((tx) => tx.ledger.balances({ lot: id }));
      expect(lies.map(({ account, quantity }) => [account, quantity])).toEqual([
        [`bin/${bin!.id}`, 7],
        ['count-difference/stock-take', -7],
      ]);
      const other = { ...spec, gaugeThou: 8.5 };
      expect(
        await desk.refused(enterLot, { ...lot, id: newId(), name: 'astray', spec: other }),
      ).toMatchObject({ code: 'bin.for-other-strings' });
    });
  });

  describe(`an empty shop kept in ${engine.name}`, () => {
    it('cannot be looked at before it is settled', async () => {
      const desk = deskAt(await engine.open());
      await expect(desk.store.read(shopView)).rejects.toMatchObject({ fault: { code: 'settings.missing' } });
    });
  });
}

describe('the whole invented workshop', () => {
  it('can be taken in, and shows the same recipes and as many strings', async () => {
    const [engine] = ENGINES;
    const file = await demoShop();
    const desk = await deskOf(await engine!.open(), file);
    const seen = await desk.store.read(shopView);
    expect(seen.recipes).toEqual(file.recipes);
    const count = ({ strings }: Shop) => strings.reduce((sum, row) => sum + row.count, 0);
    expect(count(seen)).toBe(count(file));
    expect(seen.setUpNow).toHaveLength(file.setUpNow.length);
  });
});

const byMachine = (a: { machineId: string }, b: { machineId: string }): number =>
  a.machineId < b.machineId ? -1 : 1;
