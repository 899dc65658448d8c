import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { Recipe } from '../../core/recipes/index.js';
import type { Machine } from '../../core/winding/index.js';

export type RecipeRecord = StoredRecord<BodyOf<'recipe'>>;
export type MachineRecord = StoredRecord<BodyOf<'machine'>>;

/** A recipe as the core knows it: calibrated, or a prediction still. Its wires are named by their ids. */
export function recipeInCore({ id, version, state, body }: RecipeRecord): Recipe {
  const { gaugeThou, material, construction, coreWireId, wrapWireIds } = body;
  return {
    id,
    version,
    state: state === 'calibrated' ? 'calibrated' : 'predicted',
    gaugeThou,
    material,
    construction,
    coreWireId,
    wrapWireIds,
  };
}

export const machineInCore = ({ id, body }: MachineRecord): Machine => ({ id, ...body });
