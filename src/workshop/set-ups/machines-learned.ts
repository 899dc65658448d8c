import { learnChanges, learnedOf, type Machine } from '../../core/winding/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { MachineRecord, RecipeRecord } from '../production/recipe-in-core.js';
import { asMachine, asRecipe, type NameIndex } from '../shop/shop-parts.js';
import { pastSetUps, type SetUpNames } from './past-set-ups.js';

interface Known {
  readonly machines: readonly MachineRecord[];
  readonly recipes: readonly RecipeRecord[];
  readonly wire: NameIndex<'wire'>;
}

/** The machines as the core has them, with what the shop's own set-ups make of their figures. */
export async function machinesLearned(tx: ReadTransaction, known: Known): Promise<readonly Machine[]> {
  const learned = learnChanges(await pastSetUps(tx, setUpNames(known)));
  return known.machines.map((record) => {
    const changeLearned = learnedOf(learned, record.id);
    const machine = asMachine(record);
    return Object.keys(changeLearned).length === 0 ? machine : { ...machine, changeLearned };
  });
}

/** Machines by their records, recipes with those that are retired: they were wound all the same. */
export function setUpNames({ machines, recipes, wire }: Known): SetUpNames {
  const machineById = new Map(machines.map((record) => [record.id, asMachine(record)]));
  const recipeById = new Map(recipes.map((record) => [record.id, asRecipe(record, wire)]));
  return { machineOf: (id) => machineById.get(id), recipeOf: (id) => recipeById.get(id) };
}
