import type { SquareMatrix } from '../../numeric/index.js';
import type { Calibration } from './calibrate.js';
import { priorMiddle } from './calibration-prior.js';
import { ninetyPercentFactor } from './ninety-percent.js';
import { chanceVariance, questionOf } from './predict-string.js';
import type { RecipeAsked } from './recipe-standing.js';
import { rowOf, seatVariance } from './seat-question.js';
import { type StringSlopes, stringSlopes } from './string-slopes.js';
import { tellingVariance } from './telling-noise.js';
import { slopesOfTelling } from './told-by-string.js';

/** What measuring one more string of a recipe, wound by the sheet from fresh wire, would do for all recipes of the shop. */
export interface NextMeasurement {
  readonly recipeId: string;
  readonly machineId?: string;
  /** Mean over the shop's recipes of half the 90 % interval of mean diameter, m: now, after its diameter, after its weight too. */
  readonly diameterNowM: number;
  readonly diameterAfterM: number;
  /** The same of unit weight, as a share; only its weight sharpens it much. */
  readonly weightNow: number;
  readonly weightAfterDiameter: number;
  readonly weightAfterBoth: number;
  /** Mean of the two shares by which intervals shrink when both are measured: by this they are ordered. */
  readonly gain: number;
}

/**
 * What to measure next, what teaches most first: the expected width of intervals over all recipes after one string
 * more (Bayesian design for prediction; K. Chaloner & I. Verdinelli, Statist. Sci. 10 (1995) 273, criterion psi_A).
 * Under normal noise the width does not depend on what will be measured, so that it is known beforehand.
 */
export function nextMeasurements(
  calibration: Calibration,
  recipes: readonly RecipeAsked[],
): readonly NextMeasurement[] {
  const wound = recipes.filter(({ construction }) => construction.kind === 'wound');
  const about = priorMiddle(calibration.prior);
  const asked = wound.map((recipe) => ({ recipe, slopes: stringSlopes(recipe.construction, about) }));
  if (asked.length === 0) return [];
  const factor = ninetyPercentFactor(calibration.noiseDegrees);
  const targets = asked.map((one) => targetOf(calibration, one));
  const mean = (values: readonly number[]): number =>
    (factor * values.reduce((sum, value) => sum + Math.sqrt(Math.max(0, value)), 0)) / values.length;
  const diameterNowM = mean(targets.map(({ diameter }) => diameter.variance));
  const weightNow = mean(targets.map(({ weight }) => weight.variance));
  return asked
    .map(({ recipe, slopes }) => {
      const [byDiameter, byWeight] = lookOf(calibration, recipe, slopes);
      const after = (kind: 'diameter' | 'weight', looks: readonly [Look, Look?]): number =>
        mean(targets.map((target) => afterLooks(target[kind], looks)));
      const diameterAfterM = after('diameter', [byDiameter, byWeight]);
      const weightAfterBoth = after('weight', [byDiameter, byWeight]);
      return {
        recipeId: recipe.recipeId,
        ...(recipe.machineId === undefined ? {} : { machineId: recipe.machineId }),
        diameterNowM,
        diameterAfterM,
        weightNow,
        weightAfterDiameter: after('weight', [byDiameter]),
        weightAfterBoth,
        gain: (shrunk(diameterNowM, diameterAfterM) + shrunk(weightNow, weightAfterBoth)) / 2,
      };
    })
    .sort((a, b) => b.gain - a.gain || (a.recipeId < b.recipeId ? -1 : 1));
}

const shrunk = (now: number, after: number): number => (now === 0 ? 0 : 1 - after / now);

type SparseRow = ReturnType<typeof rowOf>;

interface Target {
  readonly row: SparseRow;
  readonly variance: number;
}

function targetOf(
  calibration: Calibration,
  { recipe, slopes }: { readonly recipe: RecipeAsked; readonly slopes: StringSlopes },
): { readonly diameter: Target; readonly weight: Target } {
  const question = questionOf(calibration, { construction: recipe.construction });
  const of = (quantity: number): Target => ({
    row: rowOf(question, slopes.byUnknown[quantity]!),
    variance: seatVariance(calibration.posterior, question, slopes.byUnknown[quantity]!).variance,
  });
  return { diameter: of(0), weight: of(2) };
}

/** One telling of a string to come: how all unknowns vary together with it, and its own variance. */
interface Look {
  readonly row: SparseRow;
  readonly towards: Float64Array;
  readonly variance: number;
}

function lookOf(calibration: Calibration, recipe: RecipeAsked, slopes: StringSlopes): readonly [Look, Look] {
  const question = questionOf(calibration, recipe);
  const beside = slopesOfTelling('weight-beside-mean', slopes, undefined);
  const { run, string } = tellingVariance('weight-beside-mean', slopes, calibration.noise);
  const ofWires = recipe.wires.reduce(
    (sum, { sizeUM }, wire) => sum + (sizeUM * (beside.byWire[wire] ?? 0)) ** 2,
    0,
  );
  const look = (row: SparseRow, chance: number): Look => {
    const towards = times(calibration.posterior.covariance, row);
    return { row, towards, variance: inner(row, towards) + chance };
  };
  return [
    look(rowOf(question, slopes.byUnknown[0]!), chanceVariance(calibration, recipe, slopes, 0)),
    look(rowOf(question, beside.byUnknown), run + string + ofWires),
  ];
}

/** The variance of a target after looks, one after the other: v - c² / (h + V), c and h carried along. */
function afterLooks({ row, variance }: Target, [first, second]: readonly [Look, Look?]): number {
  const towardsFirst = inner(row, first.towards);
  const afterFirst = variance - towardsFirst ** 2 / first.variance;
  if (!second) return afterFirst;
  const together = inner(second.row, first.towards);
  const towardsSecond = inner(row, second.towards) - (towardsFirst * together) / first.variance;
  return afterFirst - towardsSecond ** 2 / (second.variance - together ** 2 / first.variance);
}

function times({ size, entries }: SquareMatrix, row: SparseRow): Float64Array {
  const product = new Float64Array(size);
  for (const { place, coefficient } of row)
    for (let at = 0; at < size; at++) product[at] = product[at]! + coefficient * entries[place * size + at]!;
  return product;
}

function inner(row: SparseRow, vector: Float64Array): number {
  let sum = 0;
  for (const { place, coefficient } of row) sum += coefficient * vector[place]!;
  return sum;
}
