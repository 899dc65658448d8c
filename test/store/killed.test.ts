import { spawn } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { seededChance } from '../../src/core/foundation/index.js';
import { openStore, type Store, type StorePlace } from '../../src/store/index.js';
import { engines } from './harness.js';

const ROUNDS = 6;
const WRITER = fileURLToPath(new URL('../fixtures/writer-to-kill.ts', import.meta.url));

describe.each(engines())('a program that is killed as it writes to $name', (engine) => {
  it(`loses nothing that it was told is kept, and leaves nothing by half (${ROUNDS} kills)`, async () => {
    const place = await engine.place();
    const chance = seededChance(7);
    const acknowledged: string[] = [];
    for (let round = 0; round < ROUNDS; round++) {
      const names = await writeUntilKilled(place, round, chance.whole(5, 125));
      acknowledged.push(...names);
      const store = await openStore(place);
      try {
        const kept = await keptNames(store);
        expect(acknowledged.filter((name) => !kept.bins.has(name))).toEqual([]);
        expect(kept.events).toEqual(kept.bins);
        expect(kept.moved).toEqual(kept.bins);
        expect(await store.read((tx) => tx.ledger.breaches())).toEqual([]);
        expect(await store.integrity()).toEqual([]);
      } finally {
        await store.close();
      }
    }
    expect(acknowledged.length).toBeGreaterThan(ROUNDS * 5);
  });
});

/** What the writer had been told is kept when it was killed, somewhere in the middle of what came next. */
function writeUntilKilled(place: StorePlace, round: number, count: number): Promise<readonly string[]> {
  const words = ['--import', 'tsx', WRITER, JSON.stringify(place), String(round)];
  const writer = spawn(process.execPath, words, { stdio: ['ignore', 'pipe', 'inherit'] });
  let said = '';
  writer.stdout.setEncoding('utf8').on('data', (text: string) => {
    said += text;
    if (said.split('\n').length > count) writer.kill('SIGKILL');
  });
  return new Promise((resolve, reject) => {
    writer.once('error', reject);
    // The last piece may be a line that was cut off.
    writer.once('close', (code, signal) =>
      signal === 'SIGKILL'
        ? resolve(said.split('\n').slice(0, -1))
        : reject(new Error(`the writer ended by itself with ${code ?? signal}`)),
    );
  });
}

async function keptNames(store: Store) {
  return store.read(async (tx) => {
    const bins = await tx.records.all('bin');
    const events: string[] = [];
    for (let number = 0; ; ) {
      const page = await tx.events.since(number, 500);
      if (page.length === 0) break;
      events.push(...page.map(({ recordId }) => recordId));
      number = page.at(-1)!.number;
    }
    const balances = await tx.ledger.balances({ accountPrefix: 'bin/' });
    return {
      bins: new Set(bins.map(({ body }) => body.name)),
      events: new Set(events),
      moved: new Set(balances.map(({ account }) => account.replace('bin/', ''))),
    };
  });
}
