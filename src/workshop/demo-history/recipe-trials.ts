import { stepRecipe } from '../production/step-recipe.js';
import type { InHand } from './act.js';
import type { HistoryBook } from './history-book.js';

/** After so many runs the owner calls a recipe calibrated. */
const RUNS_ON_TRIAL = 5;

/** The owner puts a recipe on trial with its first run, and settles it when it has been wound often enough. */
export async function tryRecipe({ ask }: InHand, book: HistoryBook, recipeId: string): Promise<void> {
  const recipe = book.recipes.get(recipeId);
  if (!recipe) return;
  recipe.runs++;
  const step =
    recipe.state === 'predicted'
      ? 'try'
      : recipe.state === 'on-trial' && recipe.runs > RUNS_ON_TRIAL
        ? 'calibrate'
        : undefined;
  if (!step) return;
  const stepped = await ask(stepRecipe, { id: recipeId, expectedVersion: recipe.version, step, note: '' });
  recipe.version = stepped.version;
  recipe.state = stepped.state;
}
