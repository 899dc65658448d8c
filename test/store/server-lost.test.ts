import { describe, expect, it } from 'vitest';
import { startPostgres } from '../../scripts/machinery/postgres.mjs';
import { openStore, type StoredEvent, StoreUnavailable } from '../../src/store/index.js';
import { ask, engines } from './harness.js';
import { event } from './samples.js';

describe.each(engines().filter(({ name }) => name === 'postgresql'))(
  'the line on which $name tells of events',
  (engine) => {
    it('is made anew where it broke, and what was said meanwhile is read', async () => {
      const place = await engine.place();
      const [writer, watcher] = [await openStore(place), await openStore(place)];
      try {
        const told: string[] = [];
        const heard = (name: string) =>
          new Promise<void>((resolve) => {
            watcher.onEvents(() => told.includes(name) && resolve());
          });
        watcher.onEvents((events) => told.push(...events.map(({ recordId }) => recordId)));
        const before = heard('before');
        await writer.write((tx) => tx.events.append([event('before')]));
        await before;
        const schema = await ask(place, 'select current_schema() as name');
        const broken = await ask(
          place,
          `select pg_terminate_backend(pid) from pg_stat_activity
         where query = 'listen "tautwork_events_${(schema[0] as { name: string }).name}"'`,
        );
        expect(broken).toHaveLength(2);
        const meanwhile = heard('meanwhile');
        await writer.write((tx) => tx.events.append([event('meanwhile')]));
        await meanwhile;
        expect(told).toEqual(['before', 'meanwhile']);
      } finally {
        await writer.close();
        await watcher.close();
      }
    });
  },
);

describe('a PostgreSQL server', () => {
  it('that is not there is said to be lost', async () => {
    const opened = openStore({ url: 'postgres://nobody@127.0.0.1:1/shop' }, { lockWaitMs: 50 });
    await expect(opened).rejects.toMatchObject({ name: 'StoreUnavailable', code: 'store.lost' });
  });

  it.runIf(process.env.TAUTWORK_TEST_POSTGRES)(
    'that is restarted under load loses nothing it acknowledged, and is used again without a restart of ours',
    async () => {
      const server = (await startPostgres())!;
      const store = await openStore({ url: server.url });
      try {
        const told: StoredEvent[] = [];
        store.onEvents((events) => told.push(...events));
        const acknowledged = new Set<string>();
        const faults: unknown[] = [];
        let isBusy = true;
        const write = async (name: string) => {
          await store.write((tx) => tx.events.append([event(name)]));
          acknowledged.add(name);
        };
        const writers = Array.from({ length: 4 }, async (_, writer) => {
          for (let index = 0; isBusy; index++)
            await write(`${writer}/${index}`).catch((thrown: unknown) => faults.push(thrown));
        });
        await acknowledgedMoreThan(acknowledged, 50);
        await server.restart();
        await acknowledgedMoreThan(acknowledged, acknowledged.size + 50);
        isBusy = false;
        await Promise.all(writers);
        for (const fault of faults) {
          expect(fault).toBeInstanceOf(StoreUnavailable);
          expect(fault).toMatchObject({ code: 'store.lost' });
        }
        await write('the last');
        const kept = await store.read(async (tx) => {
          const events: StoredEvent[] = [];
          for (let page = await tx.events.since(0, 500); page.length > 0; ) {
            events.push(...page);
            page = await tx.events.since(page.at(-1)!.number, 500);
          }
          return events;
        });
        const keptNames = new Set(kept.map(({ recordId }) => recordId));
        expect([...acknowledged].filter((name) => !keptNames.has(name))).toEqual([]);
        await new Promise<void>((resolve) => {
          if (told.length >= kept.length) resolve();
          else store.onEvents(() => told.length >= kept.length && resolve());
        });
        expect(told).toEqual(kept);
      } finally {
        await store.close();
        server.stop();
      }
    },
  );
});

async function acknowledgedMoreThan(names: ReadonlySet<string>, count: number): Promise<void> {
  while (names.size <= count) await new Promise((resolve) => setTimeout(resolve, 5));
}
