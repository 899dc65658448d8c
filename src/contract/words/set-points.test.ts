import { describe, expect, it } from 'vitest';
import type { StrengthBound } from '../../core/winding/index.js';
import { forceInWords, leanedOnInWords, setPointInWords, speedLimitInWords } from './set-points.js';

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

const GUESS = { low: 41, high: 193, runs: 0, startShare: 1, leanedOn: [] };

const near = {
  low: 8.1,
  high: 10.9,
  runs: 6,
  startShare: 0.02,
  leanedOn: [
    { name: 'run A', date: '2026-11-03', machineId: 'Wren', share: 0.31 },
    { machineId: 'Old Heron', share: 0.22 },
  ],
};

describe('tensions in words', () => {
  it('what nobody recorded is called a guess', () => {
    const point = {
      kind: 'no-record',
      ...GUESS,
      start: 89.2,
      upper: 178.3,
      upperWhy: 'core-elastic-limit',
      bound: bound(),
    } as const;
    expect(setPointInWords(point)).toBe(
      'a guess: no run of this shop is near. Begin cautiously at 89.2 N (20.05 lbf), likely 41.0 to 193.0 N; upper limit 178.3 N (40.08 lbf), decided by the elastic limit of the core (65 % of its least strength).',
    );
  });

  it('a wrap’s limit is where it breaks, so its words say to stay below', () => {
    const wrap = bound({ basis: 'wrap-softest-temper-breaks', temper: 'annealed', standing: 'memory' });
    const words = setPointInWords({
      kind: 'no-record',
      ...GUESS,
      start: 13,
      upper: 40,
      upperWhy: 'wrap-softest-temper-breaks',
      bound: wrap,
    });
    expect(words).toContain('softest temper on record (annealed): stay well below');
    expect(words).toContain('recalled, not read in print');
  });

  it('a record says of how many runs it is', () => {
    expect(setPointInWords({ kind: 'from-record', value: 9.4, ...near, runs: 1 })).toBe(
      '9.4 N (2.11 lbf), likely 8.1 to 10.9 N; from 1 near run, 2 % of it a cautious start.',
    );
    expect(setPointInWords({ kind: 'from-record', value: 9.4, ...near, shareOfBreaking: 0.21 })).toContain(
      'from 6 near runs, 2 % of it a cautious start (21 % of the wire’s least breaking load).',
    );
  });

  it('names the runs that it leans on, and how much of the figure each has', () => {
    const point = { kind: 'from-record', value: 9.4, ...near } as const;
    expect(leanedOnInWords(point)).toBe(
      'Leans on run A (2026-11-03, Wren, 31 %), a run (Old Heron, 22 %) and 4 more.',
    );
    expect(leanedOnInWords({ kind: 'unknown' })).toBe('');
  });

  it('speaks in the machine’s own number first where it has a scale', () => {
    expect(setPointInWords({ kind: 'from-record', value: 9.4, ...near, dial: 34.2 })).toMatch(
      /^34\.2 on the machine’s scale, that is 9\.4 N \(2\.11 lbf\)/,
    );
  });

  it('a record above what the wire bears is doubted', () => {
    expect(setPointInWords({ kind: 'from-record', value: 90, ...near, shareOfBreaking: 1.2 })).toContain(
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
