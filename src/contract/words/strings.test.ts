import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type StringSpec, stringKey } from '../../core/sets/index.js';
import { gaugesInWords, materialInWords, stringKeyInWords, wholeStringInWords } from './strings.js';

describe('strings in words', () => {
  it('every key that the core writes is read back', () => {
    const spec = fc.record<StringSpec>({
      gaugeThou: fc.constantFrom(8, 10.5, 13, 46, 105),
      kind: fc.constantFrom('plain', 'wound'),
      material: fc.constantFrom('plain-steel', 'nickel-plated-steel', 'phosphor-bronze', 'bronze-80-20'),
      end: fc.constantFrom('ball', 'loop'),
      lengthM: fc.constantFrom(0.95, 1, 1.25),
    });
    fc.assert(
      fc.property(spec, (string) => {
        expect(stringKeyInWords(stringKey(string))).toEqual({
          short: `${string.gaugeThou} ${string.kind}`,
          material: materialInWords(string.material),
          finish: `${string.end} end, ${Math.round(string.lengthM * 1000)} mm`,
        });
      }),
    );
  });

  it('a wound string is named whole', () => {
    expect(wholeStringInWords('46 wound bronze-80-20 loop 1000 mm')).toBe(
      '46 wound, 80/20 bronze, loop end, 1000 mm',
    );
  });

  it('a key of another form is shown as it is', () => {
    expect(wholeStringInWords('a string of old')).toBe('a string of old');
  });

  it('gauges are written treble first, halves kept', () => {
    expect(gaugesInWords([{ gaugeThou: 10.5 }, { gaugeThou: 13 }, { gaugeThou: 46 }])).toBe('10.5 13 46');
  });
});
