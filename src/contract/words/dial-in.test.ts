import { describe, expect, it } from 'vitest';
import type { DialInAdvice } from '../../core/winding/index.js';
import { dialInInWords, pitchAdviceInWords } from './dial-in.js';

const odds: DialInAdvice['odds'] = {
  setting: 12.35,
  error: { value: 1e-6, u: 2e-6 },
  response: { value: -4e-6, u: 5e-7 },
  sure: 0.934,
  lostStrings: 0.4,
  capable: true,
  strings: 1,
};
const advice = (part: Pick<DialInAdvice, 'decision' | 'why'>): DialInAdvice => ({
  position: 0,
  odds,
  ...part,
});

describe('dialling in, in words', () => {
  it('is one sentence to act on and one line of why', () => {
    const { what, why } = dialInInWords(
      advice({
        decision: { kind: 'adjust', move: { to: 12.350000000000001, by: 0.4 }, next: 'string' },
        why: { kind: 'error-seen', savedStrings: 3.2 },
      }),
      'N',
    );
    expect(what).toBe('Set 12.35 N and wind one more string.');
    expect(why).toBe('Moving is worth about 3 strings. 93 % sure that the run will be good.');
  });

  it('says from where to come where the knob has lost motion', () => {
    const { what } = dialInInWords(
      advice({
        decision: { kind: 'adjust', move: { to: 8, by: -1, past: 6.5 }, next: 'run' },
        why: { kind: 'error-seen', savedStrings: 0.6 },
      }),
    );
    expect(what).toBe('Set 8, coming up from 6.5, then let it run.');
  });

  it('of an odd reading says which and by how much', () => {
    const { what, why } = dialInInWords(
      advice({
        decision: { kind: 'measure-again' },
        why: {
          kind: 'doubtful',
          doubt: { kind: 'far-off', errorM: 30e-6, expected: { value: -1e-6, u: 2e-6 } },
        },
      }),
    );
    expect(what).toBe('Measure this string again.');
    expect(why).toBe(
      'It reads 1.18 thou (0.0300 mm) too thick, where about 0.04 thou (0.0010 mm) too thin was expected.',
    );
  });

  it('owns that a machine is too rough for its tolerance', () => {
    const rough = { ...advice({ decision: { kind: 'run' }, why: { kind: 'sure-enough' } }) };
    const { why } = dialInInWords({ ...rough, odds: { ...odds, capable: false } });
    expect(why).toContain('differ too much for the tolerance');
  });

  it('tells the traverse what the turns showed', () => {
    expect(pitchAdviceInWords({ kind: 'move', toM: 2.97e-4, byM: -3e-6, seen: 'gaps' })).toEqual({
      what: 'Set the traverse to 0.2970 mm a turn.',
      why: 'Gaps between turns: the traverse runs ahead of the wire.',
    });
  });
});
