import { describe, expect, it } from 'vitest';
import { GEAR, SERVO } from '../../../test/fixtures/winders.js';
import { pitchRangeOf, turnsAdvice } from './turns-advice.js';

const RANGE = { leastM: 1e-4, mostM: 1e-3, stepM: 1e-6 };

describe('advice on the traverse of a run', () => {
  it('is none before anybody looked', () => {
    expect(turnsAdvice(3e-4, [], RANGE)).toBeUndefined();
  });

  it('goes on from what was advised after each string', () => {
    expect(turnsAdvice(3e-4, ['gaps'], RANGE)).toMatchObject({
      kind: 'move',
      toM: expect.closeTo(2.97e-4, 9),
    });
    const between = turnsAdvice(3e-4, ['gaps', 'overlaps'], RANGE);
    expect(between).toMatchObject({ kind: 'move' });
    if (between?.kind === 'move') expect(between.toM).toBeGreaterThan(2.97e-4);
    expect(turnsAdvice(3e-4, ['gaps', 'even'], RANGE)).toEqual({ kind: 'keep' });
  });

  it('stays within what the machine can be put to', () => {
    expect(pitchRangeOf(SERVO)).toEqual({
      leastM: SERVO.pitchM.least,
      mostM: SERVO.pitchM.most,
      stepM: SERVO.pitchStepM,
    });
    const ends = GEAR.dialTable.map(({ traversePerTurnM }) => traversePerTurnM);
    expect(pitchRangeOf(GEAR)).toMatchObject({ leastM: Math.min(...ends), mostM: Math.max(...ends) });
  });
});
