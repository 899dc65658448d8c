import type { Merit, RecipeChoice } from './recipe-choice.js';

/** Each merit with the figure that is smallest where it is due; undefined is never due. */
const MEASURES: readonly (readonly [Merit, (choice: RecipeChoice) => number | undefined])[] = [
  ['nearest-gauge', (choice) => Math.abs(choice.offGaugeM)],
  ['most-flexible', (choice) => choice.figures.bendingStiffnessNM2],
  ['strongest', (choice) => choice.figures.stressShare],
  ['least-inharmonic', (choice) => choice.figures.inharmonicityB],
  ['nearest-core-ratio', (choice) => choice.figures.coreRatioDeviation],
  ['cheapest', (choice) => choice.figures.wireCostMinorPerM],
];

/** The choices, each told what it is best at among them. Equal figures share a merit. */
export function withMerits(choices: readonly RecipeChoice[]): RecipeChoice[] {
  const least = MEASURES.map(([, measure]) => Math.min(...choices.map((choice) => figure(measure(choice)))));
  return choices.map((choice) => ({
    ...choice,
    bestAt: MEASURES.filter(
      ([, measure], index) => figure(measure(choice)) === least[index] && measure(choice) !== undefined,
    ).map(([merit]) => merit),
  }));
}

/** To seven digits: figures of one core under two wraps differ in the sixteenth and are equal. Infinite where unknown. */
const figure = (value: number | undefined): number => Math.fround(value ?? Number.POSITIVE_INFINITY);
