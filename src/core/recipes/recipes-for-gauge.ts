import { fail, invariant, type Result, succeed } from '../foundation/index.js';
import { PRIOR_SEAT } from '../string/index.js';
import { metresFromThou } from '../units/index.js';
import { type BuildSearch, buildsWithin } from './builds-within.js';
import { choiceOf } from './choice-of-build.js';
import { TWO_LAYERS_FROM_THOU } from './core-ratio.js';
import { materialOfWrapAlloy, wrapAlloyOf } from './material.js';
import { withMerits } from './merits.js';
import { nearestBuild, nearestPlainWires, wrapsNeeded } from './nearest-build.js';
import type { OfferedCore } from './offered-wire.js';
import { paretoFront } from './pareto-front.js';
import type { RecipeChoice } from './recipe-choice.js';
import type { RecipeFault } from './recipe-fault.js';
import type { RecipeSearch } from './recipe-search.js';

export interface RecipeChoices {
  /** None of them beats another in everything. The one nearest to the core ratio aimed at stands first. */
  readonly front: readonly RecipeChoice[];
  /** Within tolerance too, but another is as good in everything and better in something; in the same order. */
  readonly beaten: readonly RecipeChoice[];
  /** Pairs and triples of wires there were, and how many landed within tolerance. */
  readonly considered: number;
  readonly withinTolerance: number;
}

/**
 * The ways worth choosing from to make one gauge: every core with every wrap (every pair of wraps where two
 * layers are tried) whose predicted rotation-mean diameter lies within tolerance, less those that another beats in all of
 * EI, stress share, inharmonicity B, distance from the core ratio aimed at and cost of wire per metre.
 * A plain string is the round core wire nearest to the gauge. Nothing found: a fault with the nearest build
 * and the wraps that would do.
 */
export function recipesForGauge(search: RecipeSearch): Result<RecipeChoices, RecipeFault> {
  invariant(
    search.gaugeThou > 0 && search.toleranceM >= 0,
    'a gauge is positive and its tolerance not negative',
  );
  return wrapAlloyOf(search.material) === undefined ? plainRecipes(search) : woundRecipes(search);
}

function plainRecipes(search: RecipeSearch): Result<RecipeChoices, RecipeFault> {
  const { gaugeThou, material, toleranceM } = search;
  const round = search.cores.filter((core) => core.shape === 'round');
  if (round.length === 0) return fail({ code: 'recipe.no-core', gaugeThou, material });
  const offM = (core: OfferedCore): number => Math.abs(core.sizeM - metresFromThou(gaugeThou));
  const within = round.filter((core) => offM(core) <= toleranceM + ROUNDING_M);
  if (within.length === 0) {
    const nearest = nearestPlainWires(round, gaugeThou);
    return fail({ code: 'recipe.no-plain-wire', gaugeThou, toleranceM, nearest });
  }
  const leastM = Math.min(...within.map(offM));
  const isNearest = (core: OfferedCore): boolean => offM(core) <= leastM + ROUNDING_M;
  const choicesOf = (cores: readonly OfferedCore[]) =>
    cores.flatMap((core) => choiceOf({ core, wraps: [] }, search) ?? []);
  const { front, beaten } = divided(choicesOf(within.filter(isNearest)));
  const further = choicesOf(within.filter((core) => !isNearest(core)));
  return succeed({
    front,
    beaten: [...beaten, ...further.sort(byCoreRatioThenGauge)],
    considered: round.length,
    withinTolerance: within.length,
  });
}

function woundRecipes(search: RecipeSearch): Result<RecipeChoices, RecipeFault> {
  const { gaugeThou, material, toleranceM, cores } = search;
  if (cores.length === 0) return fail({ code: 'recipe.no-core', gaugeThou, material });
  const outerWraps = search.wraps.filter((wrap) => materialOfWrapAlloy(wrap.alloy) === material);
  if (outerWraps.length === 0) return fail({ code: 'recipe.no-wrap-of-material', gaugeThou, material });
  const layers = search.maxLayers ?? (gaugeThou >= TWO_LAYERS_FROM_THOU ? 2 : 1);
  const buildSearch: BuildSearch = {
    diameterM: metresFromThou(gaugeThou),
    toleranceM,
    cores,
    outerWraps,
    innerWraps: layers === 2 ? outerWraps : [],
    seat: search.seat ?? PRIOR_SEAT,
  };
  const choices = buildsWithin(buildSearch)
    .flatMap((build) => choiceOf(build, search) ?? [])
    .filter((choice) => Math.abs(choice.offGaugeM) <= toleranceM + ROUNDING_M);
  if (choices.length === 0) {
    const nearest = nearestBuild(buildSearch);
    return fail({
      code: 'recipe.none-within-tolerance',
      gaugeThou,
      material,
      toleranceM,
      ...(nearest ? { nearest } : {}),
      wrapsNeeded: wrapsNeeded(buildSearch),
    });
  }
  return succeed({
    ...divided(choices),
    considered: cores.length * outerWraps.length * (1 + buildSearch.innerWraps.length),
    withinTolerance: choices.length,
  });
}

/** Diameters that differ by less came out of the same sum in another order. */
const ROUNDING_M = 1e-12;

/** The front with its merits, and the rest. */
function divided(choices: readonly RecipeChoice[]): Pick<RecipeChoices, 'front' | 'beaten'> {
  // Seven digits: what differs in the sixteenth came out of the same sum in another order and beats nothing.
  const rows = choices.map(({ figures }) =>
    [
      figures.bendingStiffnessNM2,
      figures.stressShare ?? Number.POSITIVE_INFINITY,
      figures.inharmonicityB,
      figures.coreRatioDeviation,
      figures.wireCostMinorPerM ?? Number.POSITIVE_INFINITY,
    ].map(Math.fround),
  );
  const ahead = new Set(paretoFront(rows));
  const front = choices.filter((_, index) => ahead.has(index));
  const beaten = choices.filter((_, index) => !ahead.has(index));
  return { front: withMerits(front.sort(byCoreRatioThenGauge)), beaten: beaten.sort(byCoreRatioThenGauge) };
}

const byCoreRatioThenGauge = (a: RecipeChoice, b: RecipeChoice): number =>
  a.figures.coreRatioDeviation - b.figures.coreRatioDeviation ||
  Math.abs(a.offGaugeM) - Math.abs(b.offGaugeM) ||
  (wireNames(a) < wireNames(b) ? -1 : 1);

const wireNames = (choice: RecipeChoice): string => [choice.coreWireId, ...choice.wrapWireIds].join(' + ');
