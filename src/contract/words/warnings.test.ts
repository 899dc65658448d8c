import { describe, expect, it } from 'vitest';
import { unmadeInWords } from './unmade.js';
import { warningInWords } from './warnings.js';

describe('what a player should be told', () => {
  it('the pull on the neck is told with its change (812 / 744 is 9 % more)', () => {
    expect(warningInWords({ code: 'neck-load', totalN: 812, referenceN: 744 })).toContain('(9 % more)');
    expect(warningInWords({ code: 'neck-load', totalN: 700, referenceN: 744 })).toContain('(6 % less)');
  });

  it('assumed octaves are owned up to', () => {
    expect(warningInWords({ code: 'octaves-assumed', tuning: 'D4 B3 G3' })).toBe(
      'The tuning was written without octaves and read as D4 B3 G3.',
    );
  });

  it('a string near its strength is to be tuned with care', () => {
    const words = warningInWords({ code: 'near-strength', position: 1, stressShare: 0.87 });
    expect(words).toContain('87 %');
    expect(words).toContain('eyes away');
  });

  it('a slack string is told with the least that it should pull', () => {
    expect(warningInWords({ code: 'slack', position: 6, tensionN: 50, leastN: 60 })).toBe(
      'String 6 will be slack: it pulls 50.0 N (11.24 lbf), less than 60.0 N (13.49 lbf).',
    );
  });
});

describe('why a bin stays short', () => {
  it('says which wire and by how much', () => {
    expect(
      unmadeInWords({ stringKey: 'k', quantity: 144, because: 'wire', wireId: 'w13', shortKg: 0.0524 }),
    ).toBe('Wire w13 does not suffice: 0.052 kg too little. Orders come first.');
  });

  it('or that no machine can make it', () => {
    expect(unmadeInWords({ stringKey: 'k', quantity: 144, because: 'machine' })).toBe(
      'No machine of the shop can make it.',
    );
  });
});
