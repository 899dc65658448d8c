import { beforeAll, describe, expect, it } from 'vitest';
import { permissionsOf } from '../../src/contract/index.js';
import {
  dryRoomAir,
  importDryRoom,
  lotsLyingDuring,
  moveStrings,
  newId,
  recordDryRoom,
  reportDryRoom,
} from '../../src/workshop/index.js';
import { engines } from '../store/harness.js';
import { SmallShop, W36 } from './small-shop.js';

const ROOM = 'dry room';
const HOUR = 3_600_000;
const instant = (ms: number) => new Date(ms).toISOString();

/** What a logger writes in so many steps of ten minutes, from a moment on: its clock is UTC. */
function logOf(from: string, steps: number, humidityAt: (step: number) => number): string {
  const rows = Array.from({ length: steps }, (_, step) => {
    const at = instant(Date.parse(from) + step * 600_000);
    return `${at.slice(0, 10)};${at.slice(11, 16)};21,5;${(humidityAt(step) * 100).toFixed(1).replace('.', ',')}`;
  });
  return ['Climate log no. 4711', 'made by nobody', '', 'Date;Time;Temp (°C);RH (%)', ...rows].join('\n');
}

describe.each(engines())('the dry room on $name', (engine) => {
  let shop: SmallShop;
  beforeAll(async () => {
    shop = await SmallShop.open(engine);
  });
  const count = async () => (await shop.store.read(({ records }) => records.all('dry-room-reading'))).length;

  describe('a sensor', () => {
    const readings = [
      { at: '2026-03-01T10:00:00Z', temperatureC: 21, relativeHumidity: 0.42 },
      { at: '2026-03-01T11:10:00+01:00', temperatureC: 21.2, relativeHumidity: 0.43 },
    ];

    it('sends what it read as often as it likes, and nothing is doubled', async () => {
      const before = await count();
      expect(await shop.done(reportDryRoom, { room: ROOM, readings })).toEqual({ taken: 2, known: 0 });
      expect(await shop.done(reportDryRoom, { room: ROOM, readings })).toEqual({ taken: 0, known: 2 });
      const more = { at: '2026-03-01T10:20:00.5Z', temperatureC: 21.3, relativeHumidity: 0.44 };
      const sent = { room: ROOM, readings: [...readings, more] };
      expect(await shop.done(reportDryRoom, sent)).toEqual({ taken: 1, known: 2 });
      expect(await count()).toBe(before + 3);
    });

    it('needs one permission alone, and with it may do nothing else', async () => {
      const actor = { by: 'token/1', permissions: new Set(['dryroom.enter'] as const) };
      const sent = { room: ROOM, readings };
      expect(await shop.ask(reportDryRoom, sent, { actor })).toMatchObject({ ok: true });
      const move = { lotId: newId(), fromBinId: newId(), toBinId: newId(), count: 1 };
      expect(await shop.ask(moveStrings, move, { actor })).toMatchObject({
        fault: { code: 'permission.missing' },
      });
      const without = { by: 'token/2', permissions: new Set(['stock.read'] as const) };
      expect(await shop.ask(reportDryRoom, sent, { actor: without })).toMatchObject({
        fault: { code: 'permission.missing' },
      });
      expect(permissionsOf(['packer']).has('dryroom.enter')).toBe(true);
    });

    it('is refused a reading that contradicts another, or that is still to come', async () => {
      const other = { ...readings[0]!, relativeHumidity: 0.6 };
      expect(await shop.refused(reportDryRoom, { room: ROOM, readings: [other] })).toMatchObject({
        code: 'dry-room.other-reading',
        kept: { relativeHumidity: 0.42 },
      });
      const ahead = { ...readings[0]!, at: '2099-01-01T00:00:00Z' };
      expect(await shop.refused(reportDryRoom, { room: ROOM, readings: [ahead] })).toMatchObject({
        code: 'dry-room.ahead-of-time',
      });
      const never = { ...readings[0]!, at: '2026-02-31T99:00:00Z' };
      expect(await shop.refused(reportDryRoom, { room: ROOM, readings: [never] })).toMatchObject({
        code: 'dry-room.moment-impossible',
      });
    });
  });

  describe("a logger's file", () => {
    const asked = { source: 'logger by the door', room: 'wire room', clock: 'utc' as const };
    const csv = logOf('2026-01-10T00:00:00Z', 4000, (step) => (step >= 600 && step < 660 ? 0.58 : 0.43));

    it('of thousands of rows is shown first, then taken whole, and taken again changes nothing', async () => {
      const before = await count();
      const shown = await shop.done(importDryRoom, { ...asked, csv, commit: false });
      expect(shown).toMatchObject({
        committed: false,
        preview: {
          fresh: 4000,
          known: 0,
          faultCount: 0,
          rooms: ['wire room'],
          columns: { date: 'Date', time: 'Time', temperature: 'Temp (°C)', humidity: 'RH (%)' },
          first: '2026-01-10T00:00:00.000Z',
        },
      });
      expect(shown.preview.samples[0]).toEqual({
        line: 5,
        at: '2026-01-10T00:00:00.000Z',
        room: 'wire room',
        temperatureC: 21.5,
        relativeHumidity: 0.43,
      });
      expect(await count()).toBe(before);
      expect((await shop.done(importDryRoom, { ...asked, csv, commit: true })).committed).toBe(true);
      expect(await count()).toBe(before + 4000);
      const again = await shop.done(importDryRoom, { ...asked, csv, commit: true });
      expect(again.preview).toMatchObject({ fresh: 0, known: 4000 });
      expect(await count()).toBe(before + 4000);
    });

    it('that begins before the last one ended adds only what is new', async () => {
      const next = logOf('2026-02-06T00:00:00Z', 300, (step) => (step < 112 ? 0.43 : 0.44));
      const { preview } = await shop.done(importDryRoom, { ...asked, csv: next, commit: true });
      expect(preview).toMatchObject({ fresh: 188, known: 112 });
    });

    it('with one bad line is not taken at all, and the line is named', async () => {
      const bad = ['at,temperature,humidity', '2026-02-20 10:00,21,40', '2026-02-20 10:10,,41'].join('\n');
      const fault = await shop.refused(importDryRoom, { ...asked, csv: bad, commit: true });
      expect(fault).toMatchObject({
        code: 'dry-room.log-has-faults',
        preview: {
          fresh: 1,
          faults: [{ line: 3, column: 'temperature', code: 'dry-room.figure-unreadable', read: '' }],
        },
      });
    });

    it('that contradicts what is kept is not taken', async () => {
      const other = logOf('2026-01-10T00:00:00Z', 2, () => 0.9);
      const { preview } = await shop.done(importDryRoom, { ...asked, csv: other, commit: false });
      expect(preview.faults.map(({ line, code }) => [line, code])).toEqual([
        [5, 'dry-room.other-reading'],
        [6, 'dry-room.other-reading'],
      ]);
    });

    it('does not guess whether day or month stands first, unless one of its lines tells', async () => {
      const file = (...days: readonly string[]) =>
        ['when,temp,rh', ...days.map((day) => `${day} 08:00,20,40`)].join('\n');
      const look = (csvText: string, dayFirst?: boolean) =>
        shop.done(importDryRoom, {
          ...asked,
          csv: csvText,
          commit: false,
          ...(dayFirst === undefined ? {} : { dayFirst }),
        });
      const unsure = await look(file('03/02/2026', '04/02/2026'));
      expect(unsure.preview.faults.map(({ code }) => code)).toEqual([
        'dry-room.moment-ambiguous',
        'dry-room.moment-ambiguous',
      ]);
      expect((await look(file('03/02/2026', '04/02/2026'), true)).preview.first).toBe(
        '2026-02-03T08:00:00.000Z',
      );
      expect((await look(file('03/02/2026', '14/02/2026'))).preview.first).toBe('2026-02-03T08:00:00.000Z');
    });

    it('in °F and by a person’s mapping is read as it is meant, and the mapping is remembered', async () => {
      const csvText = [
        'Zeit,A (°F),B,Ort',
        '2026-02-21T09:00:00-05:00,68,45%,cellar',
        '2026-02-21T09:10:00-05:00,69.8,46%,cellar',
      ].join('\n');
      const mapping = { at: 'Zeit', temperature: 'A (°F)', humidity: 'B', room: 'Ort' };
      const own = { source: 'cellar logger', csv: csvText };
      expect(await shop.refused(importDryRoom, { ...own, room: 'x', commit: false })).toMatchObject({
        code: 'dry-room.columns-missing',
        missing: ['at', 'temperature', 'humidity'],
      });
      await shop.done(importDryRoom, { ...own, mapping, commit: true });
      const again = await shop.done(importDryRoom, { ...own, commit: false });
      expect(again.preview).toMatchObject({ fresh: 0, known: 2, rooms: ['cellar'] });
      expect(again.preview.samples).toMatchObject([
        { at: '2026-02-21T14:00:00.000Z', temperatureC: 20, relativeHumidity: 0.45 },
        { temperatureC: 21 },
      ]);
    });

    it('of no known room is refused', async () => {
      const { room: _, ...nowhere } = asked;
      expect(await shop.refused(importDryRoom, { ...nowhere, csv, commit: false })).toMatchObject({
        code: 'dry-room.room-missing',
      });
    });
  });

  describe('the air of a room', () => {
    it('is told with its excursion, its gap and its days, whoever wrote the readings down', async () => {
      const now = '2026-02-09T00:00:00.000Z';
      const air = await shop.store.read((tx) =>
        dryRoomAir(tx, { room: 'wire room', from: '2026-01-09', to: '2026-02-09' }, now),
      );
      expect(air.rooms).toContain('wire room');
      expect(air).toMatchObject({
        usualStepMinutes: 10,
        limits: { mostHumidity: 0.5, basis: 'common-practice' },
      });
      expect(air.excursions).toHaveLength(1);
      const [damp] = air.excursions;
      expect(damp).toMatchObject({
        readings: 60,
        mostHumidity: 0.58,
        beginsUnseen: false,
        endsUnseen: false,
      });
      expect((Date.parse(damp!.to) - Date.parse(damp!.from)) / HOUR).toBeCloseTo(10, 6);
      const known = air.days.reduce((sum, { knownHours }) => sum + knownHours, 0);
      expect(known).toBeCloseTo(air.risk.knownHours, 6);
      expect(air.gaps.length).toBeGreaterThanOrEqual(1);
      expect(air.risk).toMatchObject({ verdict: 'dry', criticalHours: 0 });
      expect(air.readings.length).toBeLessThanOrEqual(1200);
    });

    it('of a shop that never read is empty, and not good', async () => {
      const empty = await SmallShop.open(engine);
      const air = await empty.store.read((tx) => dryRoomAir(tx, {}, '2026-03-02T12:00:00.000Z'));
      expect(air).toMatchObject({ room: '', rooms: [], excursions: [], risk: { verdict: 'unknown' } });
      expect(air.gaps).toHaveLength(1);
      await empty.done(recordDryRoom, { id: newId(), room: ROOM, temperatureC: 20, relativeHumidity: 0.4 });
      const read = await empty.store.read((tx) => dryRoomAir(tx, {}, '2026-03-02T12:00:00.000Z'));
      expect(read.room).toBe(ROOM);
    });
  });

  it('tells which lots lay in bins during a time, from movements alone', async () => {
    const key = '36 wound phosphor-bronze ball 1000 mm';
    const lots = { before: newId(), during: newId(), gone: newId(), after: newId() };
    await shop.store.write(async ({ records, ledger }) => {
      const post = async (lot: string, at: string, quantity: number) =>
        ledger.post({
          id: newId(),
          at,
          by: 'console',
          what: 'make',
          reason: '',
          ofKind: 'string-lot',
          ofId: lot,
          entries: [
            { account: 'made', item: `string/${key}`, lot, unit: 'pieces', quantity: -quantity },
            {
              account: `bin/${shop.bins.first}`,
              item: `string/${key}`,
              lot,
              unit: 'pieces',
              quantity,
            },
          ],
        });
      for (const [name, id] of Object.entries(lots)) {
        const body = { name, spec: W36, stringKey: key, made: 30, spoolIds: [] };
        await records.insert('string-lot', { id, state: 'released', body, at: '2099-01-01T00:00:00.000Z' });
      }
      await post(lots.gone, '2099-01-01T08:00:00.000Z', 10);
      await post(lots.before, '2099-01-01T09:00:00.000Z', 30);
      await post(lots.gone, '2099-01-01T10:00:00.000Z', -10);
      await post(lots.during, '2099-01-02T09:00:00.000Z', 20);
      await post(lots.before, '2099-01-02T10:00:00.000Z', -5);
      await post(lots.after, '2099-01-03T09:00:00.000Z', 15);
    });
    const span = { from: '2099-01-02T00:00:00.000Z', to: '2099-01-02T23:00:00.000Z' };
    const { items } = await shop.store.read((tx) => lotsLyingDuring(tx, span));
    expect(items.map(({ lot, atFirst, cameIn, bins }) => [lot, atFirst, cameIn, bins])).toEqual([
      ['before', 30, 0, ['A1']],
      ['during', 0, 20, ['A1']],
    ]);
  });
});
