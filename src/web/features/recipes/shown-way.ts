import type { RecipeChoice } from '../../../core/recipes/index.js';

/** A way that is shown: whether another beats it, and what is true of it on the page at this moment. */
export interface ShownWay {
  readonly key: string;
  readonly way: RecipeChoice;
  readonly isAhead: boolean;
  readonly isNow: boolean;
}
