import { describe, expect, it } from 'vitest';
import type { DialInStep } from './dial-in.js';
import { USUAL_AIM } from './dial-in-aim.js';
import { firstBelief } from './first-belief.js';
import { rememberDialIn } from './remember-dial-in.js';

const knob = {
  least: 0,
  most: 60,
  step: 0.05,
  deadBand: 0,
  backlash: 0,
  responseMPerUnit: -4e-6,
  roughness: 0,
};
const toleranceM = 12.7e-6;
const run = { machineId: 'winder', family: 'family' };
const first = firstBelief({ ...run, knob, toleranceM, reckonedSettings: [30, 31], past: [] });

describe('a dial-in that is over', () => {
  const steps: DialInStep[] = [
    { kind: 'set', position: 0, setting: 30, chosenBy: 'advice' },
    { kind: 'set', position: 1, setting: 31, chosenBy: 'advice' },
    { kind: 'string', position: 0, errorsM: [9e-6, 9e-6, 9e-6] },
    { kind: 'string', position: 1, errorsM: [60e-6, 60e-6, 60e-6] },
    { kind: 'again', position: 1, errorsM: [6e-6, 6e-6, 6e-6] },
    { kind: 'set', position: 0, setting: 33, chosenBy: 'winder' },
    { kind: 'string', position: 0, errorsM: [-2e-6, -3e-6, -4e-6] },
  ];
  const past = rememberDialIn({ knob, aim: { ...USUAL_AIM, toleranceM }, first, steps }, run);

  it('leaves its strings with their settings, a misread one as read the second time', () => {
    expect(past.positions[0]!.strings.map(({ setting }) => setting)).toEqual([30, 33]);
    expect(past.positions[1]!.strings).toEqual([{ setting: 31, errorsM: [6e-6, 6e-6, 6e-6] }]);
  });

  it('leaves how far off the settings were that the winder chose', () => {
    expect(past.positions[0]!.overrideErrorsM).toEqual([expect.closeTo(-3e-6, 12)]);
    expect(past.positions[1]!.overrideErrorsM).toEqual([]);
  });

  it('is what the next run of the family leans on', () => {
    const next = firstBelief({ ...run, knob, toleranceM, reckonedSettings: [30, 31], past: [past] });
    expect(next.runs).toEqual({ near: 1, same: 1 });
    expect(next.belief.mean[0]).toBeGreaterThan(2e-6);
  });
});
