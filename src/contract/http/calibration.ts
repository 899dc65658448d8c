import Type, { type Static } from 'typebox';
import { SEAT_UNKNOWNS, TELLING } from '../../core/recipes/index.js';
import { id, instant } from '../records/bodies.js';
import { closed, estimate, notNegative, oneOf, text, wholeFrom } from '../schemas/pieces.js';
import { seatFamily } from '../schemas/shop.js';

const share = (of: string) => notNegative(`share of ${of}`);
const machineId = text('id of the machine');
const recipeId = text('id of the recipe; `ID version N` of strings by an earlier construction of it');

const unknown = closed({
  name: oneOf(SEAT_UNKNOWNS),
  before: estimate,
  now: estimate,
});
const unknowns = Type.Array(unknown, { description: 'before any string was measured, and now' });

const family = closed({
  key: text(),
  family: seatFamily,
  strings: wholeFrom(0, 'measured'),
  runs: wholeFrom(0, 'that they come from'),
  widestM: notNegative('half of the 90 % interval of mean diameter, of its recipe known least, m'),
  isCalibrated: Type.Boolean(),
  unknowns,
  machines: Type.Array(closed({ machineId, strings: wholeFrom(0, 'measured'), unknowns })),
});

const point = closed({
  stringId: text(),
  runId: id,
  recipeId,
  machineId,
  familyKey: text(),
  predicted: Type.Number(),
  measured: Type.Number(),
  weight: share('an ordinary string, that it counts'),
  isFlagged: Type.Boolean(),
});

const points = (unit: string) =>
  closed(
    {
      points: Type.Array(point),
      bands: Type.Array(
        closed({
          from: Type.Number(),
          to: Type.Number(),
          count: wholeFrom(1, 'strings'),
          meanOff: Type.Number({ description: 'measured less predicted' }),
          spread: notNegative('standard deviation'),
        }),
        { description: 'strings that are not shown one by one, by stretches of the predicted value' },
      ),
    },
    unit,
  );

const outlier = closed({
  telling: oneOf(TELLING),
  runId: id,
  runName: text('of the run'),
  recipeId,
  machineId,
  stringIds: Type.Array(text()),
  off: Type.Number({ description: 'm, or a share of weight' }),
  standardised: Type.Number({ description: 'in standard deviations' }),
  weight: share('an ordinary string, that it counts'),
});

const step = oneOf(['try', 'calibrate'], 'step of its life that the rule would have it take');

const recipe = closed({
  recipeId: id,
  version: wholeFrom(1, 'that you see'),
  name: text(),
  state: text(),
  strings: wholeFrom(0, 'measured, of its present construction'),
  runs: wholeFrom(0, 'that they come from'),
  meanDiameterM: estimate,
  unitWeightKgPerM: estimate,
  halfIntervalM: notNegative('half of the 90 % interval of mean diameter, m'),
  offStandardised: Type.Number({ description: 'its own strings against the model, in standard deviations' }),
  hasStrings: Type.Boolean(),
  isNarrow: Type.Boolean(),
  agrees: Type.Boolean(),
  mayBeCalibrated: Type.Boolean(),
  stringsToHalve: wholeFrom(0, 'more, each from a fresh set-up, that would halve the interval'),
  suggests: Type.Optional(step),
});

const next = closed({
  recipeId: id,
  name: text(),
  diameterNowM: notNegative('mean half of 90 % intervals of mean diameter over the recipes, m'),
  diameterAfterM: notNegative('after one string more, m'),
  weightNow: share('unit weight: mean half of 90 % intervals'),
  weightAfterDiameter: share('unit weight, after its diameter was measured'),
  weightAfterBoth: share('unit weight, after it was weighed too'),
  gain: share('these intervals, by which they shrink'),
});

/** What the shop's own strings have taught, and what they have not yet. */
export const calibrationAnswer = closed({
  at: instant,
  settings: Type.Optional(
    closed(
      { id, version: wholeFrom(1, 'name it when you recalibrate'), strings: wholeFrom(0, 'measured then') },
      'where the seat that the shop goes by is kept',
    ),
  ),
  strings: wholeFrom(0, 'measured'),
  runs: wholeFrom(0, 'that they come from'),
  rule: closed({
    toleranceM: notNegative('of mean diameter to either side, m'),
    strings: wholeFrom(1, 'of a recipe'),
    runs: wholeFrom(1, 'of a recipe'),
    familyStrings: wholeFrom(1, 'of a family'),
    familyRuns: wholeFrom(1, 'of a family'),
    shareOfTolerance: share('tolerance that half an interval may reach'),
    agreesWithin: notNegative('standard deviations'),
  }),
  noise: closed(
    {
      stringM: notNegative('string to string, m'),
      runM: notNegative('set-up to set-up, m'),
      stringWeight: share('unit weight, string to string'),
      runWeight: share('unit weight, set-up to set-up'),
    },
    'standard deviations of what no seat explains',
  ),
  ofAll: unknowns,
  families: Type.Array(family),
  diameters: points('m'),
  weights: points('kg/m, at the diameter expected'),
  outliers: Type.Array(outlier, { description: 'the farthest first' }),
  outlierCount: wholeFrom(0, 'in all'),
  oddLots: Type.Array(
    closed({
      wireId: text(),
      lot: text(),
      spools: Type.Array(closed({ id, name: text() }), { description: 'of that lot' }),
      standardised: Type.Number({ description: 'in standard uncertainties of the size stated' }),
    }),
  ),
  recipes: Type.Array(recipe),
  next: Type.Array(next, { description: 'what to measure next, what teaches most first' }),
});
export const calibrationQuery = closed({});

export type CalibrationView = Static<typeof calibrationAnswer>;
