import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GEAR, SERVO } from '../../../test/fixtures/winders.js';
import { driveForPitch } from './drive-for-pitch.js';

describe('bringing a machine to a wrap pitch', () => {
  it('rounds a servo up to its step', () => {
    const machine = { ...SERVO, pitchStepM: 1e-5 };
    const drive = driveForPitch(machine, { pitchM: 2.559e-4, touchingPitchM: 2.559e-4 });
    expect(drive).toEqual({ ok: true, value: { kind: 'servo', pitchM: 2.6e-4 } });
  });

  it('leaves a pitch that is a whole number of steps as it is', () => {
    for (const pitchM of [2.6e-4, 3e-4, 0.00021]) {
      const machine = { ...SERVO, pitchStepM: 1e-5 };
      expect(driveForPitch(machine, { pitchM, touchingPitchM: pitchM })).toMatchObject({ value: { pitchM } });
    }
  });

  it('never brings a servo below the wish, nor a step above it', () => {
    fc.assert(
      fc.property(fc.double({ min: 1.1e-4, max: 9e-4, noNaN: true }), (pitchM) => {
        const drive = driveForPitch(SERVO, { pitchM, touchingPitchM: pitchM });
        if (!drive.ok) throw new Error(drive.fault.code);
        expect(drive.value.pitchM).toBeGreaterThanOrEqual(pitchM * (1 - 1e-8));
        expect(drive.value.pitchM).toBeLessThan(pitchM + SERVO.pitchStepM * (1 + 1e-6));
      }),
    );
  });

  it('says a servo’s range and the nearest pitch that would work', () => {
    const wish = (pitchM: number, touchingPitchM = pitchM) =>
      driveForPitch(SERVO, { pitchM, touchingPitchM });
    expect(wish(0.00005)).toMatchObject({ fault: { leastM: 0.0001, mostM: 0.001, nearestM: 0.0001 } });
    expect(wish(0.0012, 0.0009)).toMatchObject({ fault: { nearestM: 0.001 } });
    const hopeless = wish(0.0012);
    expect(hopeless.ok).toBe(false);
    if (!hopeless.ok) expect(hopeless.fault).not.toHaveProperty('nearestM');
  });

  it('tells the gap that a gear machine’s dial leaves between turns', () => {
    const drive = driveForPitch(GEAR, { pitchM: 2.5e-4, touchingPitchM: 2.45e-4 });
    expect(drive).toMatchObject({
      value: { kind: 'gear', dial: 30, gap: expect.closeTo(2.5 / 2.45 - 1, 9) },
    });
  });
});
