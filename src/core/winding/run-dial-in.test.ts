import { describe, expect, it } from 'vitest';
import { bronze36, SERVO } from '../../../test/fixtures/winders.js';
import { dialInAdvice } from './dial-in/advice.js';
import { machineKnob } from './machine-knob.js';
import {
  dialInOfRun,
  pastOfRun,
  type RunAtMachine,
  type TriedString,
  wantedDiameterM,
} from './run-dial-in.js';

const RUN: RunAtMachine = { machine: SERVO, recipe: bronze36('hex'), quantity: 100 };
const wantedM = wantedDiameterM(RUN);
const string = (errorM: number, more: Partial<TriedString> = {}): TriedString => ({
  position: 0,
  looksM: [[wantedM + errorM, wantedM + errorM + 4e-7]],
  ...more,
});
const stepsOf = (strings: readonly TriedString[]) =>
  dialInOfRun(RUN, strings, []).steps.map((step) =>
    step.kind === 'set' ? `set ${step.setting} ${step.chosenBy}` : step.kind,
  );

describe('the dial-in of a run', () => {
  it('turns the knob where a string has another setting than the one before', () => {
    const strings = [
      string(2e-5, { setting: 10, setBy: 'advice' }),
      string(1e-5, { setting: 10, setBy: 'advice' }),
      string(0, { setting: 12, setBy: 'advice' }),
    ];
    expect(stepsOf(strings)).toEqual(['set 10 advice', 'string', 'string', 'set 12 advice', 'string']);
  });

  it('takes an override for a wish even where the knob stays where it was', () => {
    const strings = [
      string(0, { setting: 10, setBy: 'advice' }),
      string(0, { setting: 10, setBy: 'override' }),
    ];
    expect(stepsOf(strings)).toEqual(['set 10 advice', 'string', 'set 10 winder', 'string']);
  });

  it('leaves strings out that were wound before anybody kept a setting', () => {
    expect(stepsOf([string(1e-5), string(0, { setting: 9, setBy: 'advice' }), string(0)])).toEqual([
      'set 9 advice',
      'string',
      'string',
    ]);
  });

  it('has a second look where a string was measured again, and none where it was not measured yet', () => {
    const twice = string(0, { setting: 9, setBy: 'advice' });
    expect(stepsOf([{ ...twice, looksM: [...twice.looksM, ...twice.looksM] }])).toEqual([
      'set 9 advice',
      'string',
      'again',
    ]);
    expect(stepsOf([{ ...twice, looksM: [] }])).toEqual(['set 9 advice']);
  });

  it('leads a thick string to more pull and a thin one to less', () => {
    const { reckonedSetting } = machineKnob(SERVO, RUN.recipe.construction);
    const moveAfter = (errorM: number): number => {
      const strings = [string(errorM, { setting: reckonedSetting, setBy: 'advice' })];
      const { decision } = dialInAdvice(dialInOfRun(RUN, strings, []))[0]!;
      return decision.kind === 'adjust' ? decision.move.by : 0;
    };
    expect(moveAfter(1.8e-5)).toBeGreaterThan(0);
    expect(moveAfter(-1.8e-5)).toBeLessThan(0);
  });

  it('is remembered with settings and errors, and leaned on by the next', () => {
    const past = pastOfRun(RUN, [string(3e-6, { setting: 20, setBy: 'override' })]);
    expect(past).toMatchObject({ machineId: SERVO.id, positions: [{ strings: [{ setting: 20 }] }] });
    expect(past!.positions[0]!.overrideErrorsM[0]).toBeCloseTo(3.2e-6, 9);
    const { first } = dialInOfRun(RUN, [], [past!]);
    expect(first.runs).toEqual({ near: 1, same: 1 });
    expect(pastOfRun(RUN, [string(0)])).toBeUndefined();
  });
});
