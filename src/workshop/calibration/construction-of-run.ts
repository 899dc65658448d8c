import type { BodyOf, StoredRecord } from '../../contract/index.js';
import type { Construction } from '../../core/string/index.js';
import type { ReadTransaction } from '../../store/index.js';
import type { RecipeRecord } from '../production/recipe-in-core.js';

type Run = StoredRecord<BodyOf<'run'>>;

/** What a run's strings are made of, and the recipe that it counts for. */
export interface MadeBy {
  /** The recipe's id; with the version where the recipe is another by now, so that old strings do not speak for it. */
  readonly recipeId: string;
  readonly construction: Construction;
  /** Core, then wraps from inside outwards. */
  readonly wireIds: readonly string[];
}

/** The way from a run to the recipe as it stood when the run was set up; steps of its life count up the version too. */
export async function constructionOfRun(
  tx: Pick<ReadTransaction, 'records'>,
  runs: readonly Run[],
  recipes: readonly RecipeRecord[],
): Promise<(run: Run) => MadeBy | undefined> {
  const present = new Map(recipes.map((recipe) => [recipe.id, recipe]));
  const former = new Map<string, RecipeRecord>();
  const old = new Set(
    runs.flatMap(({ body }) =>
      present.get(body.recipeId)?.version === body.recipeVersion ? [] : [body.recipeId],
    ),
  );
  for (const id of old)
    for (const version of await tx.records.versions('recipe', id))
      former.set(`${id} ${version.version}`, version);
  return ({ body: { recipeId, recipeVersion } }) => {
    const now = present.get(recipeId);
    if (!now) return undefined;
    const then = former.get(`${recipeId} ${recipeVersion}`) ?? now;
    const { construction, coreWireId, wrapWireIds } = then.body;
    const isSame = then === now || JSON.stringify(construction) === JSON.stringify(now.body.construction);
    return {
      recipeId: isSame ? recipeId : `${recipeId} version ${recipeVersion}`,
      construction,
      wireIds: [coreWireId, ...wrapWireIds],
    };
  };
}
