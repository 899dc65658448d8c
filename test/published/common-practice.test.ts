import { describe, expect, it } from 'vitest';
import { grossesFromStrings, STRINGS_PER_GROSS, stringsFromGrosses } from '../../src/core/planning/index.js';
import {
  type OfferedCore,
  type OfferedWrap,
  recipeBody,
  recipesForGauge,
  settledRecipe,
} from '../../src/core/recipes/index.js';
import {
  candidateOf,
  chooseSets,
  freeGauges,
  type Instrument,
  parseTuning,
  type StringCandidate,
  targetsFor,
  usualTuning,
} from '../../src/core/sets/index.js';
import { metresFromInches, metresFromThou } from '../../src/core/units/index.js';

const steps = (from: number, to: number, step: number): number[] =>
  Array.from({ length: Math.round((to - from) / step) + 1 }, (_, index) => from + index * step);

const core = (shape: 'hex' | 'round', thou: number): OfferedCore => ({
  wireId: `${shape} ${thou}`,
  shape,
  sizeM: metresFromThou(thou),
  alloy: 'music-wire',
  strengthTable: 'astm-a228',
});
const cores = [
  ...steps(10, 22, 0.5).map((thou) => core('hex', thou)),
  ...steps(8, 20, 0.5).map((thou) => core('round', thou)),
];
const wraps: OfferedWrap[] = steps(2, 24, 0.25).map((thou) => ({
  wireId: `wrap ${thou}`,
  wireDiameterM: metresFromThou(thou),
  alloy: 'nickel-plated-steel',
}));

/** Plain strings by halves, wound ones by twos: what a shop usually keeps. The recipe nearest to the usual core ratio. */
const candidates: StringCandidate[] = [
  ...steps(8, 20, 0.5).map((gauge) => candidate(gauge, 'plain-steel')),
  ...steps(20, 60, 2).map((gauge) => candidate(gauge, 'nickel-plated-steel')),
];

function candidate(gaugeThou: number, material: 'plain-steel' | 'nickel-plated-steel'): StringCandidate {
  const hexes = cores.filter(({ shape }) => shape === (material === 'plain-steel' ? 'round' : 'hex'));
  const found = recipesForGauge({
    gaugeThou,
    material,
    cores: hexes,
    wraps,
    toleranceM: metresFromThou(0.3),
  });
  if (!found.ok) throw new Error(JSON.stringify(found.fault));
  const recipe = settledRecipe(found.value.front[0]!, { id: `${gaugeThou} ${material}`, state: 'predicted' });
  const body = recipeBody(recipe);
  if (!body.ok) throw new Error(body.fault.code);
  return candidateOf(recipe, body.value, { onShelf: 1 });
}

const guitar: Instrument = {
  name: 'six strings',
  scaleLengthsM: Array.from({ length: 6 }, () => metresFromInches(25.5)),
};
const byGauge = (gaugeThou: number, kind: 'plain' | 'wound') =>
  candidates.find((each) => each.gaugeThou === gaugeThou && each.kind === kind)!;
const liked = [
  byGauge(10, 'plain'),
  byGauge(13, 'plain'),
  byGauge(17, 'plain'),
  byGauge(26, 'wound'),
  byGauge(36, 'wound'),
  byGauge(46, 'wound'),
];
const rules = { stressLimit: 0.8, thickestPlainThou: 20, thinnestWoundThou: 20 };

describe('common practice, no source: a wound gauge is called core + 2 wraps', () => {
  it('a 26 is a 10 core with an 8 wrap as well as a 20 core with a 3', () => {
    const found = recipesForGauge({
      gaugeThou: 26,
      material: 'nickel-plated-steel',
      cores: [core('round', 10), core('round', 20)],
      wraps: wraps.filter(({ wireId }) => wireId === 'wrap 8' || wireId === 'wrap 3'),
      toleranceM: metresFromThou(0.75),
    });
    if (!found.ok) throw new Error(found.fault.code);
    const builds = found.value.front.map(({ coreWireId, wrapWireIds }) => `${coreWireId} + ${wrapWireIds}`);
    expect(builds.sort()).toEqual(['round 10 + wrap 8', 'round 20 + wrap 3']);
  });
});

describe('common practice, no source: strings are counted in grosses', () => {
  it('a gross is twelve dozen, 144; nine grosses a day are 1,296 strings', () => {
    expect(STRINGS_PER_GROSS).toBe(144);
    expect(stringsFromGrosses(9)).toBe(1296);
    expect(grossesFromStrings(1296)).toBe(9);
  });
});

describe('common practice, no source: from 10-13-17-26-36-46 in standard to open D at one scale', () => {
  const openD = parseTuning('D A D F# A D', usualTuning(6));
  if (!openD.ok) throw new Error(openD.fault.code);
  const { tuning } = openD.value;
  const targets = targetsFor({
    instrument: guitar,
    tuning,
    wish: { target: 'feel' },
    liked: { instrument: guitar, tuning: usualTuning(6)!, strings: liked },
  });
  if (!targets.ok) throw new Error(targets.fault.code);
  const { positions, weights } = targets.value;
  const chosen = chooseSets({ positions, candidates, rules, weights });
  if (!chosen.ok) throw new Error(chosen.fault.code);
  const [best] = chosen.value;
  const strings = best!.strings.map(({ candidate }) => candidate);

  it('a maker picks 11, 13.5 to 14.5, 17 or 18, 26, 36 and 50 to 52', () => {
    const gauges = strings.map(({ gaugeThou }) => gaugeThou);
    expect(gauges[0]).toBe(11);
    expect(gauges[1]).toBeGreaterThanOrEqual(13.5);
    expect(gauges[1]).toBeLessThanOrEqual(14.5);
    expect(gauges[2]).toBeGreaterThanOrEqual(17);
    expect(gauges[2]).toBeLessThanOrEqual(18);
    expect(gauges.slice(3, 5)).toEqual([26, 36]);
    expect(gauges[5]).toBeGreaterThanOrEqual(50);
    expect(gauges[5]).toBeLessThanOrEqual(52);
    expect(strings.map(({ kind }) => kind)).toEqual(['plain', 'plain', 'plain', 'wound', 'wound', 'wound']);
  });

  it('and every string then pulls within 6 % of what it pulled before', () => {
    for (const { tensionN, wishedTensionN } of best!.strings)
      expect(Math.abs(tensionN / wishedTensionN - 1)).toBeLessThan(0.06);
  });

  it('the gauge that would be exact grows by the fall in pitch: 2^(2/12) for two semitones, 2^(1/12) for one', () => {
    const free = (position: number) =>
      freeGauges(positions[position]!, candidates).find(({ kind }) => kind === 'plain')!.gaugeThou;
    expect(free(0)).toBeCloseTo(10 * 2 ** (2 / 12), 6);
    expect(free(1)).toBeCloseTo(13 * 2 ** (2 / 12), 6);
    expect(free(2)).toBeCloseTo(17 * 2 ** (1 / 12), 6);
    const low = freeGauges(positions[5]!, candidates).find(({ kind }) => kind === 'wound')!.gaugeThou;
    expect(low).toBeGreaterThan(50);
    expect(low).toBeLessThan(53);
  });
});
