import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { normalDraw } from '../../stats/index.js';
import { processError, processResponse } from './belief.js';
import { type FirstBelief, firstBelief } from './first-belief.js';
import type { PastDialIn } from './past-dial-in.js';

const UM = 1e-6;
const TOLERANCE_M = 12.7 * UM;
const KNOB = {
  least: 0,
  most: 60,
  step: 0.05,
  deadBand: 0,
  backlash: 0,
  responseMPerUnit: -4 * UM,
  roughness: 0.03,
};

interface Truth {
  readonly offsetUm: number;
  readonly responseUm?: number;
  readonly noiseUm?: number;
  readonly seed?: number;
}

/** Four strings, at the reckoned setting and around where the error is nought. */
function pastRun(
  { offsetUm, responseUm = -4, noiseUm = 0, seed = 1 }: Truth,
  run = { machineId: 'winder', family: 'family' },
): PastDialIn {
  const chance = seededChance(seed);
  const best = 30 - offsetUm / responseUm;
  return {
    ...run,
    responseMPerUnit: KNOB.responseMPerUnit,
    positions: [
      {
        reckonedSetting: 30,
        overrideErrorsM: [],
        strings: [30, best + 1, best - 0.5, best].map((setting) => {
          const errorUm = offsetUm + responseUm * (setting - 30) + noiseUm * normalDraw(chance);
          return { setting, errorsM: [errorUm * UM, (errorUm + 1) * UM, (errorUm - 1) * UM] };
        }),
      },
    ],
  };
}

const beliefFrom = (past: readonly PastDialIn[]): FirstBelief =>
  firstBelief({
    machineId: 'winder',
    family: 'family',
    knob: KNOB,
    toleranceM: TOLERANCE_M,
    reckonedSettings: [30],
    past,
  });

const offsetOf = ({ belief }: FirstBelief) => processError(belief, 0, 30);

describe('what is believed before the first string', () => {
  it('without a past is the reckoning, with a doubt as wide as the tolerance', () => {
    const first = beliefFrom([]);
    expect(offsetOf(first).value).toBeCloseTo(0, 12);
    expect(offsetOf(first).u).toBeGreaterThan(0.8 * TOLERANCE_M);
    expect(processResponse(first.belief, 0).value).toBeCloseTo(-4 * UM, 12);
    expect(first.runs).toEqual({ near: 0, same: 0 });
  });

  it('one run moves part of the way and five nearly all of it, ever surer', () => {
    const past = [11, 9, 10, 10.5, 9.5].map((offsetUm) => pastRun({ offsetUm }));
    const beliefs = [0, 1, 3, 5].map((count) => offsetOf(beliefFrom(past.slice(0, count))));
    expect(beliefs[1]!.value).toBeGreaterThan(4 * UM);
    expect(beliefs[1]!.value).toBeLessThan(11 * UM);
    expect(Math.abs(beliefs[3]!.value - 10 * UM)).toBeLessThan(1 * UM);
    for (const [index, { u }] of beliefs.slice(1).entries()) expect(u).toBeLessThan(beliefs[index]!.u);
  });

  it('runs that differ much leave more doubt than runs that agree', () => {
    const agree = [10, 10, 10, 10, 10].map((offsetUm) => pastRun({ offsetUm }));
    const differ = [0, 20, 3, 17, 10].map((offsetUm) => pastRun({ offsetUm }));
    expect(offsetOf(beliefFrom(differ)).u).toBeGreaterThan(1.5 * offsetOf(beliefFrom(agree)).u);
  });

  it('another family on the machine, or the family on another machine, tell less than both together', () => {
    const near = (run: { machineId: string; family: string }) =>
      offsetOf(beliefFrom([8, 10, 12].map((offsetUm) => pastRun({ offsetUm }, run))));
    const same = near({ machineId: 'winder', family: 'family' });
    const machine = near({ machineId: 'winder', family: 'other' });
    const family = near({ machineId: 'other', family: 'family' });
    for (const kin of [machine, family]) {
      expect(kin.value).toBeGreaterThan(1 * UM);
      expect(kin.value).toBeLessThan(same.value);
      expect(kin.u).toBeGreaterThan(same.u);
    }
  });

  it('strangers tell nothing', () => {
    const strangers = [10, 12].map((offsetUm) =>
      pastRun({ offsetUm }, { machineId: 'other', family: 'other' }),
    );
    expect(beliefFrom(strangers)).toEqual(beliefFrom([]));
  });

  it('the response is learned from runs that moved', () => {
    const { belief } = beliefFrom([12, 15, 10].map((offsetUm) => pastRun({ offsetUm, responseUm: -2.5 })));
    const response = processResponse(belief, 0);
    expect(response.value).toBeGreaterThan(-3.1 * UM);
    expect(response.u).toBeLessThan(0.6 * UM);
  });

  it('the spread from string to string is learned, and one misread string hardly tells', () => {
    const past = (noiseUm: number) =>
      [1, 2, 3, 4, 5, 6].map((seed) => pastRun({ offsetUm: 8, noiseUm, seed }));
    const smooth = beliefFrom(past(1.6)).noise.betweenM;
    const rough = beliefFrom(past(5)).noise.betweenM;
    expect(smooth).toBeLessThan(2.6 * UM);
    expect(rough).toBeGreaterThan(4 * UM);
    const [first, ...others] = past(1.6);
    const [{ strings, ...place }] = first!.positions as [PastDialIn['positions'][number]];
    const slipped = strings.with(2, { ...strings[2]!, errorsM: [25 * UM, 26 * UM, 24 * UM] });
    const misread = beliefFrom([{ ...first!, positions: [{ ...place, strings: slipped }] }, ...others]);
    expect(misread.noise.betweenM).toBeLessThan(1.6 * smooth);
    expect(Math.abs(offsetOf(misread).value - 8 * UM)).toBeLessThan(2 * UM);
  });

  it('is as wide as it should be: over 300 shops the true offset lies within two standard deviations in 19 of 20', () => {
    const chance = seededChance(7);
    const zs = Array.from({ length: 300 }, (_, shop) => {
      const lasting = 11 * normalDraw(chance);
      const draw = (): number => lasting + 4.5 * normalDraw(chance);
      const past = [1, 2, 3, 4, 5].map((run) =>
        pastRun({ offsetUm: draw(), noiseUm: 3.2, seed: 100 * shop + run }),
      );
      const { value, u } = offsetOf(beliefFrom(past));
      return (draw() * UM - value) / u;
    });
    const within = zs.filter((z) => Math.abs(z) < 2).length / zs.length;
    expect(within).toBeGreaterThan(0.92);
    const meanSquare = zs.reduce((sum, z) => sum + z * z, 0) / zs.length;
    // Standard error 0.08.
    expect(meanSquare).toBeGreaterThan(0.6);
    expect(meanSquare).toBeLessThan(1.25);
  });
});
