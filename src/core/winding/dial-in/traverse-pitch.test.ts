import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type PitchLook, type PitchRange, pitchAdvice, type TurnsSeen } from './traverse-pitch.js';

const RANGE: PitchRange = { leastM: 1e-4, mostM: 1e-3, stepM: 1e-6 };

describe('the traverse', () => {
  it('is left where the turns lie even', () => {
    expect(pitchAdvice([{ pitchM: 2.5e-4, seen: 'even' }], RANGE)).toEqual({ kind: 'keep' });
  });

  it('goes closer for gaps and wider for overlaps, by one rule step', () => {
    const move = (seen: TurnsSeen) => pitchAdvice([{ pitchM: 3e-4, seen }], RANGE);
    expect(move('gaps')).toMatchObject({ kind: 'move', toM: expect.closeTo(2.97e-4, 9) });
    expect(move('overlaps')).toMatchObject({ kind: 'move', toM: expect.closeTo(3.03e-4, 9) });
  });

  it('goes half-way once both were seen', () => {
    const looks: PitchLook[] = [
      { pitchM: 3.04e-4, seen: 'gaps' },
      { pitchM: 3e-4, seen: 'overlaps' },
    ];
    expect(pitchAdvice(looks, RANGE)).toMatchObject({ kind: 'move', toM: expect.closeTo(3.02e-4, 9) });
  });

  it('takes the wider of two neighbouring steps', () => {
    const looks: PitchLook[] = [
      { pitchM: 3.01e-4, seen: 'gaps' },
      { pitchM: 3e-4, seen: 'overlaps' },
    ];
    expect(pitchAdvice(looks, RANGE)).toEqual({ kind: 'no-finer', toM: 3.01e-4 });
  });

  it('asks for another look where gaps were seen at a closer pitch than overlaps', () => {
    const looks: PitchLook[] = [
      { pitchM: 3e-4, seen: 'overlaps' },
      { pitchM: 2.9e-4, seen: 'gaps' },
    ];
    expect(pitchAdvice(looks, RANGE).kind).toBe('look-again');
  });

  it('says so at the end of its range', () => {
    expect(pitchAdvice([{ pitchM: 1e-3, seen: 'overlaps' }], RANGE)).toEqual({
      kind: 'end-of-traverse',
      seen: 'overlaps',
    });
  });

  it('comes to rest near the touching pitch, wherever it begins', () => {
    const pitch = fc.double({ min: 2e-4, max: 6e-4, noNaN: true });
    fc.assert(
      fc.property(pitch, fc.double({ min: 0.94, max: 1.06, noNaN: true }), (touchingM, start) => {
        const seenAt = (pitchM: number): TurnsSeen => {
          if (pitchM < touchingM) return 'overlaps';
          return pitchM > 1.004 * touchingM ? 'gaps' : 'even';
        };
        const looks: PitchLook[] = [{ pitchM: start * touchingM, seen: seenAt(start * touchingM) }];
        for (let look = 0; look < 16; look++) {
          const advice = pitchAdvice(looks, RANGE);
          if (advice.kind !== 'move') break;
          looks.push({ pitchM: advice.toM, seen: seenAt(advice.toM) });
        }
        const advice = pitchAdvice(looks, RANGE);
        expect(['keep', 'no-finer']).toContain(advice.kind);
        expect(looks.length).toBeLessThan(14);
      }),
    );
  });
});
