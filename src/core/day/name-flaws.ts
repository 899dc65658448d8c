import { foldName } from '../orders/index.js';
import type { Shop } from './shop.js';
import type { NamedThing, ShopFlaw } from './shop-flaw.js';

/** Names in a shop that point to nothing, and names that two things of a kind bear. */
export function nameFlaws(shop: Shop): readonly ShopFlaw[] {
  return [...danglingNames(shop), ...doubledNames(shop)];
}

function danglingNames(shop: Shop): readonly ShopFlaw[] {
  const wires = new Set(ids(shop.wires));
  const machines = new Set(ids(shop.machines));
  const recipes = new Set(ids(shop.recipes));
  const bins = new Set(ids(shop.bins));
  const named = (known: ReadonlySet<string>, where: string, what: NamedThing, name: string): ShopFlaw[] =>
    known.has(name) ? [] : [{ kind: 'names-nothing', where, what, name }];
  return [
    ...shop.spools.flatMap(({ id, wireId }) => named(wires, `spool ${id}`, 'wire', wireId)),
    ...shop.recipes.flatMap(({ id, coreWireId, wrapWireIds }) =>
      [coreWireId, ...wrapWireIds].flatMap((wireId) => named(wires, `recipe ${id}`, 'wire', wireId)),
    ),
    ...shop.setUpNow.flatMap(({ machineId, recipeId }) => [
      ...named(machines, 'setUpNow', 'machine', machineId),
      ...named(recipes, `setUpNow of ${machineId}`, 'recipe', recipeId),
    ]),
    ...shop.strings.flatMap(({ lot, binId }) => named(bins, `strings of lot ${lot}`, 'bin', binId)),
  ];
}

function doubledNames(shop: Shop): readonly ShopFlaw[] {
  const doubled = (what: NamedThing, names: readonly string[]): ShopFlaw[] =>
    names.filter((name, at) => names.indexOf(name) < at).map((name) => ({ kind: 'named-twice', what, name }));
  // Orders call these by name, however it is spelt.
  const spoken = (things: readonly { readonly name: string }[]) => things.map(({ name }) => foldName(name));
  return [
    ...doubled('wire', ids(shop.wires)),
    ...doubled('spool', ids(shop.spools)),
    ...doubled('machine', ids(shop.machines)),
    ...doubled('recipe', ids(shop.recipes)),
    ...doubled('bin', ids(shop.bins)),
    ...doubled('stock set', spoken(shop.sets)),
    ...doubled('instrument', spoken(shop.instruments)),
    ...doubled('tuning', spoken(shop.tunings)),
    ...doubled(
      'set-up of machine',
      shop.setUpNow.map(({ machineId }) => machineId),
    ),
  ];
}

const ids = (things: readonly { readonly id: string }[]): readonly string[] => things.map(({ id }) => id);
