import { describe, expect, it } from 'vitest';
import { BENCH, bronze36, GEAR, PLAIN_12, SERVO, TWO_LAYERS } from '../../../test/fixtures/winders.js';
import type { Machine } from './machine.js';
import type { PastRun } from './past-run.js';
import { STARTING_PRACTICE } from './practice.js';
import { type StringJob, type StringWork, stringWork } from './string-work.js';

const HEX = bronze36('hex');

const workOf = (job: Partial<StringJob> & { machine: Machine }): StringWork => {
  const work = stringWork({ recipe: HEX, lengthM: 1, ...job });
  if (!work.ok) throw new Error(work.fault.map(({ code }) => code).join());
  return work.value;
};

const RECORD: PastRun = {
  machineId: 'servo-1',
  core: { shape: 'hex', sizeM: 16 * 25.4e-6, tensionN: 40 },
  layers: [{ alloy: 'phosphor-bronze', wireDiameterM: 0.254e-3, tensionN: 6, spindleRpm: 1500 }],
};

describe('what making a string takes', () => {
  it('hangs together: turns, traverse, wire and time of a layer', () => {
    const { layers, wire, cycleSeconds } = workOf({ machine: SERVO });
    const [layer] = layers;
    expect(layer!.woundLengthM).toBeCloseTo(1 - STARTING_PRACTICE.bareAtTailM, 12);
    expect(layer!.turns * layer!.wrapPitchM).toBeCloseTo(layer!.woundLengthM, 12);
    expect(layer!.traverseMPerS * layer!.windSeconds).toBeCloseTo(layer!.woundLengthM, 12);
    const wirePerTurnM = layer!.wrapPitchM / Math.sin(layer!.leadAngleRad);
    expect(layer!.wirePerStringM).toBeCloseTo(layer!.turns * wirePerTurnM + 0.2, 9);
    expect(wire.map(({ wireId }) => wireId)).toEqual(['core-hex-16', 'bronze-10']);
    expect(wire[1]!.metres).toBe(layer!.wirePerStringM);
    expect(cycleSeconds).toBeCloseTo(20 + layer!.windSeconds + 10, 9);
  });

  it('winds no turn closer than touching, on either kind of machine', () => {
    for (const machine of [SERVO, GEAR]) {
      const { layers, body } = workOf({ machine });
      expect(layers[0]!.wrapPitchM).toBeGreaterThanOrEqual(body.layers[0]!.touchingPitchM * (1 - 1e-9));
      expect(layers[0]!.wrapPitchM).toBeCloseTo(layers[0]!.drive.pitchM, 12);
    }
  });

  it('reckons the string as the machine really winds it: a wider pitch makes it lighter', () => {
    const coarse = { ...SERVO, pitchStepM: 1e-5 };
    const [fine, wide] = [workOf({ machine: SERVO }), workOf({ machine: coarse })];
    const pitchRatio = wide.layers[0]!.wrapPitchM / fine.layers[0]!.wrapPitchM;
    expect(pitchRatio).toBeGreaterThan(1.005);
    // Wrap goes with 1/p but for the small part that runs along the string.
    expect(wide.body.wrapMassKgPerM / fine.body.wrapMassKgPerM).toBeCloseTo(1 / pitchRatio, 3);
  });

  it('shares a cycle between two positions, and takes as long for both as for one', () => {
    const one = workOf({ machine: { ...GEAR, positions: 1 } });
    const two = workOf({ machine: GEAR });
    expect(two.cycleSeconds).toBe(one.cycleSeconds);
    expect([one.positions, two.positions]).toEqual([1, 2]);
  });

  it('winds two layers one after the other, the second over the first', () => {
    const { layers, body, cycleSeconds } = workOf({ machine: SERVO, recipe: TWO_LAYERS });
    expect(layers.map(({ wireId }) => wireId)).toEqual(['nickel-8', 'nickel-17']);
    const [first, second] = body.layers;
    expect(second!.windingDiameterM).toBeCloseTo(
      first!.windingDiameterM + first!.heightM + second!.heightM,
      12,
    );
    expect(cycleSeconds).toBeCloseTo(30 + layers[0]!.windSeconds + layers[1]!.windSeconds, 9);
  });

  it('takes the layer that needs most core tension for the whirl check', () => {
    const { whirl, layers, body } = workOf({ machine: SERVO, recipe: TWO_LAYERS });
    expect(whirl!.layer).toBe(1);
    // The span is wound through at the end: core and both wraps weigh on it.
    const heaviestHz = Math.sqrt(whirl!.assumedTensionN / body.linearDensityKgPerM) / (2 * SERVO.freeSpanM);
    expect(whirl!.lowestRpm).toBeCloseTo(60 * heaviestHz, 6);
    expect(whirl!.spindleRpm).toBe(layers[1]!.spindleRpm);
  });

  it('invents no tension: without a record there are only bounds, and whirl asks for the least', () => {
    const { coreTension, layers, whirl } = workOf({ machine: SERVO });
    expect(coreTension).toMatchObject({ kind: 'no-record', upperWhy: 'core-elastic-limit' });
    expect(layers[0]!.wrapTension).toMatchObject({
      kind: 'no-record',
      upperWhy: 'wrap-softest-temper-breaks',
    });
    if (coreTension?.kind !== 'no-record') throw new Error('a bound was expected');
    expect(whirl).toMatchObject({ assumed: 'strength-bound', assumedTensionN: coreTension.upper });
    expect(whirl!.leastCoreTensionN).toBeLessThan(coreTension.upper);
  });

  it('takes tensions and speed from the record of near runs', () => {
    const { coreTension, layers, whirl } = workOf({ machine: SERVO, record: [RECORD] });
    // One run leaves a little to the cautious start; it is told how much.
    if (coreTension?.kind !== 'from-record') throw new Error('a record was expected');
    const { startShare, value, bound } = coreTension;
    expect(startShare).toBeCloseTo(0.11, 2);
    expect(value).toBeCloseTo(40 ** (1 - startShare) * (bound!.upperN / 2) ** startShare, 9);
    expect(layers[0]).toMatchObject({
      wrapTension: { kind: 'from-record', value: expect.closeTo(6, 0), runs: 1 },
      spindleRpm: 1500,
      rpmLimitedBy: 'record',
    });
    expect(whirl).toMatchObject({ assumed: 'record', assumedTensionN: coreTension.value });
  });

  it('slows the spindle where the recorded core tension lets the core whirl', () => {
    const slack: PastRun = { ...RECORD, core: { ...RECORD.core, tensionN: 8 }, layers: [] };
    const { layers, whirl } = workOf({ machine: { ...SERVO, wireSpeedLimitMPerS: 20 }, record: [slack] });
    expect(layers[0]!.rpmLimitedBy).toBe('whirl');
    expect(layers[0]!.spindleRpm).toBeLessThan(3000);
    expect(whirl!.marginShare).toBeGreaterThanOrEqual(0.2 - 1e-12);
    expect(whirl!.leastCoreTensionN).toBeLessThanOrEqual(whirl!.assumedTensionN);
  });

  it('bounds no tension and no whirl of a core whose strength nobody knows', () => {
    const thick = { ...HEX, construction: { ...HEX.construction } } as typeof HEX;
    if (thick.construction.kind !== 'wound') throw new Error('wound was expected');
    const core = { ...thick.construction.core, strengthTable: 'jis-g-3522-a' } as const;
    const recipe = { ...thick, construction: { ...thick.construction, core: { ...core, sizeM: 0.00007 } } };
    const { coreTension, whirl } = workOf({
      machine: { ...SERVO, coreSizeM: { least: 0.00005, most: 0.001 } },
      recipe,
    });
    expect(coreTension).toEqual({ kind: 'unknown' });
    expect(whirl!.assumed).toBe('least-needed');
  });

  it('only cuts a plain string', () => {
    const work = workOf({ machine: BENCH, recipe: PLAIN_12 });
    expect(work.layers).toEqual([]);
    expect(work).not.toHaveProperty('coreTension');
    expect(work).not.toHaveProperty('whirl');
    expect(work.cycleSeconds).toBe(30);
    expect(work.wire.map(({ metres }) => metres)).toEqual([expect.closeTo(1.1, 12)]);
  });
});
