import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bronze36, PLAIN_12, TWO_LAYERS, UNFLATTENED } from '../../../test/fixtures/winders.js';
import type { Recipe } from '../recipes/index.js';
import { stringBody } from '../string/index.js';
import { STARTING_PRACTICE } from './practice.js';
import { type WireUse, type WireUseOptions, wirePerString } from './wire-per-string.js';

const usesOf = (recipe: Recipe, lengthM: number, options?: WireUseOptions): readonly WireUse[] => {
  const uses = wirePerString(recipe, lengthM, options);
  if (!uses.ok) throw new Error(uses.fault.code);
  return uses.value;
};

describe('wire for one string', () => {
  it('is core with its twist and tail, and wrap with its two tails', () => {
    const practice = { ...STARTING_PRACTICE, bareAtEndM: 0.02, bareAtTailM: 0.08 };
    const [core, wrap] = usesOf(bronze36('round'), 1, { seat: UNFLATTENED, practice });
    expect(core!.metres).toBeCloseTo(1 + 0.05 + 0.05, 12);
    // Steel of 0.016 in: pi/4 x 0.4064^2 mm2 x 7.85 g/cm3 = 1.01828 g/m.
    expect(core!.kg).toBeCloseTo(1.1 * 1.018277e-3, 8);
    // Touching turns take pi D_m / w = pi x 26/10 metres of wrap per metre wound.
    expect(wrap!.metres).toBeCloseTo(0.9 * Math.PI * 2.6 + 0.2, 9);
    expect(wrap!.kg).toBeCloseTo(wrap!.metres * 0.448942e-3, 7);
  });

  it('takes more core for a loop than for a ball where the shop says so', () => {
    const [ball] = usesOf(bronze36('hex'), 1);
    const [loop] = usesOf(bronze36('hex'), 1, { end: 'loop' });
    expect(loop!.metres - ball!.metres).toBeCloseTo(0.01, 12);
  });

  it('is one wire for a plain string', () => {
    expect(usesOf(PLAIN_12, 1).map(({ wireId, alloy }) => [wireId, alloy])).toEqual([
      ['core-round-12', 'music-wire'],
    ]);
  });

  it('adds up a wire that both layers use', () => {
    const twice = usesOf({ ...TWO_LAYERS, wrapWireIds: ['nickel-8', 'nickel-8'] }, 1);
    const apart = usesOf(TWO_LAYERS, 1);
    expect(twice.map(({ wireId }) => wireId)).toEqual(['core-hex-20', 'nickel-8']);
    expect(twice[1]!.kg).toBeCloseTo(apart[1]!.kg + apart[2]!.kg, 12);
  });

  it('weighs, tails left out, what the string’s own mass per length says', () => {
    const bare = {
      ...STARTING_PRACTICE,
      bareAtTailM: 0,
      coreTailM: 0,
      wrapStartTailM: 0,
      wrapFinishTailM: 0,
    };
    const practice = { ...bare, twistTakesM: { ball: 0, loop: 0 } };
    const body = stringBody(TWO_LAYERS.construction);
    if (!body.ok) throw new Error(body.fault.code);
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 1.2, noNaN: true }), (lengthM) => {
        const kg = usesOf(TWO_LAYERS, lengthM, { practice }).reduce((sum, use) => sum + use.kg, 0);
        expect(kg / lengthM / body.value.linearDensityKgPerM).toBeCloseTo(1, 9);
      }),
    );
  });
});
