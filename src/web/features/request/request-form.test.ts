import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readWishes } from '../../../core/orders/index.js';
import { BLANK_FORM, cellsOf, wishesInWords } from './request-form.js';

describe('the request form', () => {
  it('says its wishes in phrases that an orders file may hold, and that mean what was slid', () => {
    const percent = fc.integer({ min: -20, max: 20 });
    const bend = fc.integer({ min: 0, max: 100 });
    const third = fc.constantFrom('either', 'plain', 'wound');
    fc.assert(
      fc.property(percent, percent, bend, third, (bassPercent, treblePercent, bendPercent, wanted) => {
        const words = wishesInWords({
          ...BLANK_FORM,
          bassPercent,
          treblePercent,
          bendPercent,
          third: wanted,
        });
        const read = readWishes(words);
        if (!read.ok) throw new Error(words);
        expect(read.value.heavierBass ?? 0).toBeCloseTo(bassPercent / 100, 12);
        expect(read.value.heavierTreble ?? 0).toBeCloseTo(treblePercent / 100, 12);
        expect(read.value.bendShare ?? 0).toBeCloseTo(bendPercent / 100, 12);
        expect(read.value.woundThird).toBe(wanted === 'either' ? undefined : wanted === 'wound');
      }),
    );
  });

  it('lets typed wishes follow those that were slid', () => {
    const wishes = cellsOf({ ...BLANK_FORM, aim: 'graded', gradePercent: 4, more: ' string 1 = 10 ' }).wishes;
    expect(wishes).toBe('graded 4 %; string 1 = 10');
    expect(readWishes(wishes ?? '')).toMatchObject({
      ok: true,
      value: { gradePerString: 0.04, pins: [{ position: 1, string: { gaugeThou: 10 } }] },
    });
  });
});
