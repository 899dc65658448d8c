import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseSets, type SetWish } from './choose-sets.js';
import type { NoSetFault } from './no-set-fault.js';
import type { SetPosition } from './set-position.js';
import { USUAL_WEIGHTS } from './set-weights.js';
import type { StringCandidate } from './string-candidate.js';

const LENGTH_M = 0.648;
const STANDARD_HZ = [329.63, 246.94, 196, 146.83, 110, 82.41];
const rules = { stressLimit: 0.85, thickestPlainThou: 22, thinnestWoundThou: 17 };

/** Plain steel: mass, stiffness and a round 2,600 MPa of strength from the gauge. */
const plain = (gaugeThou: number, more: Partial<StringCandidate> = {}): StringCandidate => {
  const areaM2 = (Math.PI / 4) * (gaugeThou * 2.54e-5) ** 2;
  return {
    id: `plain ${gaugeThou}`,
    gaugeThou,
    kind: 'plain',
    material: 'plain-steel',
    recipeId: `plain ${gaugeThou}`,
    linearDensityKgPerM: 7850 * areaM2,
    axialStiffnessN: 2e11 * areaM2,
    breakingLoadN: 2.6e9 * areaM2,
    onShelf: 10,
    ...more,
  };
};

/** A wound string of 6,400 kg/m³ all over, on a core of 10 + gauge/6. */
const wound = (gaugeThou: number, more: Partial<StringCandidate> = {}): StringCandidate => {
  const coreM2 = (Math.PI / 4) * ((10 + gaugeThou / 6) * 2.54e-5) ** 2;
  return {
    ...plain(gaugeThou),
    id: `wound ${gaugeThou}`,
    kind: 'wound',
    material: 'nickel-plated-steel',
    recipeId: `wound ${gaugeThou}`,
    linearDensityKgPerM: 6400 * (Math.PI / 4) * (gaugeThou * 2.54e-5) ** 2,
    axialStiffnessN: 2e11 * coreM2,
    breakingLoadN: 2.4e9 * coreM2,
    ...more,
  };
};

const position = (frequencyHz: number, more: Partial<SetPosition> = {}): SetPosition => ({
  speakingLengthM: LENGTH_M,
  frequencyHz,
  stretchingLengthM: LENGTH_M + 0.2,
  targetTensionN: 75,
  weight: 1,
  ...more,
});

const range = (from: number, to: number, step = 1) =>
  Array.from({ length: Math.floor((to - from) / step + 1e-9) + 1 }, (_, index) => from + index * step);

const shop: SetWish = {
  positions: STANDARD_HZ.map((hz) => position(hz)),
  candidates: [...range(8, 22).map((gauge) => plain(gauge)), ...range(18, 60).map((gauge) => wound(gauge))],
  rules,
};

const setsOf = (wish: SetWish) => {
  const answer = chooseSets(wish);
  if (!answer.ok) throw new Error(JSON.stringify(answer.fault));
  return answer.value;
};
const faultOf = (wish: SetWish): NoSetFault => {
  const answer = chooseSets(wish);
  if (answer.ok) throw new Error('expected no set');
  return answer.fault;
};
const gauges = (wish: SetWish, rank = 0) =>
  setsOf(wish)[rank]!.strings.map(({ candidate }) => candidate.gaugeThou);
const ids = (wish: SetWish, rank = 0) => setsOf(wish)[rank]!.strings.map(({ candidate }) => candidate.id);

/** The cost of a set by the words of `chooseSets`, Infinity where it breaks a rule. Bend weight 0. */
function costByTheWords(wish: SetWish, strings: readonly StringCandidate[]): number {
  const weights = { ...USUAL_WEIGHTS, ...wish.weights };
  const pulls = strings.map(
    ({ linearDensityKgPerM }, at) =>
      linearDensityKgPerM * (2 * wish.positions[at]!.speakingLengthM * wish.positions[at]!.frequencyHz) ** 2,
  );
  let cost = 0;
  for (const [at, string] of strings.entries()) {
    const here = wish.positions[at]!;
    if (here.pinned && !here.pinned.includes(string.id)) return Number.POSITIVE_INFINITY;
    if (!here.pinned) {
      const kind =
        here.kind ??
        (at === 2 && strings.length >= 6 && wish.rules.woundThird !== undefined
          ? wish.rules.woundThird
            ? 'wound'
            : 'plain'
          : string.kind);
      if (string.kind !== kind) return Number.POSITIVE_INFINITY;
      if (string.kind === 'plain' && string.gaugeThou > wish.rules.thickestPlainThou)
        return Number.POSITIVE_INFINITY;
      if (string.kind === 'wound' && string.gaugeThou < wish.rules.thinnestWoundThou)
        return Number.POSITIVE_INFINITY;
    }
    if (pulls[at]! > wish.rules.stressLimit * string.breakingLoadN!) return Number.POSITIVE_INFINITY;
    cost += here.weight * weights.pull * Math.log(pulls[at]! / here.targetTensionN) ** 2;
    if (string.onShelf < (wish.sets ?? 1)) cost += weights.notOnShelf;
    if (string.newRecipe) cost += weights.newRecipe;
    cost += weights.extraWire * (string.extraWires ?? 0);
    const next = strings[at + 1];
    if (!next) continue;
    const there = wish.positions[at + 1]!;
    if (there.frequencyHz < here.frequencyHz) {
      if (next.gaugeThou < string.gaugeThou) return Number.POSITIVE_INFINITY;
      if (string.kind === 'wound' && next.kind === 'plain') return Number.POSITIVE_INFINITY;
    }
    const wished = here.stepToNext ?? Math.log(here.targetTensionN / there.targetTensionN);
    cost += weights.step * (Math.log(pulls[at]! / pulls[at + 1]!) - wished) ** 2;
  }
  return cost;
}

const look = (strings: readonly StringCandidate[]): string =>
  strings.map(({ gaugeThou, kind, material }) => `${gaugeThou} ${kind} ${material}`).join(', ');

/** Every way to fill the positions; of those that look alike the cheapest; cheapest first. */
function everySet(wish: SetWish): { cost: number; look: string }[] {
  let sets: StringCandidate[][] = [[]];
  for (const _ of wish.positions) sets = sets.flatMap((set) => wish.candidates.map((next) => [...set, next]));
  const cheapest = new Map<string, number>();
  for (const set of sets) {
    const cost = costByTheWords(wish, set);
    if (cost < (cheapest.get(look(set)) ?? Number.POSITIVE_INFINITY)) cheapest.set(look(set), cost);
  }
  return [...cheapest].map(([look, cost]) => ({ look, cost })).sort((a, b) => a.cost - b.cost);
}

const someCandidate = fc
  .record({
    kind: fc.constantFrom('plain', 'wound'),
    gauge: fc.constantFrom(9, 11, 14, 17, 20, 24, 30, 42),
    recipe: fc.integer({ min: 1, max: 2 }),
    heavier: fc.double({ min: 0.95, max: 1.05, noNaN: true }),
    onShelf: fc.integer({ min: 0, max: 2 }),
    newRecipe: fc.boolean(),
    extraWires: fc.integer({ min: 0, max: 2 }),
  })
  .map(({ kind, gauge, recipe, heavier, ...more }) => {
    const string = kind === 'plain' ? plain(gauge, more) : wound(gauge, more);
    return {
      ...string,
      id: `${string.id} recipe ${recipe}`,
      linearDensityKgPerM: string.linearDensityKgPerM * heavier,
    };
  });
const somePosition = fc.record({
  hz: fc.constantFrom(440, 330, 247, 247, 196, 147, 110, 82),
  targetTensionN: fc.double({ min: 40, max: 120, noNaN: true }),
  weight: fc.constantFrom(0.5, 1, 3),
  pin: fc.option(fc.nat({ max: 7 }), { freq: 4 }),
});
const someWish = fc
  .record({
    candidates: fc.uniqueArray(someCandidate, { minLength: 1, maxLength: 7, selector: ({ id }) => id }),
    places: fc.array(somePosition, { minLength: 1, maxLength: 4 }),
    stressLimit: fc.constantFrom(0.4, 0.6, 0.85),
    step: fc.constantFrom(0, 0.25, 2),
  })
  .map(
    ({ candidates, places, stressLimit, step }): SetWish => ({
      candidates,
      positions: places.map(({ hz, targetTensionN, weight, pin }) =>
        position(hz, {
          targetTensionN,
          weight,
          ...(pin === null || pin >= candidates.length ? {} : { pinned: [candidates[pin]!.id] }),
        }),
      ),
      rules: { ...rules, stressLimit, thickestPlainThou: 20, thinnestWoundThou: 17 },
      weights: { step },
      count: 6,
    }),
  );

/** Costs are kept in ticks of 2^-30, rounded once for each of at most four positions and three steps. */
const ROUNDING = 7 * 2 ** -31 + 1e-12;

describe('the sets chosen', () => {
  it('are exactly the best that trying every set finds: costs, order, rules, pins and recipes that look alike', () => {
    fc.assert(
      fc.property(someWish, (wish) => {
        const all = everySet(wish);
        const answer = chooseSets(wish);
        const found = answer.ok ? answer.value : [];
        expect(found).toHaveLength(Math.min(6, all.length));
        found.forEach(({ strings, cost }, rank) => {
          const chosen = strings.map(({ candidate }) => candidate);
          expect(Math.abs(cost - all[rank]!.cost)).toBeLessThan(ROUNDING);
          expect(Math.abs(costByTheWords(wish, chosen) - cost)).toBeLessThan(ROUNDING);
        });
        expect(
          new Set(found.map(({ strings }) => look(strings.map(({ candidate }) => candidate)))).size,
        ).toBe(found.length);
      }),
      { numRuns: 400 },
    );
  });

  it('do not hang on the order in which candidates are listed', () => {
    const turned = { ...shop, candidates: shop.candidates.toReversed() };
    for (const rank of [0, 1, 2, 3, 4]) expect(ids(turned, rank)).toEqual(ids(shop, rank));
  });

  it('never get thinner, nor turn from wound to plain, where pitch falls', () => {
    for (const { strings } of setsOf({ ...shop, count: 40 })) {
      for (const [at, { candidate }] of strings.entries()) {
        const next = strings[at + 1]?.candidate;
        if (!next) continue;
        expect(next.gaugeThou).toBeGreaterThanOrEqual(candidate.gaugeThou);
        expect(candidate.kind === 'wound' && next.kind === 'plain').toBe(false);
      }
    }
  });

  it('may turn to thin and plain again from a low string of a twelve-string up to the next course', () => {
    const courses = [196, 293.66, 146.83];
    const found = setsOf({
      ...shop,
      positions: courses.map((hz) => position(hz, { targetTensionN: 60 })),
      rules,
      weights: { step: 0 },
    });
    expect(found[0]!.strings[1]!.candidate.gaugeThou).toBeLessThan(found[0]!.strings[0]!.candidate.gaugeThou);
    expect(found[0]!.strings[1]!.candidate.kind).toBe('plain');
  });

  it("keep what is pinned, beyond the shop's plain and wound limits too", () => {
    const pinned = [undefined, undefined, ['plain 24'], undefined, undefined, ['wound 46']];
    const positions = shop.positions.map((each, at) => ({
      ...each,
      ...(pinned[at] ? { pinned: pinned[at] } : {}),
    }));
    const chosen = ids({ ...shop, positions, candidates: [...shop.candidates, plain(24)] });
    expect(chosen[2]).toBe('plain 24');
    expect(chosen[5]).toBe('wound 46');
  });

  it('have the third wound or plain as wished', () => {
    const third = (woundThird: boolean) =>
      setsOf({ ...shop, rules: { ...rules, woundThird } })[0]!.strings[2]!.candidate.kind;
    expect(third(true)).toBe('wound');
    expect(third(false)).toBe('plain');
  });

  it('get no lighter string anywhere where more pull is wished', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 40, max: 80, noNaN: true }),
        fc.double({ min: 1, max: 1.4, noNaN: true }),
        (pull, more) => {
          const massesAt = (targetTensionN: number) =>
            setsOf({
              ...shop,
              positions: STANDARD_HZ.map((hz) => position(hz, { targetTensionN })),
              count: 1,
              weights: { step: 0 },
            })[0]!.strings.map(({ candidate }) => candidate.linearDensityKgPerM);
          const heavier = massesAt(pull * more);
          for (const [index, mass] of massesAt(pull).entries())
            expect(heavier[index]).toBeGreaterThanOrEqual(mass);
        },
      ),
      { numRuns: 40 },
    );
  });

  it('take from the shelf what serves nearly as well, and only that', () => {
    const bare = [plain(10, { onShelf: 0 }), plain(10.1)];
    const one: SetWish = {
      ...shop,
      positions: [position(329.63, { targetTensionN: 72.6 })],
      candidates: bare,
    };
    expect(gauges({ ...one, weights: { notOnShelf: 1e-2 } })).toEqual([10.1]);
    expect(gauges({ ...one, weights: { notOnShelf: 1e-8 } })).toEqual([10]);
    expect(
      gauges({
        ...one,
        candidates: [plain(10, { onShelf: 3 }), plain(10.1)],
        sets: 4,
        weights: { notOnShelf: 1e-2 },
      }),
    ).toEqual([10.1]);
  });

  it('match a bend force where that is wished: the thinner core, at equal mass', () => {
    const stiff = wound(26, { id: 'stiff', recipeId: 'stiff' });
    const soft = wound(26, { id: 'soft', recipeId: 'soft', axialStiffnessN: stiff.axialStiffnessN * 0.7 });
    const one: SetWish = {
      ...shop,
      candidates: [stiff, soft],
      positions: [position(146.83)],
      weights: { bend: 1 },
    };
    const forceOf = (id: string) =>
      setsOf({ ...one, candidates: [stiff, soft].filter((candidate) => candidate.id === id) })[0]!.strings[0]!
        .bendForceN!;
    for (const id of ['stiff', 'soft'])
      expect(ids({ ...one, positions: [position(146.83, { targetBendForceN: forceOf(id) })] })).toEqual([id]);
  });

  it('tell what each gives up: only the first of two may be nearest in pull, only the other lie on the shelf', () => {
    const wish: SetWish = {
      ...shop,
      positions: [position(329.63, { targetTensionN: 72.6 })],
      candidates: [plain(10, { onShelf: 0 }), plain(10.5)],
    };
    const [near, ready] = setsOf(wish);
    expect(near!.bestAt).toContain('pull');
    expect(near!.givesUp).toContainEqual({ in: 'to-wind', value: 1, bestOfShown: 0 });
    expect(ready!.bestAt).toContain('to-wind');
    expect(ready!.givesUp.find((given) => given.in === 'pull')!.position).toBe(1);
    expect(ready!.differences).toMatchObject([
      { position: 1, first: { gaugeThou: 10 }, here: { gaugeThou: 10.5 } },
    ]);
    expect(near!.differences).toEqual([]);
  });
});

describe('where no set satisfies', () => {
  it('a pitch that would break every string is answered with the pitch and the scale that would not', () => {
    const high: SetWish = { ...shop, positions: [position(329.63), position(620), position(196)] };
    const fault = faultOf(high);
    if (fault.code !== 'set.would-break') throw new Error(fault.code);
    expect(fault.position).toBe(2);
    // Plain steel of 2,600 MPa at 85 %: f = sqrt(0.85 sigma / rho) / (2 L), whatever the gauge.
    expect(fault.highestFrequencyHz).toBeCloseTo(Math.sqrt((0.85 * 2.6e9) / 7850) / (2 * LENGTH_M), 6);
    const lower = position(fault.highestFrequencyHz * (1 - 1e-9));
    expect(chooseSets({ ...high, positions: [lower] }).ok).toBe(true);
    const shorter = position(620, { speakingLengthM: fault.longestSpeakingLengthM * (1 - 1e-9) });
    expect(chooseSets({ ...high, positions: [shorter] }).ok).toBe(true);
  });

  it('a wound third that the shop has no string for is answered with the limits and what lies nearest', () => {
    const thick = {
      ...shop,
      candidates: [...range(8, 22).map((gauge) => plain(gauge)), wound(14), wound(16)],
      rules: { ...rules, woundThird: true },
    };
    expect(faultOf(thick)).toEqual({
      code: 'set.no-string-of-kind',
      position: 3,
      kind: 'wound',
      thickestPlainThou: 22,
      thinnestWoundThou: 17,
      nearestGaugeThou: 16,
    });
  });

  it('pins that contradict each other are named', () => {
    const positions = shop.positions.map((each, at) =>
      at === 2 ? { ...each, pinned: ['wound 26'] } : at === 4 ? { ...each, pinned: ['wound 20'] } : each,
    );
    expect(faultOf({ ...shop, positions })).toEqual({
      code: 'set.neighbours-contradict',
      position: 5,
      rule: 'gauge-falls',
      leastGaugeBeforeThou: 26,
      mostGaugeHereThou: 20,
      pinnedPositions: [3, 5],
    });
  });

  it('a plain string pinned under a wound one is told apart from a thinner one', () => {
    const positions = [position(247, { pinned: ['wound 18'] }), position(196, { pinned: ['plain 20'] })];
    expect(faultOf({ ...shop, positions })).toMatchObject({
      code: 'set.neighbours-contradict',
      rule: 'plain-after-wound',
    });
  });

  it('a pin that is no candidate, no candidates at all and unknown strength each say so', () => {
    expect(faultOf({ ...shop, positions: [position(247, { pinned: ['nothing'] })] })).toEqual({
      code: 'set.pin-unknown',
      position: 1,
      pinned: ['nothing'],
    });
    expect(faultOf({ ...shop, candidates: [] })).toEqual({ code: 'set.no-candidates' });
    const unknown = {
      ...shop,
      positions: [position(247)],
      candidates: [plain(13, { breakingLoadN: undefined })],
    };
    expect(faultOf(unknown)).toEqual({ code: 'set.strength-unknown', position: 1, candidates: ['plain 13'] });
  });
});
