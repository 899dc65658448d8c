import { type Chance, seededChance } from '../../../foundation/index.js';
import { normalDraw } from '../../../stats/index.js';
import {
  type Construction,
  PRIOR_SEAT,
  type SeatModel,
  type StringBody,
  stringBody,
} from '../../../string/index.js';
import type { MeasuredString, WireUsed } from '../measured-string.js';
import { awry, uniform } from './normal-draws.js';
import { drawnRecipe, type SyntheticRecipe } from './synthetic-recipe.js';
import {
  bodyInTruth,
  drawnTruth,
  type SyntheticString,
  type SyntheticTruth,
  windOne,
} from './synthetic-truth.js';

export interface ShopWish {
  readonly seed: number;
  readonly recipes: number;
  readonly runs: number;
  /** Share of strings that are misread by 20 to 80 micrometres or 2 to 8 %. */
  readonly misread: number;
}

/** A shop whose truth is known: what it measured, and what its strings truly are. */
export interface SyntheticShop {
  readonly recipes: readonly SyntheticRecipe[];
  readonly machines: readonly string[];
  readonly strings: readonly MeasuredString[];
  /** What strings of this construction truly have in the mean on a machine, at the sizes that it states. */
  readonly truth: (construction: Construction, machineId: string) => StringBody;
  /** How wrap truly sits in such strings. */
  readonly seat: (construction: Construction, machineId: string) => SeatModel;
  /** One more string, wound by the sheet from fresh lots of wire. */
  readonly wind: (recipe: SyntheticRecipe, machineId: string) => SyntheticString;
}

const MACHINES = ['one', 'two', 'three'];
/** A lot of a wire lasts for so many runs. */
const RUNS_A_LOT = 12;
const STRINGS_A_RUN = 3;
/** What a winder turns back of what a string shows against the sheet. */
const TURNED_BACK = 0.8;

/**
 * A shop to try a calibration on: seats and spreads as `drawnTruth` has them, wire uniform within its tolerance and
 * one lot for many runs, three strings a run of which the first and the last are weighed. Winders turn back what
 * each string showed, and write nothing down. The same for the same seed.
 */
export function syntheticShop({ seed, recipes: count, runs, misread }: ShopWish): SyntheticShop {
  const chance = seededChance(seed);
  const truth = drawnTruth(chance);
  const recipes = Array.from({ length: count }, (_, at) => drawnRecipe(chance, at));
  const shelf = wireShelf(chance);
  const strings = Array.from({ length: runs }, (_, run) => {
    const recipe = chance.pick(recipes);
    const machineId = chance.pick(MACHINES);
    return stringsOfRun({ run, recipe, machineId, wires: recipe.wires.map(shelf.take) }, truth, {
      chance,
      misread,
      offOf: shelf.offOf,
    });
  }).flat();
  return {
    recipes,
    machines: MACHINES,
    strings,
    truth: (construction, machineId) => bodyInTruth(truth, construction, machineId),
    seat: truth.seatOf,
    wind: ({ construction, wires }, machineId) => {
      const offs = wires.map(({ sizeUM }) => uniform(chance, sizeUM));
      const settingM = truth.noise.runM * normalDraw(chance);
      const runWeight = truth.noise.runWeight * normalDraw(chance);
      return windOne(truth, { construction, machineId, offs, settingM, runWeight }, chance);
    },
  };
}

interface SyntheticRun {
  readonly run: number;
  readonly recipe: SyntheticRecipe;
  readonly machineId: string;
  readonly wires: readonly WireUsed[];
}

function stringsOfRun(
  { run, recipe, machineId, wires }: SyntheticRun,
  truth: SyntheticTruth,
  how: {
    readonly chance: Chance;
    readonly misread: number;
    readonly offOf: (wire: WireUsed) => number;
  },
): readonly MeasuredString[] {
  const { chance } = how;
  const { construction } = recipe;
  const offs = wires.map(how.offOf);
  const sheet = stringBody(construction, PRIOR_SEAT);
  const sheetM = sheet.ok ? sheet.value.meanDiameterM : 0;
  const runWeight = truth.noise.runWeight * normalDraw(chance);
  let settingM = truth.noise.runM * normalDraw(chance);
  return Array.from({ length: STRINGS_A_RUN }, (_, at): MeasuredString => {
    const wound = windOne(truth, { construction, machineId, offs, settingM, runWeight }, chance);
    settingM -= TURNED_BACK * (wound.meanDiameterM - sheetM);
    const isMisread = chance.next() < how.misread;
    const offM = isMisread ? awry(chance, 50e-6) : 0;
    const offShare = isMisread ? awry(chance, 0.05) : 0;
    const isWeighed = at === 0 || at === STRINGS_A_RUN - 1;
    return {
      stringId: `${run}/${at}`,
      runId: String(run),
      recipeId: recipe.id,
      machineId,
      construction,
      wires,
      setting: at === 0 ? 'by-sheet' : 'adjusted',
      meanDiameterM: wound.meanDiameterM + offM,
      ...(isWeighed ? { unitWeightKgPerM: wound.unitWeightKgPerM * (1 + offShare) } : {}),
    };
  });
}

/** Wire by lots, each off its stated size by an amount of its own. */
function wireShelf(chance: Chance) {
  const uses = new Map<string, number>();
  const offs = new Map<string, number>();
  return {
    take: (wire: WireUsed): WireUsed => {
      const before = uses.get(wire.lot) ?? 0;
      uses.set(wire.lot, before + 1);
      return { ...wire, lot: `${wire.lot} lot ${Math.floor(before / RUNS_A_LOT)}` };
    },
    offOf: ({ lot, sizeUM }: WireUsed): number => {
      const off = offs.get(lot) ?? uniform(chance, sizeUM);
      offs.set(lot, off);
      return off;
    },
  };
}
