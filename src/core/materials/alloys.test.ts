import { describe, expect, it } from 'vitest';
import { ALLOYS, alloy } from './alloys.js';
import { PREFERRED_CORE_DIAMETERS_M } from './core-sizes.js';
import { spoolContents } from './wire-weight.js';

describe('the materials', () => {
  it('stand each under their own id', () => {
    for (const [id, material] of Object.entries(ALLOYS)) expect(material.id).toBe(id);
    expect(alloy('bronze-80-20').name).toBe('80/20 bronze');
  });

  it('of a range state the range as a standard uncertainty: E of music wire is 206 GPa within 190 to 207', () => {
    expect(ALLOYS['music-wire'].youngsModulusPa.u).toBeCloseTo(17e9 / Math.sqrt(12), -3);
  });

  it('have bands of strength with the ends in order', () => {
    for (const { id, tempers } of Object.values(ALLOYS)) {
      for (const { minimumPa, maximumPa } of tempers)
        expect(maximumPa ?? Infinity, id).toBeGreaterThan(minimumPa);
    }
  });

  it('for cores come in sizes that rise from 0.004 in', () => {
    expect(PREFERRED_CORE_DIAMETERS_M[0]).toBeCloseTo(0.0001016, 10);
    expect([...PREFERRED_CORE_DIAMETERS_M].sort((a, b) => a - b)).toEqual(PREFERRED_CORE_DIAMETERS_M);
  });
});

describe('a spool', () => {
  it('that weighs less than it does empty is a mistake at the scale', () => {
    expect(spoolContents({ grossKg: 0.3, tareKg: 0.39, unitWeightKgPerM: 0.0004 })).toEqual({
      ok: false,
      fault: { code: 'spool.lighter-than-empty', grossKg: 0.3, tareKg: 0.39 },
    });
  });

  it('that weighs as much as empty is empty', () => {
    expect(spoolContents({ grossKg: 0.39, tareKg: 0.39, unitWeightKgPerM: 0.0004 })).toEqual({
      ok: true,
      value: { netKg: 0, lengthM: 0 },
    });
  });
});
