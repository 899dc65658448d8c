import { expect } from 'vitest';
import type { InputOf } from '../../src/contract/index.js';
import { PERMISSIONS, workshopFaultWords } from '../../src/contract/index.js';
import type { Shop } from '../../src/core/day/index.js';
import type { Result } from '../../src/core/foundation/index.js';
import { replay } from '../../src/core/stock/index.js';
import type { Store } from '../../src/store/index.js';
import {
  type Actor,
  type AnswerOf,
  type AnyUseCase,
  demoShop,
  newId,
  perform,
  performMany,
  shopRecords,
  type WorkshopFault,
} from '../../src/workshop/index.js';

/** Somebody at work in a shop whose clock goes on by a second with every thing done. */
export interface Desk {
  readonly store: Store;
  /** Asks, and gets what the shop answers. */
  ask<Which extends AnyUseCase>(
    useCase: Which,
    input: InputOf<Which['definition']>,
  ): Promise<Result<AnswerOf<Which>, WorkshopFault>>;
  /** Asks for what must be done. */
  must<Which extends AnyUseCase>(
    useCase: Which,
    input: InputOf<Which['definition']>,
  ): Promise<AnswerOf<Which>>;
  /** Asks for what must be refused, and gives the fault; its words must tell all its facts. */
  refused<Which extends AnyUseCase>(
    useCase: Which,
    input: InputOf<Which['definition']>,
  ): Promise<WorkshopFault>;
}

export function deskAt(store: Store, permissions: Actor['permissions'] = new Set(PERMISSIONS)): Desk {
  const performer = {
    actor: { by: 'console', permissions },
    clock: secondsFrom('2027-03-01T07:30:00.000Z'),
    newId,
  };
  const desk: Desk = {
    store,
    ask: (useCase, input) => perform(store, useCase, { ...performer, input }),
    must: async (useCase, input) => {
      const done = await desk.ask(useCase, input);
      if (!done.ok) throw new Error(`${useCase.definition.name} was refused: ${JSON.stringify(done.fault)}`);
      return done.value;
    },
    refused: async (useCase, input) => {
      const done = await desk.ask(useCase, input);
      if (done.ok) throw new Error(`${useCase.definition.name} was done: ${JSON.stringify(done.value)}`);
      const { what, mend } = workshopFaultWords(done.fault);
      expect(`${what} ${mend}`, done.fault.code).not.toMatch(/undefined|NaN|\[object/);
      return done.fault;
    },
  };
  return desk;
}

function secondsFrom(start: string) {
  let at = Date.parse(start);
  return {
    now: () => {
      at += 1000;
      return new Date(at).toISOString();
    },
  };
}

/** A desk in a shop that a file's shop was taken into. */
export async function deskOf(store: Store, shop: Shop): Promise<Desk> {
  const performer = {
    actor: { by: 'console', permissions: new Set(PERMISSIONS) },
    clock: secondsFrom('2027-02-28T12:00:00.000Z'),
    newId,
  };
  const taken = await performMany(store, performer, async (ask) => {
    for (const { useCase, input } of shopRecords(shop, newId)) await ask(useCase, input as never);
  });
  if (!taken.ok) throw new Error(`the shop was not taken in: ${JSON.stringify(taken.fault)}`);
  return deskAt(store);
}

/** Two stock sets of the invented workshop, and what is there to make and keep them. */
export async function cornerShop(): Promise<Shop> {
  const shop = await demoShop();
  const sets = shop.sets.filter(({ name }) => SETS.includes(name));
  const recipes = shop.recipes.filter(
    ({ material, gaugeThou }) => MATERIALS.includes(material) && gaugeThou <= 60,
  );
  const wires = new Set(recipes.flatMap(({ coreWireId, wrapWireIds }) => [coreWireId, ...wrapWireIds]));
  const kinds = new Set(sets.flatMap(({ strings }) => strings.map((spec) => JSON.stringify(spec))));
  const strings = shop.strings.filter(({ spec }) => kinds.has(JSON.stringify(spec)));
  const bins = new Set(strings.map(({ binId }) => binId));
  return {
    ...shop,
    sets,
    recipes,
    strings,
    wires: shop.wires.filter(({ id }) => wires.has(id)),
    spools: shop.spools.filter(({ wireId }) => wires.has(wireId)),
    bins: shop.bins.filter(({ id }) => bins.has(id)),
    setUpNow: shop.setUpNow.filter(({ recipeId }) => recipes.some(({ id }) => id === recipeId)),
  };
}

const SETS: readonly string[] = ['Meadow six, 10', 'Meadow six, 10 and deep'];
const MATERIALS: readonly string[] = ['plain-steel', 'nickel-plated-steel'];

/** Every balance is what its movements make, and all of them together are nothing. */
export async function expectLedgerTrue({ store }: Desk): Promise<void> {
  const { balances, movements } = await store.read(async (tx) => ({
    balances: await tx.ledger.balances({}),
    movements: await allMovements(tx),
  }));
  expect(replay(movements)).toEqual(balances);
  const ofItem = new Map<string, number>();
  for (const { item, unit, quantity } of balances)
    ofItem.set(`${item} ${unit}`, (ofItem.get(`${item} ${unit}`) ?? 0) + quantity);
  expect([...ofItem.values()].every((total) => total === 0)).toBe(true);
}

async function allMovements(tx: Parameters<Parameters<Desk['store']['read']>[0]>[0]) {
  const movements = [];
  let after: string | undefined;
  do {
    const page = await tx.ledger.movements({ limit: 500, ...(after === undefined ? {} : { after }) });
    movements.push(...page.items);
    after = page.next;
  } while (after !== undefined);
  return movements;
}
