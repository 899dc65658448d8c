import assert from 'node:assert/strict';
import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { performance } from 'node:perf_hooks';
import { seededChance } from '../src/core/foundation/index.js';
import { openStore, type ReadTransaction, type Store } from '../src/store/index.js';
import {
  BIN,
  BINS,
  KINDS,
  kindKey,
  LOT,
  LOTS_ON_HAND,
  layDownHistory,
  MOVEMENTS_A_LOT,
  SPOOL,
  SPOOLS_ON_HAND,
  uuid,
} from './ledger-history/lay-down.js';
import { machineDescription, reportSpread, spread } from './measure.js';

/**
 * Times questions to the stock ledger when it is old: 5 million movements on SQLite, or as many as the first
 * argument says; `check` as the second also has the store check every law over all of it.
 * Run: npx tsx bench/ledger.ts [movements] [check]
 */
const movements = Number(process.argv[2] ?? 5_000_000);
const lots = Math.ceil(movements / MOVEMENTS_A_LOT);
const folder = mkdtempSync(join(tmpdir(), 'tautwork-ledger-'));
const file = join(folder, 'shop.db');
const chance = seededChance(7);
/** A page of an old list, 95 times in a hundred. */
const LIMIT_MS = 30;

const seconds = (from: number): string => `${((performance.now() - from) / 1000).toFixed(1)} s`;

console.log(machineDescription());
try {
  await (await openStore({ file })).close();
  const from = performance.now();
  layDownHistory(file, lots);
  const gib = (statSync(file).size / 2 ** 30).toFixed(2);
  console.log(`${lots * MOVEMENTS_A_LOT} movements laid down in ${seconds(from)}, ${gib} GiB`);
  const store = await openStore({ file });
  try {
    await answers(store);
    await questions(store);
    await posts(store);
    if (process.argv[3] === 'check') await check(store);
  } finally {
    await store.close();
  }
} finally {
  rmSync(folder, { recursive: true });
}

/** A quick answer is worth nothing if it is wrong: what must be there by the way the history was laid down. */
async function answers(store: Store): Promise<void> {
  const b = lots - 1;
  await store.read(async ({ ledger }) => {
    const bin = `bin/${uuid(BIN, b % BINS)}`;
    assert.equal(await ledger.balance(bin, `string/${kindKey(b % KINDS)}`, uuid(LOT, b)), 32);
    assert.equal((await ledger.balances({ accountPrefix: 'bin/' })).length, Math.min(lots, LOTS_ON_HAND));
    assert.equal(
      (await ledger.balances({ accountPrefix: 'spool/' })).length,
      2 * Math.min(lots, SPOOLS_ON_HAND),
    );
    const shipped = await ledger.movements({ account: 'customer', lot: uuid(LOT, 0), limit: 50 });
    assert.deepEqual([shipped.items.length, shipped.items[0]?.what], [15, 'ship']);
  });
}

async function questions(store: Store): Promise<void> {
  const bin = () => `bin/${uuid(BIN, chance.whole(0, BINS - 1))}`;
  const item = () => `string/${kindKey(chance.whole(0, KINDS - 1))}` as const;
  const anyLot = () => chance.whole(0, lots - 1);
  const lot = () => uuid(LOT, anyLot());
  const newLot = () => Math.max(0, lots - 1 - chance.whole(0, LOTS_ON_HAND - 1));
  const newSpool = () => uuid(SPOOL, Math.max(0, lots - 1 - chance.whole(0, SPOOLS_ON_HAND - 1)));
  type Ledger = ReadTransaction['ledger'];
  const list: readonly (readonly [string, number, (ledger: Ledger) => Promise<unknown>])[] = [
    [
      'balance of a lot in a bin',
      2000,
      (ledger) => {
        const b = newLot();
        return ledger.balance(`bin/${uuid(BIN, b % BINS)}`, `string/${kindKey(b % KINDS)}`, uuid(LOT, b));
      },
    ],
    ['balance of a kind, ever shipped', 1000, (ledger) => ledger.balance('customer', item())],
    ['balances of a bin', 1000, (ledger) => ledger.balances({ account: bin() })],
    ['balances of a spool', 1000, (ledger) => ledger.balances({ account: `spool/${newSpool()}` })],
    ['balances of a lot, all accounts', 1000, (ledger) => ledger.balances({ lot: lot() })],
    [
      'balances of a kind in all bins',
      1000,
      (ledger) => ledger.balances({ accountPrefix: 'bin/', item: item() }),
    ],
    ['balances of all bins (the shelf)', 200, (ledger) => ledger.balances({ accountPrefix: 'bin/' })],
    ['balances of all spools', 200, (ledger) => ledger.balances({ accountPrefix: 'spool/' })],
    ['newest 50 movements', 500, (ledger) => ledger.movements({ limit: 50 })],
    ['50 movements of a bin', 500, (ledger) => ledger.movements({ account: bin(), limit: 50 })],
    ['50 movements to customers', 500, (ledger) => ledger.movements({ account: 'customer', limit: 50 })],
    ['50 movements of a kind', 500, (ledger) => ledger.movements({ item: item(), limit: 50 })],
    ['50 movements of a lot', 500, (ledger) => ledger.movements({ lot: lot(), limit: 50 })],
    [
      '50 of a lot to customers',
      500,
      (ledger) => ledger.movements({ lot: lot(), account: 'customer', limit: 50 }),
    ],
    [
      '50 of a kind to customers',
      500,
      (ledger) => ledger.movements({ item: item(), account: 'customer', limit: 50 }),
    ],
    ['page after page of 50 of a bin', 1000, nextPageOf(bin())],
  ];
  for (const [what, repeats, ask] of list)
    reportSpread(what, await spread(() => store.read(({ ledger }) => ask(ledger)), repeats), LIMIT_MS);
}

/** Asked again and again, walks ever deeper into an account's list; from the end it begins anew. */
function nextPageOf(account: string): (ledger: ReadTransaction['ledger']) => Promise<void> {
  let after: string | undefined;
  return async (ledger) => {
    const page = await ledger.movements({ account, limit: 50, ...(after !== undefined && { after }) });
    after = page.next;
  };
}

async function posts(store: Store): Promise<void> {
  const b = lots - 1;
  const thing = { item: `string/${kindKey(b % KINDS)}`, lot: uuid(LOT, b), unit: 'pieces' } as const;
  const [here, there] = [`bin/${uuid(BIN, b % BINS)}`, `bin/${uuid(BIN, (b + 1) % BINS)}`] as const;
  const post = (run: number) =>
    store.write(({ ledger }) =>
      ledger.post({
        id: uuid(9, ++posted),
        at: '2026-03-02T08:00:00.000Z',
        by: 'console',
        what: 'move',
        reason: '',
        ofKind: 'string-lot',
        ofId: thing.lot,
        entries: [
          { account: run % 2 ? there : here, ...thing, quantity: -1 },
          { account: run % 2 ? here : there, ...thing, quantity: 1 },
        ],
      }),
    );
  let posted = 0;
  reportSpread('a movement posted, on the disk', await spread(post, 1000));
}

async function check(store: Store): Promise<void> {
  const from = performance.now();
  const breaches = await store.read(({ ledger }) => ledger.breaches());
  console.log(`every law checked in ${seconds(from)}: ${breaches.length} breaches`);
}
