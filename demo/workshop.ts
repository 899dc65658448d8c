import type { Shop } from '../src/core/day/index.js';
import { seededChance } from '../src/core/foundation/index.js';
import { demoMachines } from './machines.js';
import { demoRecipes } from './recipes.js';
import { demoInstruments, demoSets, LONG_LENGTH_M, STANDARD_LENGTH_M } from './sets.js';
import { demoShelf, demoSpools } from './shelf.js';
import { demoTunings } from './tunings.js';
import { demoWires } from './wires.js';

export const DEMO_SEED = 20_270_301;

/** A workshop that does not exist: every name, price and figure of its shelves is invented here. */
export function demoWorkshop(seed = DEMO_SEED): Shop {
  const chance = seededChance(seed);
  const wires = demoWires();
  const sets = demoSets();
  const spools = demoSpools(wires, chance);
  return {
    name: 'Tarnfield Strings',
    invented: true,
    wires,
    spools,
    machines: demoMachines,
    setUpNow: [
      { machineId: 'wren', recipeId: 'nickel-plated-steel 46', lengthM: STANDARD_LENGTH_M },
      { machineId: 'twin-finch', recipeId: 'nickel-plated-steel 36', lengthM: STANDARD_LENGTH_M },
      { machineId: 'old-heron', recipeId: 'phosphor-bronze 42', lengthM: STANDARD_LENGTH_M },
    ],
    recipes: demoRecipes(),
    sets,
    instruments: demoInstruments(),
    tunings: demoTunings(),
    ...demoShelf(sets, chance),
    rates: {
      // XTS is ISO 4217's code for testing: no one's money.
      currency: 'XTS',
      minorDigits: 2,
      labourMinorPerHour: 2400,
      overheadShare: 0.45,
      endMinorEach: { ball: 2, loop: 1 },
      packMinorPerSet: 34,
      packMinutesPerSet: 1.5,
      runScrapShare: 0.02,
    },
    rules: {
      lotSize: 12,
      stressLimit: 0.8,
      plainUpToThou: 19,
      thickestPlainThou: 20,
      thinnestWoundThou: 20,
      standardLengthM: STANDARD_LENGTH_M,
      longLengthM: LONG_LENGTH_M,
      standardScaleUpToM: 0.67,
      dayStartsAtMinute: 7 * 60 + 30,
      workingDays: [1, 2, 3, 4, 5],
    },
  };
}
