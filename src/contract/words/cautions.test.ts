import { describe, expect, it } from 'vitest';
import type { Caution } from '../../core/winding/index.js';
import { cautionInWords, looseTailInWords } from './cautions.js';

describe('cautions in words', () => {
  it('a turning spindle asks for the guard and for bare hands', () => {
    const { sentence } = cautionInWords('rotating-spindle');
    expect(sentence).toContain('guard');
    expect(sentence).toContain('No gloves at a turning spindle');
  });

  it('wire under tension asks for eye protection', () => {
    expect(cautionInWords('wire-whip').sentence).toContain('eye protection');
  });

  it('local rules and licensed practice stand above what we print', () => {
    expect(cautionInWords('local-rules').sentence).toContain('Follow local rules and licensed practice');
  });

  it('every caution has a title that fits beside its sentence, and ends in a full stop', () => {
    const all: Record<Caution, true> = {
      'rotating-spindle': true,
      'wire-whip': true,
      'sharp-ends': true,
      'nickel-skin': true,
      'metal-dust': true,
      'lock-out': true,
      'local-rules': true,
      'flatten-round-core': true,
      'turning-hook': true,
      'pull-test': true,
    };
    for (const caution of Object.keys(all) as Caution[]) {
      const { title, sentence } = cautionInWords(caution);
      expect(title.length).toBeLessThanOrEqual(20);
      expect(sentence).toMatch(/\.$/);
    }
  });

  it('a loose tail of 50 mm at 14.9 m/s is told in km/h too (54 = 14.9 × 3.6)', () => {
    expect(looseTailInWords({ tailM: 0.05, speedMPerS: 14.9 })).toBe(
      'A loose tail of 50 mm flies at 15 m/s (54 km/h).',
    );
  });
});
