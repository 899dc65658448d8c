import type { StringMaterial } from '../../../core/recipes/index.js';
import { parseGauge } from '../../../core/units/index.js';
import type { RecordOf } from '../../api/use-records.js';

export type RecipeRecord = RecordOf<'recipe'>;

export interface RecipeWish {
  /** As typed; what reads as no gauge narrows nothing. */
  readonly gauge: string;
  readonly material: string;
  readonly state: string;
  readonly text: string;
}

/** The recipes that are wished to be seen, by material and then by gauge. */
export function wishedRecipes(recipes: readonly RecipeRecord[], wish: RecipeWish): readonly RecipeRecord[] {
  const gauge = parseGauge(wish.gauge);
  const text = wish.text.trim().toLowerCase();
  return recipes
    .filter(
      ({ state, body }) =>
        (!gauge.ok || body.gaugeThou === gauge.value) &&
        (wish.material === '' || body.material === wish.material) &&
        (wish.state === '' || state === wish.state) &&
        (text === '' || `${body.name}\n${body.note}`.toLowerCase().includes(text)),
    )
    .toSorted(
      (a, b) =>
        placeOf(a.body.material) - placeOf(b.body.material) ||
        a.body.gaugeThou - b.body.gaugeThou ||
        (a.body.name < b.body.name ? -1 : 1),
    );
}

/** Plain steel first, then the wraps in the order in which the page offers them. */
export const MATERIALS: readonly StringMaterial[] = [
  'plain-steel',
  'nickel-plated-steel',
  'pure-nickel',
  'stainless-steel',
  'phosphor-bronze',
  'bronze-80-20',
];

const placeOf = (material: StringMaterial): number => MATERIALS.indexOf(material);
