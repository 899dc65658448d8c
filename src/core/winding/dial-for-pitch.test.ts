import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GEAR } from '../../../test/fixtures/winders.js';
import { monotoneInterpolation } from '../numeric/index.js';
import { dialForPitch } from './dial-for-pitch.js';

const STRAIGHT = {
  dialStep: 1,
  dialTable: [
    { dial: 0, traversePerTurnM: 1e-4 },
    { dial: 100, traversePerTurnM: 11e-4 },
  ],
};

const pitchAtDial = monotoneInterpolation(
  GEAR.dialTable.map(({ dial }) => dial),
  GEAR.dialTable.map(({ traversePerTurnM }) => traversePerTurnM),
);

describe('the dial of a gear machine', () => {
  it('gives back the dial of every measured row', () => {
    for (const { dial, traversePerTurnM } of GEAR.dialTable) {
      const found = dialForPitch(GEAR, { pitchM: traversePerTurnM, touchingPitchM: traversePerTurnM });
      expect(found).toEqual({ ok: true, value: { dial, pitchM: expect.closeTo(traversePerTurnM, 12) } });
    }
  });

  it('takes the nearest step, on either side, while turns have room', () => {
    const near = (pitchM: number) => dialForPitch(STRAIGHT, { pitchM, touchingPitchM: 2e-4 });
    expect(near(3.04e-4)).toMatchObject({ value: { dial: 20, pitchM: expect.closeTo(3.0e-4, 12) } });
    expect(near(3.06e-4)).toMatchObject({ value: { dial: 21, pitchM: expect.closeTo(3.1e-4, 12) } });
  });

  it('never goes below touching turns, though a step there would be nearer', () => {
    const found = dialForPitch(STRAIGHT, { pitchM: 3.01e-4, touchingPitchM: 3.01e-4 });
    expect(found).toMatchObject({ value: { dial: 21 } });
  });

  it('works with a dial that runs backwards', () => {
    const backwards = {
      dialStep: 1,
      dialTable: [
        { dial: 0, traversePerTurnM: 11e-4 },
        { dial: 100, traversePerTurnM: 1e-4 },
      ],
    };
    const found = dialForPitch(backwards, { pitchM: 3.01e-4, touchingPitchM: 3.01e-4 });
    expect(found).toMatchObject({ value: { dial: 79, pitchM: expect.closeTo(3.1e-4, 12) } });
  });

  it('is the best of all its steps, whatever is wished', () => {
    const everyStep = Array.from({ length: 161 }, (_, step) => pitchAtDial(10 + step * GEAR.dialStep));
    const pitches = fc.double({ min: 1.2e-4, max: 8.9e-4, noNaN: true });
    fc.assert(
      fc.property(pitches, fc.double({ min: 0, max: 0.2, noNaN: true }), (touchingPitchM, gap) => {
        const pitchM = Math.min(touchingPitchM * (1 + gap), 8.95e-4);
        const found = dialForPitch(GEAR, { pitchM, touchingPitchM });
        if (!found.ok) throw new Error(found.fault.code);
        const allowed = everyStep.filter((stepM) => stepM >= touchingPitchM * (1 - 1e-9));
        const best = Math.min(...allowed.map((stepM) => Math.abs(stepM - pitchM)));
        expect(Math.abs(found.value.pitchM - pitchM)).toBeCloseTo(best, 15);
        expect(found.value.pitchM).toBeGreaterThanOrEqual(touchingPitchM * (1 - 1e-8));
      }),
    );
  });

  it('says its range and the nearest where the wish lies outside', () => {
    expect(dialForPitch(STRAIGHT, { pitchM: 12e-4, touchingPitchM: 10e-4 })).toEqual({
      ok: false,
      fault: {
        code: 'winding.pitch-outside-range',
        wantedM: 12e-4,
        leastM: 1e-4,
        mostM: 11e-4,
        nearestM: expect.closeTo(11e-4, 12),
      },
    });
    expect(dialForPitch(STRAIGHT, { pitchM: 0.5e-4, touchingPitchM: 0.4e-4 })).toMatchObject({
      fault: { nearestM: expect.closeTo(1e-4, 12) },
    });
  });

  it('offers nothing nearest where every step would make turns climb', () => {
    const found = dialForPitch(STRAIGHT, { pitchM: 12e-4, touchingPitchM: 12e-4 });
    expect(found.ok).toBe(false);
    if (!found.ok) expect(found.fault).not.toHaveProperty('nearestM');
  });

  it('refuses a table that turns back, has one row, or stands out of order', () => {
    const rows = (...traverses: number[]) => ({
      dialStep: 1,
      dialTable: traverses.map((traversePerTurnM, index) => ({ dial: index * 10, traversePerTurnM })),
    });
    const wish = { pitchM: 2e-4, touchingPitchM: 2e-4 };
    for (const table of [rows(1e-4, 3e-4, 2e-4), rows(1e-4), rows(1e-4, 1e-4, 3e-4)]) {
      expect(dialForPitch(table, wish)).toMatchObject({ fault: { code: 'winding.dial-table-unusable' } });
    }
    const outOfOrder = { dialStep: 1, dialTable: [...rows(1e-4, 3e-4).dialTable].reverse() };
    expect(dialForPitch(outOfOrder, wish).ok).toBe(false);
  });

  it('steps from a first row that is no round number', () => {
    const odd = {
      dialStep: 1 / 7,
      dialTable: [
        { dial: 1 / 3, traversePerTurnM: 1e-4 },
        { dial: 4 / 3, traversePerTurnM: 2e-4 },
      ],
    };
    expect(dialForPitch(odd, { pitchM: 1e-4, touchingPitchM: 1e-4 })).toMatchObject({
      value: { dial: 1 / 3 },
    });
    expect(dialForPitch(odd, { pitchM: 2e-4, touchingPitchM: 2e-4 })).toMatchObject({
      value: { dial: expect.closeTo(4 / 3, 9) },
    });
  });
});
