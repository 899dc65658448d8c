import assert from 'node:assert/strict';
import {
  type OfferedCore,
  type OfferedWrap,
  type RecipeSearch,
  recipesForGauge,
} from '../src/core/recipes/index.js';
import { metresFromThou } from '../src/core/units/index.js';
import { everyRecipe } from './brute-force/every-recipe.js';
import { machineDescription, report, reportRatio, time } from './measure.js';

/** Times the recipes for a gauge, and asserts that weighing every pair gives the same ones. Run: npx tsx bench/recipes.ts */
const cores: OfferedCore[] = Array.from({ length: 100 }, (_, index) => ({
  wireId: `core ${index}`,
  shape: index % 3 === 0 ? 'round' : 'hex',
  sizeM: metresFromThou(8 + index * 0.22),
  alloy: 'music-wire',
  strengthTable: 'astm-a228',
  priceMinorPerKg: 900 + ((index * 37) % 101),
}));
const wraps: OfferedWrap[] = Array.from({ length: 120 }, (_, index) => ({
  wireId: `wrap ${index}`,
  wireDiameterM: metresFromThou(2 + index * 0.2),
  alloy: 'nickel-plated-steel',
  priceMinorPerKg: 2200 + ((index * 53) % 211),
}));
const search = (gaugeThou: number, maxLayers: 1 | 2): RecipeSearch => ({
  gaugeThou,
  material: 'nickel-plated-steel',
  toleranceM: metresFromThou(0.5),
  cores,
  wraps,
  maxLayers,
});

console.log(machineDescription());
for (const gaugeThou of [26, 46, 60]) {
  const found = recipesForGauge(search(gaugeThou, 1));
  assert.ok(found.ok);
  const names = found.value.front
    .map(({ coreWireId, wrapWireIds }) => [coreWireId, ...wrapWireIds].join(' + '))
    .sort();
  assert.deepEqual(names, everyRecipe(search(gaugeThou, 1)));
  console.log(
    `a ${gaugeThou}: ${found.value.considered} pairs, ${found.value.withinTolerance} within tolerance, ${names.length} worth choosing from`,
  );
  const ours = time(() => recipesForGauge(search(gaugeThou, 1)), 200);
  report('  prefiltered by diameter', ours, 5);
  const plain = time(() => everyRecipe(search(gaugeThou, 1)), 10);
  report('  every pair weighed, equal answers', plain);
  reportRatio('  every pair weighed', plain, ours);
}
const layered = recipesForGauge(search(80, 2));
assert.ok(layered.ok);
console.log(
  `an 80 of one layer or two: ${layered.value.considered} builds, ${layered.value.withinTolerance} within tolerance`,
);
report(
  '  prefiltered by diameter',
  time(() => recipesForGauge(search(80, 2)), 50),
);
