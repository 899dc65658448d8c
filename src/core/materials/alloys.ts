import type { Alloy, AlloyId } from './alloy.js';
import { COPPER_ALLOYS } from './copper-alloys.js';
import { NICKEL_ALLOYS } from './nickel-alloys.js';
import { POLYMERS } from './polymers.js';
import { STEELS } from './steels.js';

/** Every material that strings are made of here, by id. */
export const ALLOYS: Readonly<Record<AlloyId, Alloy>> = {
  ...STEELS,
  ...NICKEL_ALLOYS,
  ...COPPER_ALLOYS,
  ...POLYMERS,
};

/** The material of that id. */
export const alloy = (id: AlloyId): Alloy => ALLOYS[id];
