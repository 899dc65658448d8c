import type { CalibrationView } from '../../contract/index.js';
import {
  CALIBRATED_RULE,
  type Calibration,
  calibrationPoints,
  familyStandings,
  nextMeasurements,
  type Outlier,
  oddLots,
  outliers,
  type RecipeStanding,
  recipeStandings,
  taughtSeat,
  USUAL_TOLERANCE_M,
} from '../../core/recipes/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { RecipeRecord } from '../production/recipe-in-core.js';
import { readLotName } from './lot-name.js';
import { asked, shopCalibration } from './shop-calibration.js';

/** What fits on a screen; the rest is told in bands and counts. */
const MOST_POINTS = 250;
const MOST_OUTLIERS = 100;
const MOST_NEXT = 12;

/** What the shop's measured strings teach, as a screen shows it; nothing is written. */
export async function calibrationSeen(tx: ReadTransaction, now: string): Promise<Readable<CalibrationView>> {
  const { recipes, strings, calibration } = await shopCalibration(tx);
  const present = recipes.filter(({ state }) => state !== 'retired');
  const names = new Map(present.map(({ id, body }) => [id, body.name]));
  const questions = present.map(asked);
  const { stringM, runM, stringWeight, runWeight } = calibration.noise;
  const found = outliers(calibration);
  const { diameters, weights } = calibrationPoints(calibration, MOST_POINTS);
  return {
    at: now,
    ...(await settingsSeen(tx)),
    strings: strings.length,
    runs: new Set(strings.map(({ runId }) => runId)).size,
    rule: { toleranceM: USUAL_TOLERANCE_M, ...CALIBRATED_RULE },
    noise: { stringM, runM, stringWeight, runWeight },
    ofAll: taughtSeat(calibration, ''),
    families: familiesSeen(calibration),
    diameters,
    weights,
    outliers: await withRunNames(tx, found.slice(0, MOST_OUTLIERS)),
    outlierCount: found.length,
    oddLots: await oddLotsSeen(tx, calibration),
    recipes: recipeStandings(calibration, questions, USUAL_TOLERANCE_M).map((standing, at) =>
      recipeSeen(present[at]!, standing),
    ),
    next: nextMeasurements(calibration, questions)
      .slice(0, MOST_NEXT)
      .map((next) => ({ ...next, name: names.get(next.recipeId) ?? '' })),
  };
}

/** The same, but that nobody need write to it. */
type Readable<Value> = Value extends object
  ? { readonly [Field in keyof Value]: Readable<Value[Field]> }
  : Value;

async function settingsSeen(tx: ReadTransaction): Promise<Pick<Readable<CalibrationView>, 'settings'>> {
  const [settled] = await tx.records.all('settings');
  if (!settled) return {};
  const families = settled.body.seat?.families ?? [];
  const strings = families.reduce((sum, each) => sum + (each.machineId === undefined ? each.strings : 0), 0);
  return { settings: { id: settled.id, version: settled.version, strings } };
}

const withRunNames = (
  tx: ReadTransaction,
  found: readonly Outlier[],
): Promise<Readable<CalibrationView>['outliers']> =>
  Promise.all(
    found.map(async (outlier) => {
      const run = await tx.records.get('run', outlier.runId);
      return { ...outlier, runName: run?.body.name ?? '' };
    }),
  );

/** Odd lots with their spools, which is what a hand can take off the shelf and measure. */
const oddLotsSeen = (
  tx: ReadTransaction,
  calibration: Calibration,
): Promise<Readable<CalibrationView>['oddLots']> =>
  Promise.all(
    oddLots(calibration).map(async ({ lot: name, standardised }) => {
      const { wireId, lot } = readLotName(name);
      const spools = await tx.records.all('spool', { lot });
      return {
        wireId,
        lot,
        spools: spools
          .filter(({ body }) => body.wireId === wireId)
          .map(({ id, body }) => ({ id, name: body.name })),
        standardised,
      };
    }),
  );

const familiesSeen = (calibration: Calibration): Readable<CalibrationView>['families'] =>
  familyStandings(calibration, USUAL_TOLERANCE_M).map(({ byMachine, ...standing }) => ({
    ...standing,
    unknowns: taughtSeat(calibration, standing.key),
    machines: [...byMachine].map(([machineId, strings]) => ({
      machineId,
      strings,
      unknowns: taughtSeat(calibration, standing.key, machineId),
    })),
  }));

function recipeSeen(
  { id, version, state, body }: RecipeRecord,
  { toleranceM: _, recipeId: __, ...standing }: RecipeStanding,
): Readable<CalibrationView>['recipes'][number] {
  const suggests = suggested(state, standing);
  return { recipeId: id, version, name: body.name, state, ...standing, ...(suggests ? { suggests } : {}) };
}

/** A recipe that was measured is on trial; one that meets the rule may be called calibrated. A person says so. */
function suggested(
  state: string,
  { strings, mayBeCalibrated }: Pick<RecipeStanding, 'strings' | 'mayBeCalibrated'>,
): 'try' | 'calibrate' | undefined {
  if (state === 'predicted' && strings > 0) return 'try';
  return state === 'on-trial' && mayBeCalibrated ? 'calibrate' : undefined;
}
