import { DEMO_PEOPLE, type DemoPerson, type PlantedCauses } from '../../../demo/index.js';
import { NEW_STRINGS_BIN, type Shop } from '../../core/day/index.js';
import { type Chance, grouped, invariant } from '../../core/foundation/index.js';
import { stringKey } from '../../core/sets/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import type { Transaction } from '../../store/index.js';
import { invitePersonCase } from '../access/people.js';
import type { Ask } from '../perform.js';
import { saveBin } from '../shop/save-shop-records.js';
import { shopRecords } from '../shop/take-in-shop.js';
import type { Hands } from './hands.js';
import type { HistoryBook, ShopLot, ShopSpool } from './history-book.js';

export interface Beginning {
  readonly shop: Shop;
  readonly causes: PlantedCauses;
  readonly chance: Chance;
  readonly chanceOfEnds: Chance;
  readonly letterChance: Chance;
  readonly hands: Hands;
}

/** Takes the people and the shop of the file in, and opens the book of the history. */
export async function begin(ask: Ask, tx: Transaction, beginning: Beginning): Promise<HistoryBook> {
  const { shop, hands } = beginning;
  for (const person of Object.keys(DEMO_PEOPLE) as DemoPerson[]) await takeIn(ask, tx, hands, person);
  for (const { useCase, input } of shopRecords(shop, hands.newId)) await ask(useCase, input as never);
  const bin = async (name: string, walkOrder: number) =>
    (await ask(saveBin, { id: hands.newId(), body: { name, walkOrder, reorderLevel: 0 } })).id;
  const newStringsBin = await bin(NEW_STRINGS_BIN, shop.bins.length + 1);
  const upperShelf = await bin(UPPER_SHELF, shop.bins.length + 2);
  return openBook(tx, beginning, { newStringsBin, upperShelf });
}

const UPPER_SHELF = 'upper shelf';

/** The links that were made for invented people are thrown away: who may sign in as one of them is not the history's to say. */
async function takeIn(ask: Ask, tx: Transaction, { newId, meet }: Hands, person: DemoPerson): Promise<void> {
  const { name, roles } = DEMO_PEOPLE[person];
  const id = newId();
  await ask(invitePersonCase, { id, name, roles: [...roles] });
  await tx.access.dropCredential(id, 'sign-in-link');
  meet(person, id);
}

async function openBook(
  tx: Transaction,
  { shop, causes, chance, chanceOfEnds, letterChance, hands }: Beginning,
  { newStringsBin, upperShelf }: { readonly newStringsBin: string; readonly upperShelf: string },
): Promise<HistoryBook> {
  const bins = await tx.records.all('bin');
  const binByKind = new Map(bins.flatMap(({ id, body }) => (body.stringKey ? [[body.stringKey, id]] : [])));
  const levels = new Map(bins.map(({ body }) => [body.stringKey ?? '', body.reorderLevel]));
  const recipes = await tx.records.all('recipe');
  return {
    shop,
    causes,
    chance,
    letterChance,
    newId: hands.newId,
    ends: { chance: chanceOfEnds, pulled: 0, coresOfRuns: 0 },
    ids: {
      wire: idByName(await tx.records.all('wire')),
      machine: idByName(
        (await tx.records.all('machine')).map(({ id, body }) => ({
          id,
          body: { name: fileName(shop, body.name) },
        })),
      ),
      recipe: idByName(recipes),
    },
    binOf: (key) => binByKind.get(key) ?? newStringsBin,
    levelOf: (key) => levels.get(key) ?? 0,
    upperShelf,
    kinds: new Map(shop.strings.map(({ spec }) => [stringKey(spec), spec])),
    recipes: new Map(
      recipes.map(({ id, version, state, body }) => [id, { name: body.name, version, state, runs: 0 }]),
    ),
    spools: await spoolsOf(tx),
    usedMg: new Map(),
    lots: grouped(await lotsOf(tx), (lot) => lot.stringKey),
    works: new Map(),
    cautionsRead: new Map(),
    orders: [],
    letters: [],
    complaints: [],
    requests: [],
    count: { orders: 1000, ordersByHand: 1000, ordersOfRequests: 1000, requests: 0, spools: 0, runsToday: 0 },
  };
}

/** The file's short name of a machine whose record bears the long one. */
function fileName({ machines }: Shop, name: string): string {
  const machine = machines.find((each) => each.name === name);
  invariant(machine, `${name} is a machine of the file`);
  return machine.id;
}

function idByName(
  records: readonly { readonly id: string; readonly body: { readonly name: string } }[],
): (name: string) => string {
  const ids = new Map(records.map(({ id, body }) => [body.name, id]));
  return (name) => {
    const id = ids.get(name);
    invariant(id, `${name} was taken into the shop`);
    return id;
  };
}

async function spoolsOf(tx: Transaction): Promise<ShopSpool[]> {
  const wires = new Map((await tx.records.all('wire')).map(({ id, body }) => [id, body.name]));
  return (await tx.records.all('spool')).map(({ id, body }) => {
    const grossKg = body.weighed?.grossKg ?? body.tareKg;
    const mg = mgFromKg(grossKg - body.tareKg);
    const { lot, tareKg } = body;
    const wire = wires.get(body.wireId) ?? '';
    return { id, wire, lot, tareKg, bookMg: mg, trueMg: mg, grossKg, machine: undefined };
  });
}

async function lotsOf(tx: Transaction): Promise<ShopLot[]> {
  const lots = await tx.records.all('string-lot');
  const lying = await tx.ledger.balances({ accountPrefix: 'bin/' });
  return lots.flatMap(({ id, version, body }) => {
    const there = lying.find(({ lot }) => lot === id);
    if (!there) return [];
    return [
      {
        id,
        name: body.name,
        stringKey: body.stringKey,
        binId: there.account.slice('bin/'.length),
        wireLots: [],
        version,
        state: 'released',
        left: there.quantity,
        faulty: 0,
        toFind: [],
        lookAgain: '9999-12-31' as ShopLot['lookAgain'],
      } satisfies ShopLot,
    ];
  });
}
