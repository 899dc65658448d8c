import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { PRIOR_SEAT, stringBody } from '../string/index.js';
import { metresFromThou } from '../units/index.js';
import type { OfferedCore, OfferedWrap } from './offered-wire.js';
import type { RecipeChoice } from './recipe-choice.js';
import type { RecipeSearch } from './recipe-search.js';
import { recipesForGauge } from './recipes-for-gauge.js';

const hex = (thou: number, priceMinorPerKg?: number): OfferedCore => ({
  wireId: `hex ${thou}`,
  shape: 'hex',
  sizeM: metresFromThou(thou),
  alloy: 'music-wire',
  strengthTable: 'astm-a228',
  ...(priceMinorPerKg === undefined ? {} : { priceMinorPerKg }),
});
const round = (thou: number): OfferedCore => ({ ...hex(thou), wireId: `round ${thou}`, shape: 'round' });
const wrap = (
  thou: number,
  alloy: OfferedWrap['alloy'] = 'nickel-plated-steel',
  priceMinorPerKg?: number,
): OfferedWrap => ({
  wireId: `${alloy} ${thou}`,
  wireDiameterM: metresFromThou(thou),
  alloy,
  ...(priceMinorPerKg === undefined ? {} : { priceMinorPerKg }),
});
const range = (from: number, to: number, step = 1): number[] =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, index) => from + index * step);

const forty: RecipeSearch = {
  gaugeThou: 40,
  material: 'nickel-plated-steel',
  toleranceM: metresFromThou(0.5),
  cores: range(10, 24).map((thou) => hex(thou)),
  wraps: range(4, 20, 0.5).map((thou) => wrap(thou)),
};

const frontOf = (search: RecipeSearch): readonly RecipeChoice[] => {
  const answer = recipesForGauge(search);
  if (!answer.ok) throw new Error(JSON.stringify(answer.fault));
  return answer.value.front;
};
const faultOf = (search: RecipeSearch) => {
  const answer = recipesForGauge(search);
  if (answer.ok) throw new Error('expected no recipe');
  return answer.fault;
};
const named = (choice: RecipeChoice): string => [choice.coreWireId, ...choice.wrapWireIds].join(' + ');

describe('recipes for a gauge', () => {
  it('give every build within tolerance: those worth choosing from, and those that one of them beats', () => {
    const answer = recipesForGauge({ ...forty, toleranceM: metresFromThou(1.5) });
    if (!answer.ok) throw new Error('expected recipes');
    const { front, beaten, withinTolerance } = answer.value;
    expect(beaten.length).toBeGreaterThan(0);
    expect(new Set([...front, ...beaten].map(named)).size).toBe(withinTolerance);
    for (const { figures } of beaten) {
      const isBeaten = front.some(
        (better) =>
          better.figures.bendingStiffnessNM2 <= figures.bendingStiffnessNM2 * (1 + 1e-7) &&
          (better.figures.stressShare ?? 1) <= (figures.stressShare ?? 1) * (1 + 1e-7) &&
          better.figures.coreRatioDeviation <= figures.coreRatioDeviation + 1e-7,
      );
      expect(isBeaten).toBe(true);
    }
  });

  it('land within tolerance of it by the micrometer reading averaged over a rotation', () => {
    const front = frontOf(forty);
    expect(front.length).toBeGreaterThan(2);
    for (const choice of front) {
      expect(Math.abs(choice.meanDiameterM - metresFromThou(40))).toBeLessThanOrEqual(
        metresFromThou(0.5) + 1e-12,
      );
      expect(choice.caliperDiameterM).toBeGreaterThan(choice.meanDiameterM);
    }
  });

  it('are just those that no other within tolerance beats, held against every pair of wires built and weighed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 70 }),
        fc.uniqueArray(fc.integer({ min: 8, max: 30 }), { minLength: 1, maxLength: 8 }),
        fc.uniqueArray(fc.integer({ min: 3, max: 24 }), { minLength: 1, maxLength: 8 }),
        (gaugeThou, coreSizes, wrapSizes) => {
          const search: RecipeSearch = {
            ...forty,
            gaugeThou,
            maxLayers: 1,
            toleranceM: metresFromThou(1.2),
            cores: coreSizes.map((thou) => hex(thou, 900 + thou)),
            wraps: wrapSizes.map((thou) => wrap(thou, 'nickel-plated-steel', 2600 - 11 * thou)),
          };
          const answer = recipesForGauge(search);
          const found = answer.ok ? answer.value.front.map(named).sort() : [];
          expect(found).toEqual(everyPairWeighed(search));
        },
      ),
      { numRuns: 60 },
    );
  });

  it('say what each is best at: the thinnest core bends easiest, the thickest bears most', () => {
    const front = frontOf(forty);
    const byCore = front.toSorted((a, b) => a.figures.coreRatio - b.figures.coreRatio);
    expect(byCore[0]!.bestAt).toContain('most-flexible');
    expect(byCore[0]!.bestAt).toContain('least-inharmonic');
    expect(byCore.at(-1)!.bestAt).toContain('strongest');
    expect(front[0]!.bestAt).toContain('nearest-core-ratio');
  });

  it('name a cheapest only where every price of one is known', () => {
    expect(frontOf(forty).flatMap((choice) => choice.bestAt)).not.toContain('cheapest');
    const priced = frontOf({
      ...forty,
      cores: range(12, 20).map((thou) => hex(thou, 1000)),
      wraps: range(8, 16, 0.5).map((thou) => wrap(thou, 'nickel-plated-steel', 3000)),
    });
    const cheapest = priced.filter((choice) => choice.bestAt.includes('cheapest'));
    const costs = priced.map((choice) => choice.figures.wireCostMinorPerM!);
    expect(cheapest.map((choice) => choice.figures.wireCostMinorPerM)).toContain(Math.min(...costs));
  });

  it('cost what their wires weigh: both at one price is price times unit weight', () => {
    const [only] = frontOf({
      ...forty,
      cores: [hex(16, 2000)],
      wraps: [wrap(11.5, 'nickel-plated-steel', 2000)],
      toleranceM: metresFromThou(1),
    });
    expect(only!.figures.wireCostMinorPerM).toBeCloseTo(2000 * only!.figures.linearDensityKgPerM, 9);
  });

  it('wrap only with what the material is called after', () => {
    const mixed = frontOf({
      ...forty,
      wraps: [...forty.wraps, ...range(8, 14).map((thou) => wrap(thou, 'phosphor-bronze'))],
    });
    for (const choice of mixed)
      expect(choice.wrapWireIds.every((id) => id.startsWith('nickel-plated-steel'))).toBe(true);
  });

  it('do not hang on the order in which wires are listed', () => {
    const turned = { ...forty, cores: forty.cores.toReversed(), wraps: forty.wraps.toReversed() };
    expect(frontOf(turned).map(named)).toEqual(frontOf(forty).map(named));
  });

  it('take the pull from a pitch where one is given', () => {
    const sounding = { speakingLengthM: 0.648, frequencyHz: 110 };
    for (const { figures } of frontOf({ ...forty, sounding })) {
      expect(figures.tensionN).toBeCloseTo(figures.linearDensityKgPerM * (2 * 0.648 * 110) ** 2, 9);
    }
  });
});

describe('recipes of two layers', () => {
  const eighty: RecipeSearch = {
    ...forty,
    gaugeThou: 80,
    cores: range(18, 30).map((thou) => hex(thou)),
    wraps: range(6, 24).map((thou) => wrap(thou)),
    toleranceM: metresFromThou(0.6),
  };

  it('are tried unasked on a thick gauge, never where one layer is asked for', () => {
    const layers = (search: RecipeSearch) =>
      new Set(frontOf(search).map((choice) => choice.wrapWireIds.length));
    expect(layers(eighty).has(2)).toBe(true);
    expect(layers({ ...eighty, maxLayers: 1, wraps: range(20, 34, 0.5).map((thou) => wrap(thou)) })).toEqual(
      new Set([1]),
    );
  });

  it('lay the thinner wrap inside', () => {
    for (const choice of frontOf({ ...eighty, maxLayers: 2 })) {
      if (choice.construction.kind !== 'wound') continue;
      const [inner, outer] = choice.construction.layers;
      if (outer) expect(inner.wireDiameterM).toBeLessThanOrEqual(outer.wireDiameterM);
    }
  });
});

describe('a plain recipe', () => {
  const plain: RecipeSearch = {
    ...forty,
    gaugeThou: 10,
    material: 'plain-steel',
    cores: [round(9.5), round(10), round(10.5), hex(10)],
    wraps: [],
    toleranceM: metresFromThou(0.2),
  };

  it('is round core wire of that size', () => {
    expect(frontOf(plain).map(named)).toEqual(['round 10']);
    expect(frontOf(plain)[0]!.construction.kind).toBe('plain');
  });

  it('that the shop has no wire for is answered with the sizes on either side', () => {
    const fault = faultOf({ ...plain, gaugeThou: 12 });
    expect(fault).toMatchObject({ code: 'recipe.no-plain-wire', nearest: [{ coreWireId: 'round 10.5' }] });
    const between = faultOf({ ...plain, cores: [round(9), round(12), hex(10)] });
    expect(between).toMatchObject({ nearest: [{ coreWireId: 'round 9' }, { coreWireId: 'round 12' }] });
  });
});

describe('a gauge that cannot be made', () => {
  const short: RecipeSearch = {
    ...forty,
    cores: [hex(14), hex(16)],
    wraps: [wrap(8), wrap(16)],
    toleranceM: metresFromThou(0.3),
  };

  it('is answered with the wrap that would make it, and that wrap then does', () => {
    const fault = faultOf(short);
    if (fault.code !== 'recipe.none-within-tolerance') throw new Error(fault.code);
    const needed = fault.wrapsNeeded[0]!;
    const bought: OfferedWrap = {
      wireId: 'bought',
      wireDiameterM: needed.wireDiameterM,
      alloy: 'nickel-plated-steel',
    };
    const [made] = frontOf({ ...short, wraps: [...short.wraps, bought], toleranceM: 1e-9 });
    expect(made!.coreWireId).toBe(needed.coreWireId);
    expect(made!.wrapWireIds).toEqual(['bought']);
  });

  it('is answered with the nearest gauge that can be, and nothing nearer can', () => {
    const fault = faultOf(short);
    if (fault.code !== 'recipe.none-within-tolerance') throw new Error(fault.code);
    const nearest = fault.nearest!;
    const offsM = short.cores.flatMap((core) =>
      short.wraps.map((each) => Math.abs(bodyOf(core, each).meanDiameterM - metresFromThou(40))),
    );
    expect(Math.abs(nearest.offGaugeM)).toBeCloseTo(Math.min(...offsM), 12);
    const made = frontOf({ ...short, gaugeThou: nearest.gaugeThou, toleranceM: 1e-9 });
    expect(made.map(named)).toContain([nearest.coreWireId, ...nearest.wrapWireIds].join(' + '));
  });

  it('for want of wire of the material says so', () => {
    expect(faultOf({ ...short, material: 'phosphor-bronze' }).code).toBe('recipe.no-wrap-of-material');
    expect(faultOf({ ...short, cores: [] }).code).toBe('recipe.no-core');
  });
});

const bodyOf = (core: OfferedCore, each: OfferedWrap) => {
  const { wireId: _core, priceMinorPerKg: _price, ...wire } = core;
  const made = stringBody(
    { kind: 'wound', core: wire, layers: [{ wireDiameterM: each.wireDiameterM, alloy: each.alloy, gap: 0 }] },
    PRIOR_SEAT,
  );
  if (!made.ok) throw new Error(made.fault.code);
  return made.value;
};

/** Builds all pairs, keeps those within tolerance and of a sane core ratio, and drops each that another beats. */
function everyPairWeighed(search: RecipeSearch): string[] {
  const gaugeM = metresFromThou(search.gaugeThou);
  const target = Math.min(0.8, 0.2 + 8.8 / search.gaugeThou);
  const made = search.cores.flatMap((core) =>
    search.wraps.flatMap((each) => {
      const ratio = core.sizeM / gaugeM;
      if (ratio < 0.18 || ratio > 0.85) return [];
      const body = bodyOf(core, each);
      if (Math.abs(body.meanDiameterM - gaugeM) > search.toleranceM) return [];
      const row = [
        body.bendingStiffnessNM2,
        75 / body.breakingLoadN!,
        (Math.PI ** 2 * body.bendingStiffnessNM2) / (75 * 0.648 ** 2),
        Math.abs(body.coreRatio - target),
        body.coreMassKgPerM * core.priceMinorPerKg! + body.wrapMassKgPerM * each.priceMinorPerKg!,
      ];
      return [{ name: `${core.wireId} + ${each.wireId}`, row }];
    }),
  );
  const rounded = made.map(({ name, row }) => ({
    name,
    row: row.map((value) => Number(value.toPrecision(12))),
  }));
  const beats = (a: number[], b: number[]) =>
    a.every((value, column) => value <= b[column]!) && a.some((value, column) => value < b[column]!);
  return rounded
    .filter(({ row }) => !rounded.some((other) => beats(other.row, row)))
    .map(({ name }) => name)
    .sort();
}
