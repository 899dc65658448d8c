import type { RecipeChoice } from '../../../core/recipes/index.js';
import { useFigures } from '../../sight/figures.js';
import { useWords } from '../../words/language.js';
import { RECIPES_WORDS } from '../../words/recipes.js';
import { type Measure, measured, type Shown, shownAs } from './measures.js';

/** The measures of ways in words: what they are called, and a figure of one with its unit or without. */
export function useMeasureWords() {
  const words = useWords(RECIPES_WORDS);
  const figures = useFigures();
  const shown = (measure: Measure): Shown => shownAs(measure, figures.lengthUnit);
  const figure = (way: RecipeChoice, measure: Measure): string => {
    const value = measured(way, measure);
    const { perKept, decimals } = shown(measure);
    return value === undefined ? '—' : figures.number(value * perKept, decimals);
  };
  return {
    shownAs: shown,
    figure,
    heading: (measure: Measure): string =>
      [words.measures[measure], shown(measure).unit].filter((part) => part !== '').join(', '),
    whole: (way: RecipeChoice, measure: Measure): string =>
      `${words.measures[measure]} ${figure(way, measure)} ${shown(measure).unit}`.trim(),
  };
}
