import assert from 'node:assert/strict';
import { performance } from 'node:perf_hooks';
import { type Chance, seededChance } from '../src/core/foundation/index.js';
import { openStore, perform, type Store, type StorePlace } from '../src/workshop/index.js';
import { type FreshPlace, freshFile, freshSchema, furnish } from './kills/fresh-shop.js';
import { type Acknowledged, type Moment, writersAtTheReady } from './kills/killed-writers.js';
import { type Ground, idsOfRequest, type Request, requestOf, TABLETS } from './kills/requests.js';
import { requestsKept } from './kills/requests-kept.js';
import { machineDescription } from './measure.js';
import { CONSOLE } from './tablets/console.js';

/**
 * Kills a program (signal 9) that does four tablets' requests at a shop, again and again and at any moment, and looks
 * each time whether every acknowledged request is kept, none by half, and whether those in hand can be repeated without
 * harm. On SQLite, and a fifth as often on PostgreSQL where `TAUTWORK_BENCH_POSTGRES` names a server; on the server
 * of the third argument alone where there is one. It takes no power away: what a disk forgets, this does not show.
 * Run: npx tsx bench/kills.ts [rounds] [seed] [postgres://…]
 */
const rounds = Number(process.argv[2] ?? 2000);
const seed = Number(process.argv[3] ?? 7);
const url = process.argv[4];
/** Each look reads the shop from end to end, so a shop must not grow old. */
const ROUNDS_A_SHOP = 25;
const WORKING_MS = 80;
const OPENING_MS = 60;
/** Where the numbers of what a repeat writes begin. */
const REPEATED_FROM = 0x200;

console.log(machineDescription());
const writers = await writersAtTheReady();
try {
  if (url === undefined) await killings('SQLite', freshFile, rounds);
  const server = url ?? process.env.TAUTWORK_BENCH_POSTGRES;
  if (server) {
    await killings('PostgreSQL', () => freshSchema(server), url ? rounds : Math.ceil(rounds / 5));
  } else console.log('PostgreSQL: LEFT OUT, since TAUTWORK_BENCH_POSTGRES names none');
} finally {
  writers.close();
}

/** A shop whose programs are killed. */
interface Shop {
  readonly place: StorePlace;
  readonly ground: Ground;
  /** Ids of the requests that have been done and told so. */
  readonly told: Set<string>;
}

interface Figures {
  acknowledged: number;
  /** Rounds that ended before anything was acknowledged. */
  early: number;
  /** Requests in hand at a kill that were kept whole, and those that were not kept at all. */
  whole: number;
  notAtAll: number;
}

async function killings(engine: string, fresh: () => Promise<FreshPlace>, rounds: number): Promise<void> {
  const chance = seededChance(seed);
  const from = performance.now();
  const sum: Figures = { acknowledged: 0, early: 0, whole: 0, notAtAll: 0 };
  for (let first = 0; first < rounds; first += ROUNDS_A_SHOP) {
    const { place, remove } = await fresh();
    const shop = { place, ground: await furnish(place), told: new Set<string>() };
    for (let round = first; round < Math.min(rounds, first + ROUNDS_A_SHOP); round++) {
      await killing(shop, { round, moment: momentOf(chance), chance }, sum).catch((thrown) => {
        throw new Error(`round ${round} of seed ${seed} at ${JSON.stringify(place)}`, { cause: thrown });
      });
    }
    await remove();
  }
  const seconds = ((performance.now() - from) / 1000).toFixed(0);
  const { acknowledged, early, whole, notAtAll } = sum;
  console.log(
    `${engine}: ${rounds} kills (seed ${seed}, ${early} before a first answer) in ${seconds} s; all ${acknowledged} acknowledged requests kept; of ${whole + notAtAll} in hand ${whole} kept whole, ${notAtAll} not at all, each done once when repeated`,
  );
}

/** Mostly in the midst of work, sometimes as it opens the shop that the one before it left behind. */
function momentOf(chance: Chance): Moment {
  return chance.next() < 1 / 8
    ? { from: 'start', afterMs: chance.next() * OPENING_MS }
    : { from: 'first-answer', afterMs: chance.next() * WORKING_MS };
}

async function killing(
  { place, ground, told }: Shop,
  { round, moment, chance }: { readonly round: number; readonly moment: Moment; readonly chance: Chance },
  sum: Figures,
): Promise<void> {
  const acknowledged = await writers.killedAt({ place, ground, round }, moment);
  for (const turn of acknowledged) told.add(requestOf(ground, turn).requestId);
  const inHand = requestsInHand(ground, round, acknowledged);
  const store = await openStore(place);
  try {
    // A server may still be busy with the last word of whoever was killed: this waits in line behind it.
    await store.write(async () => {});
    const kept = await requestsKept(store);
    const whole = inHand.filter(({ requestId }) => kept.has(requestId));
    assert.deepEqual(without(told, kept), [], 'acknowledged and lost');
    const asked = new Set([...told, ...inHand.map(({ requestId }) => requestId)]);
    assert.deepEqual(without(kept, asked), [], 'kept and asked by nobody');
    for (const request of inHand)
      assert.deepEqual(await repeated(store, request), await repeated(store, request));
    if (acknowledged.length > 0) {
      const { answer, ...turn } = chance.pick(acknowledged);
      assert.deepEqual(await repeated(store, requestOf(ground, turn)), answer);
    }
    assert.deepEqual(without(asked, await requestsKept(store)), [], 'repeated and lost');
    for (const { requestId } of inHand) told.add(requestId);
    sum.acknowledged += acknowledged.length;
    sum.early += acknowledged.length === 0 ? 1 : 0;
    sum.whole += whole.length;
    sum.notAtAll += inHand.length - whole.length;
  } finally {
    await store.close();
  }
}

/** What each tablet asked next: whether it was done, nobody was told. */
function requestsInHand(
  ground: Ground,
  round: number,
  acknowledged: readonly Acknowledged[],
): readonly Request[] {
  return Array.from({ length: TABLETS }, (_, tablet) => {
    const count = acknowledged.filter((each) => each.tablet === tablet).length;
    return requestOf(ground, { round, tablet, count });
  });
}

function without(these: ReadonlySet<string>, those: ReadonlySet<string>): readonly string[] {
  return [...these].filter((id) => !those.has(id));
}

async function repeated(store: Store, { useCase, ...asked }: Request): Promise<unknown> {
  const newId = idsOfRequest(asked.requestId, REPEATED_FROM);
  const done = await perform(store, useCase, { ...CONSOLE, ...asked, newId });
  assert.ok(done.ok, `${useCase.definition.name}: ${JSON.stringify(done)}`);
  return done.value;
}
