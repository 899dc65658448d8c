import { describe, expect, it } from 'vitest';
import type { StrengthBound } from '../../core/winding/index.js';
import { forceInWords, setPointInWords, speedLimitInWords } from './set-points.js';

const bound = (over: Partial<StrengthBound> = {}): StrengthBound => ({
  upperN: 178.3,
  share: 0.65,
  strengthPa: 1.7e9,
  areaM2: 1.61e-7,
  basis: 'core-elastic-limit',
  standing: 'printed',
  sources: [],
  ...over,
});

describe('tensions in words', () => {
  it('what nobody recorded is never given as a value to set', () => {
    const point = {
      kind: 'no-record',
      upper: 178.3,
      upperWhy: 'core-elastic-limit',
      bound: bound(),
    } as const;
    expect(setPointInWords(point)).toBe(
      'no record in this shop yet; upper limit 178.3 N (40.08 lbf), decided by the elastic limit of the core (65 % of its least strength).',
    );
  });

  it('a wrap’s limit is where it breaks, so its words say to stay below', () => {
    const wrap = bound({ basis: 'wrap-softest-temper-breaks', temper: 'annealed', standing: 'memory' });
    const words = setPointInWords({
      kind: 'no-record',
      upper: 40,
      upperWhy: 'wrap-softest-temper-breaks',
      bound: wrap,
    });
    expect(words).toContain('softest temper on record (annealed): stay well below');
    expect(words).toContain('recalled, not read in print');
  });

  it('a record says of how many runs it is', () => {
    expect(setPointInWords({ kind: 'from-record', value: 9.4, runs: 1 })).toBe(
      '9.4 N (2.11 lbf), from 1 run recorded in this shop.',
    );
    expect(setPointInWords({ kind: 'from-record', value: 9.4, runs: 6, shareOfBreaking: 0.21 })).toContain(
      'from 6 runs recorded in this shop (21 % of the wire’s least breaking load).',
    );
  });

  it('a record above what the wire bears is doubted', () => {
    expect(setPointInWords({ kind: 'from-record', value: 90, runs: 2, shareOfBreaking: 1.2 })).toContain(
      'check the record',
    );
  });

  it('where nothing is known nothing is said', () => {
    expect(setPointInWords({ kind: 'unknown' })).not.toMatch(/\d/);
  });

  it('10 lbf are 44.5 N (1 lbf = 4.4482216152605 N exactly)', () => {
    expect(forceInWords(44.482216152605)).toBe('44.5 N (10.00 lbf)');
  });

  it('each limit of speed has its own words', () => {
    const words = (['machine', 'wire-speed', 'whirl', 'record'] as const).map(speedLimitInWords);
    expect(new Set(words).size).toBe(4);
  });
});
