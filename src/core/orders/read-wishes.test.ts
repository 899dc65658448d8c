import { describe, expect, it } from 'vitest';
import { readWishes, WISH_EXAMPLES } from './read-wishes.js';

const wishes = (text: string): unknown => {
  const read = readWishes(text);
  return read.ok ? read.value : read.fault;
};

describe('a player’s wishes', () => {
  it('are the feel of the liked set where nothing is said', () => {
    expect(wishes('')).toEqual({ target: 'feel' });
  });

  it('are read phrase by phrase', () => {
    expect(wishes('Even 75 N; heavier bass 5 %; lighter trebles 2.5%')).toEqual({
      target: 'even',
      pullsN: [75],
      heavierBass: 0.05,
      heavierTreble: -0.025,
    });
    expect(wishes('graded 3 %; bend 50 %; wound third; string 1 = 10.5')).toEqual({
      target: 'graded',
      gradePerString: 0.03,
      bendShare: 0.5,
      woundThird: true,
      pins: [{ position: 1, string: { gaugeThou: 10.5 } }],
    });
    expect(wishes('pulls 70 N 72 N, 74 N')).toEqual({ target: 'free', pullsN: [70, 72, 74] });
  });

  it('name the phrase that is not known', () => {
    expect(wishes('even; make it sparkle')).toEqual({ code: 'unreadable', phrase: 'make it sparkle' });
    expect(wishes('heavier bass 1.2.3 %')).toEqual({ code: 'unreadable', phrase: 'heavier bass 1.2.3 %' });
  });

  it('name the phrase that asks for what no string could give', () => {
    for (const phrase of [
      'bend 150 %',
      'lighter bass 100 %',
      'heavier bass 5000 %',
      'graded 90 %',
      'even 1 N',
    ])
      expect(wishes(`wound third; ${phrase}`)).toEqual({ code: 'out-of-range', phrase });
  });

  it('name the phrase that aims at something else than one before it', () => {
    expect(wishes('even 75 N; graded 3 %')).toEqual({ code: 'contradiction', phrase: 'graded 3 %' });
    expect(wishes('feel; pulls 70 N')).toEqual({ code: 'contradiction', phrase: 'pulls 70 N' });
    expect(wishes('string 1 = 10; string 1 = 11')).toEqual({
      code: 'contradiction',
      phrase: 'string 1 = 11',
    });
  });

  it('may grade pulls from one that is given', () => {
    expect(wishes('graded 3 % from 70 N')).toEqual({ target: 'graded', gradePerString: 0.03, pullsN: [70] });
  });

  it('keep every string that is given', () => {
    expect(wishes('string 1 = 10; string 6 = 52')).toMatchObject({
      pins: [
        { position: 1, string: { gaugeThou: 10 } },
        { position: 6, string: { gaugeThou: 52 } },
      ],
    });
  });

  it('can be written as every example that a fault offers', () => {
    for (const example of WISH_EXAMPLES) expect(readWishes(example), example).toMatchObject({ ok: true });
  });
});
