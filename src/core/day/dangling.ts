import type { Shop } from './shop.js';

/** A name in the shop that points to nothing. */
export interface DanglingReference {
  readonly where: string;
  readonly names: string;
  readonly what: 'wire' | 'machine' | 'recipe' | 'bin';
}

/** Every name in a shop that points to nothing, and every name given twice: found before they cost a day. */
export function danglingReferences(shop: Shop): readonly DanglingReference[] {
  const wires = new Set(shop.wires.map(({ id }) => id));
  const machines = new Set(shop.machines.map(({ id }) => id));
  const recipes = new Set(shop.recipes.map(({ id }) => id));
  const bins = new Set(shop.bins.map(({ id }) => id));
  return [
    ...shop.spools
      .filter(({ wireId }) => !wires.has(wireId))
      .map(({ id, wireId }) => dangling(`spool ${id}`, wireId, 'wire')),
    ...shop.recipes.flatMap(({ id, coreWireId, wrapWireIds }) =>
      [coreWireId, ...wrapWireIds]
        .filter((wire) => !wires.has(wire))
        .map((wire) => dangling(`recipe ${id}`, wire, 'wire')),
    ),
    ...shop.setUpNow.flatMap(({ machineId, recipeId }) => [
      ...(machines.has(machineId) ? [] : [dangling('setUpNow', machineId, 'machine')]),
      ...(recipes.has(recipeId) ? [] : [dangling(`setUpNow of ${machineId}`, recipeId, 'recipe')]),
    ]),
    ...shop.strings
      .filter(({ binId }) => !bins.has(binId))
      .map(({ lot, binId }) => dangling(`strings of lot ${lot}`, binId, 'bin')),
  ];
}

const dangling = (where: string, names: string, what: DanglingReference['what']): DanglingReference => ({
  where,
  names,
  what,
});
