import { describe, expect, it } from 'vitest';
import { bronze36, GEAR, SERVO } from '../../../test/fixtures/winders.js';
import { machineKnob } from './machine-knob.js';
import { wrapBound } from './strength-bound.js';

const { construction } = bronze36('hex');
if (construction.kind !== 'wound') throw new Error('the string of this test is wound');
const breaksN = wrapBound(construction.layers.at(-1)!)!.upperN;

const RECORD = {
  unit: 'N',
  least: 0,
  most: 500,
  step: 0.5,
  deadBand: 0,
  backlash: 0,
  responseMPerUnit: -2e-6,
  roughness: 0.02,
};

describe('the knob of a machine', () => {
  it('without a record is a pull that stays well below what breaks the wrap wire', () => {
    for (const machine of [SERVO, GEAR]) {
      const { knob, unit, reckonedSetting, isOnRecord } = machineKnob(machine, construction);
      expect({ unit, isOnRecord }).toEqual({ unit: 'N', isOnRecord: false });
      expect(knob.most).toBeLessThan(0.66 * breaksN);
      expect(knob.most).toBeGreaterThan(0.6 * breaksN);
      expect(reckonedSetting).toBeGreaterThan(knob.least);
      expect(reckonedSetting).toBeLessThan(knob.most);
      expect(knob.responseMPerUnit * (knob.most - knob.least)).toBeCloseTo(-4 * 12.7e-6, 6);
    }
  });

  it('of a gearbox is taken to have lost motion until its record says otherwise', () => {
    expect(machineKnob(GEAR, construction).knob.backlash).toBeGreaterThan(0);
    expect(machineKnob(SERVO, construction).knob.backlash).toBe(0);
  });

  it('is what the record says, but for a pull that the wire would not bear', () => {
    const { knob, isOnRecord } = machineKnob({ ...SERVO, knob: RECORD }, construction);
    expect(isOnRecord).toBe(true);
    expect(knob).toMatchObject({ step: 0.5, responseMPerUnit: -2e-6 });
    expect(knob.most).toBeLessThan(breaksN);
  });

  it('in numbers of a dial is not measured against newtons', () => {
    const { knob, unit } = machineKnob({ ...GEAR, knob: { ...RECORD, unit: '' } }, construction);
    expect(unit).toBe('');
    expect(knob.most).toBe(500);
  });
});
