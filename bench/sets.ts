import assert from 'node:assert/strict';
import { seededChance } from '../src/core/foundation/index.js';
import { chooseSets, type SetPosition, type StringCandidate, USUAL_WEIGHTS } from '../src/core/sets/index.js';
import { bestListsPositionByPosition, everySet, type PlainSetQuestion } from './brute-force/every-set.js';
import { machineDescription, report, reportRatio, time } from './measure.js';

/** Times the choice of a set, and asserts that the plain ways give the same sets. Run: npx tsx bench/sets.ts */
const chance = seededChance(12);
const rules = { stressLimit: 0.85, thickestPlainThou: 24, thinnestWoundThou: 17 };
const weights = { ...USUAL_WEIGHTS, step: 0.25 };

/** Invented strings, each of its own gauge, masses a little off the rule so that no two sets cost the same. */
function candidates(count: number): StringCandidate[] {
  return Array.from({ length: count }, (_, index) => {
    const kind = index < count / 4 ? 'plain' : 'wound';
    const gaugeThou = kind === 'plain' ? 7 + (index * 68) / count : 17 + ((index - count / 4) * 60) / count;
    const areaM2 = (Math.PI / 4) * (gaugeThou * 2.54e-5) ** 2;
    const coreM2 = kind === 'plain' ? areaM2 : (Math.PI / 4) * ((9 + gaugeThou / 6) * 2.54e-5) ** 2;
    const density = (kind === 'plain' ? 7850 : 6400) * (0.98 + 0.04 * chance.next());
    return {
      id: `string ${index}`,
      gaugeThou,
      kind,
      material: kind === 'plain' ? 'plain-steel' : 'nickel-plated-steel',
      recipeId: `recipe ${index}`,
      linearDensityKgPerM: density * areaM2,
      axialStiffnessN: 2e11 * coreM2,
      breakingLoadN: 2.5e9 * coreM2,
      onShelf: chance.whole(0, 2),
    };
  });
}

const position = (frequencyHz: number, more: Partial<SetPosition> = {}): SetPosition => ({
  speakingLengthM: 0.648,
  stretchingLengthM: 0.85,
  frequencyHz,
  targetTensionN: 60 + 20 * chance.next(),
  weight: 1,
  ...more,
});
const TWELVE_HZ = [329.6, 329.6, 246.9, 246.9, 392, 196, 293.7, 146.8, 220, 110, 164.8, 82.4];
const FALLING_HZ = Array.from({ length: 12 }, (_, index) => 330 * 2 ** (-index / 5));

function compare(question: PlainSetQuestion, plainWay: typeof everySet, count: number): void {
  const chosen = chooseSets({ ...question, count });
  assert.ok(chosen.ok);
  const plain = plainWay(question, count);
  assert.deepEqual(
    chosen.value.map(({ strings }) => strings.map(({ candidate }) => candidate.id)),
    plain.map(({ ids }) => ids),
  );
  // Costs are kept in ticks of 2^-30, rounded once a position and once a step.
  for (const [rank, { cost }] of chosen.value.entries())
    assert.ok(Math.abs(cost - plain[rank]!.cost) < 23 * 2 ** -31 + 1e-12);
}

console.log(machineDescription());

const twelve: PlainSetQuestion = {
  positions: TWELVE_HZ.map((hz) => position(hz)),
  candidates: candidates(150),
  rules,
  weights,
};
const chosen = time(() => chooseSets({ ...twelve, count: 10 }), 300);
report('twelve-string, 150 candidates, 10 best', chosen, 2);
const falling = { ...twelve, positions: FALLING_HZ.map((hz) => position(hz)) };
report(
  'twelve falling pitches, 150 candidates, 10 best',
  time(() => chooseSets({ ...falling, count: 10 }), 300),
  2,
);
const felt = {
  ...twelve,
  positions: twelve.positions.map((each) => ({ ...each, targetBendForceN: 6 + 3 * chance.next() })),
  weights: { ...weights, pull: 0.5, bend: 0.5 },
};
report(
  'twelve-string, pull and bend force',
  time(() => chooseSets({ ...felt, count: 10 }), 300),
  2,
);

compare(twelve, bestListsPositionByPosition, 10);
compare(falling, bestListsPositionByPosition, 10);
const lists = time(() => bestListsPositionByPosition(twelve, 10), 3);
report('the same by lists position by position, equal answers', lists);
reportRatio('lists position by position', lists, chosen);

const small: PlainSetQuestion = {
  ...twelve,
  positions: [329.6, 246.9, 196, 146.8].map((hz) => position(hz)),
  candidates: candidates(32),
};
compare(small, everySet, 10);
const chosenSmall = time(() => chooseSets({ ...small, count: 10 }), 300);
const tried = time(() => everySet(small, 10), 3);
report('4 positions, 32 candidates, 10 best', chosenSmall);
report('the same by trying every set, equal answers', tried);
reportRatio('trying every set', tried, chosenSmall);
