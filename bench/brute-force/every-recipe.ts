import { materialOfWrapAlloy, type RecipeSearch, usualCoreRatio } from '../../src/core/recipes/index.js';
import { stringBody } from '../../src/core/string/index.js';
import { metresFromThou } from '../../src/core/units/index.js';

/** Builds and weighs a string of every core with every wrap, then holds each within tolerance against all the others. */
export function everyRecipe(search: RecipeSearch): string[] {
  const gaugeM = metresFromThou(search.gaugeThou);
  const within: { name: string; row: number[] }[] = [];
  for (const { wireId, priceMinorPerKg: corePrice, ...core } of search.cores) {
    const share = core.sizeM / gaugeM;
    for (const wrap of search.wraps) {
      if (materialOfWrapAlloy(wrap.alloy) !== search.material) continue;
      const layer = { wireDiameterM: wrap.wireDiameterM, alloy: wrap.alloy, gap: 0 };
      const made = stringBody({ kind: 'wound', core, layers: [layer] });
      if (!made.ok || share < 0.18 || share > 0.85) continue;
      const body = made.value;
      if (Math.abs(body.meanDiameterM - gaugeM) > search.toleranceM) continue;
      within.push({
        name: `${wireId} + ${wrap.wireId}`,
        row: [
          body.bendingStiffnessNM2,
          75 / body.breakingLoadN!,
          body.bendingStiffnessNM2 / (75 * 0.648 ** 2),
          Math.abs(body.coreRatio - usualCoreRatio(search.gaugeThou)),
          body.coreMassKgPerM * corePrice! + body.wrapMassKgPerM * wrap.priceMinorPerKg!,
        ].map(Math.fround),
      });
    }
  }
  return within
    .filter(({ row }) => !within.some((other) => beats(other.row, row)))
    .map(({ name }) => name)
    .sort();
}

const beats = (a: readonly number[], b: readonly number[]): boolean =>
  a.every((value, column) => value <= b[column]!) && a.some((value, column) => value < b[column]!);
