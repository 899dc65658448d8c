import { describe, expect, it } from 'vitest';
import { ALLOYS } from './alloys.js';
import { wrapStrength } from './wrap-strength.js';

const DIAMETER_M = 0.254e-3;

describe('the strength that caps the pull on wrap wire', () => {
  it('is the weakest band on record, so that an unnamed temper is taken for the softest', () => {
    for (const { id, tempers } of Object.values(ALLOYS)) {
      const asked = wrapStrength({ alloy: id, diameterM: DIAMETER_M });
      if (!asked.ok) expect(['music-wire', 'pvdf']).toContain(id);
      else expect(asked.value.minimumPa).toBe(Math.min(...tempers.map(({ minimumPa }) => minimumPa)));
    }
  });

  it('of stainless is that of the annealed metal, not of spring wire', () => {
    const asked = wrapStrength({ alloy: 'stainless-304', diameterM: DIAMETER_M });
    expect(asked).toMatchObject({ ok: true, value: { temper: 'annealed', minimumPa: 515e6, form: 'bulk' } });
  });

  it('of a temper named is that temper', () => {
    const asked = wrapStrength({ alloy: 'brass-70-30', diameterM: DIAMETER_M, temper: 'half hard' });
    expect(asked).toMatchObject({ ok: true, value: { minimumPa: 545e6, maximumPa: 650e6 } });
  });

  it('is refused for a temper that is not on record, with those that are', () => {
    const asked = wrapStrength({ alloy: 'bronze-80-20', diameterM: DIAMETER_M, temper: 'soft' });
    expect(asked).toEqual({
      ok: false,
      fault: {
        code: 'wrap-strength.unknown-temper',
        alloy: 'bronze-80-20',
        diameterM: DIAMETER_M,
        temper: 'soft',
        known: ['annealed', 'hard', 'spring'],
      },
    });
  });

  it('is refused where no strength is on record', () => {
    const asked = wrapStrength({ alloy: 'pvdf', diameterM: DIAMETER_M });
    expect(asked).toEqual({
      ok: false,
      fault: { code: 'wrap-strength.not-recorded', alloy: 'pvdf', diameterM: DIAMETER_M },
    });
  });
});
