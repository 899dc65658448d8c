import { type BodyOf, materialInWords } from '../../../contract/index.js';
import { formatGauge } from '../../../core/units/index.js';
import type { FieldWords } from '../../parts/fields-apart.js';
import type { Figures } from '../../sight/figures.js';
import type { RECIPES_WORDS } from '../../words/recipes.js';

export interface RecipeFieldsParts {
  readonly words: (typeof RECIPES_WORDS)['en'];
  readonly figures: Figures;
  readonly wireName: (id: string) => string;
}

/** A version of a recipe in words, field by field, for laying two side by side. */
export function recipeFields(
  { body, state }: { readonly body: BodyOf<'recipe'>; readonly state?: string },
  { words, figures, wireName }: RecipeFieldsParts,
): readonly FieldWords[] {
  const { fields } = words;
  const { construction, wrapWireIds } = body;
  const layers = construction.kind === 'plain' ? [] : construction.layers;
  const names = [
    { wrap: fields.wrap, gap: fields.gap, rolled: fields.rolled },
    { wrap: fields.outerWrap, gap: fields.outerGap, rolled: fields.outerRolled },
  ];
  return [
    { name: fields.name, value: body.name },
    { name: fields.gauge, value: formatGauge(body.gaugeThou) },
    { name: fields.material, value: materialInWords(body.material) },
    { name: fields.core, value: wireName(body.coreWireId) },
    ...layers.flatMap(({ gap, rolledThicknessM }, at): readonly FieldWords[] => [
      { name: names[at]!.wrap, value: wireName(wrapWireIds[at] ?? '') },
      { name: names[at]!.gap, value: `${figures.number(gap * 100, 2)} %` },
      ...(rolledThicknessM === undefined
        ? []
        : [{ name: names[at]!.rolled, value: figures.diameter(rolledThicknessM) }]),
    ]),
    { name: fields.note, value: body.note || '—' },
    ...(state === undefined ? [] : [{ name: fields.state, value: words.states[state] ?? state }]),
  ];
}
