import { stringBody } from '../../core/string/index.js';
import type { MeasuredRun, ReadTransaction } from '../../store/index.js';
import type { RecipeRecord } from '../production/recipe-in-core.js';

/** What a run's strings should have been, by the version of the recipe that it was set up by. */
export interface Wanted {
  readonly isWound: boolean;
  readonly meanDiameterM: number;
  /** The largest that a micrometer finds by turning. */
  readonly largestDiameterM: number;
  readonly unitWeightKgPerM: number;
}

/** Reckoned once for each version of a recipe, with what calibration last taught of how wrap sits. */
export async function wantedOfRun(
  tx: ReadTransaction,
  runs: readonly SetUpBy[],
): Promise<(run: SetUpBy) => Wanted | undefined> {
  const seat = (await tx.records.all('settings'))[0]?.body.seat;
  const wanted = new Map<string, Wanted | undefined>();
  const keep = (recipe: RecipeRecord): void => {
    const made = stringBody(recipe.body.construction, seat);
    wanted.set(
      `${recipe.id} ${recipe.version}`,
      made.ok
        ? {
            isWound: made.value.kind === 'wound',
            meanDiameterM: made.value.meanDiameterM,
            largestDiameterM: made.value.caliperDiameterM,
            unitWeightKgPerM: made.value.linearDensityKgPerM,
          }
        : undefined,
    );
  };
  for (const recipe of await tx.records.all('recipe')) keep(recipe);
  const former = runs.filter((run) => !wanted.has(nameOf(run))).map(({ recipeId }) => recipeId);
  for (const id of new Set(former))
    for (const version of await tx.records.versions('recipe', id)) keep(version);
  return (run) => wanted.get(nameOf(run));
}

type SetUpBy = Pick<MeasuredRun, 'recipeId' | 'recipeVersion'>;

const nameOf = ({ recipeId, recipeVersion }: SetUpBy): string => `${recipeId} ${recipeVersion}`;
