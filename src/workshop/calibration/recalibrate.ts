import { recalibrate as definition, type InputOf } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import {
  calibratedSeat,
  type RecipeStanding,
  recipeStandings,
  USUAL_TOLERANCE_M,
} from '../../core/recipes/index.js';
import { stepRecipe } from '../production/step-recipe.js';
import { recordAsSeen, saveRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase, type Work } from '../use-case.js';
import { asked, type ShopCalibration, shopCalibration } from './shop-calibration.js';

/**
 * Settles how wrap sits in this shop by its measured strings, family by family, so that whatever is reckoned from now
 * on goes by it; and calls recipes calibrated that a person names and the rule allows. All of it, or nothing.
 */
export const recalibrate = useCase(definition, async (work, { settingsId, expectedVersion, recipes }) => {
  const settled = await recordAsSeen(work.tx, 'settings', { id: settingsId, expectedVersion });
  const shop = await shopCalibration(work.tx);
  if (shop.strings.length === 0) refuse({ code: 'calibration.nothing-measured' });
  const seat = calibratedSeat(shop.calibration, USUAL_TOLERANCE_M) as NonNullable<typeof settled.body.seat>;
  const { noise, noiseDegrees } = shop.calibration;
  const spread = { stringM: noise.stringM, degrees: noiseDegrees };
  const body = { ...settled.body, seat, spread };
  const settings = await saveRecord(work, 'settings', { id: settled.id, expectedVersion, body });
  return succeed({ settings, recipes: await stepped(work, shop, recipes) });
});

type Named = InputOf<typeof definition>['recipes'];

/** By the use case that anybody steps a recipe with; only the rule stands before it. */
async function stepped(work: Work, { recipes, calibration }: ShopCalibration, named: Named) {
  const done = [];
  for (const { id, expectedVersion } of named) {
    const record = recipes.find((recipe) => recipe.id === id);
    if (!record) return refuse({ code: 'record.missing', kind: 'recipe', id });
    const [standing] = recipeStandings(calibration, [asked(record)], USUAL_TOLERANCE_M);
    refuseUnready(record.body.name, standing!);
    const step = await stepRecipe.run(work, { id, expectedVersion, step: 'calibrate', note: '' });
    if (!step.ok) return refuse(step.fault);
    done.push(step.value);
  }
  return done;
}

function refuseUnready(recipeName: string, standing: RecipeStanding): void {
  if (standing.mayBeCalibrated) return;
  const { strings, runs, halfIntervalM, toleranceM, hasStrings, isNarrow, agrees } = standing;
  refuse({
    code: 'calibration.recipe-not-ready',
    recipeName,
    strings,
    runs,
    halfIntervalM,
    toleranceM,
    hasStrings,
    isNarrow,
    agrees,
  });
}
