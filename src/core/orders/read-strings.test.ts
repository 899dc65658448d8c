import { describe, expect, it } from 'vitest';
import { readEnd, readGauges, readMaterial } from './read-strings.js';

const gauges = (text: string): unknown => {
  const read = readGauges(text);
  return read.ok
    ? read.value.map(({ gaugeThou, kind }) => (kind ? `${gaugeThou} ${kind}` : gaugeThou))
    : read.fault;
};

describe('the gauges of a custom set', () => {
  it.each([
    '10-13-17-26-36-46',
    '10 13 17 26 36 46',
    '.010 .013 .017 .026 .036 .046',
    '10, 13, 17, 26, 36, 46',
    '10/13/17/26/36/46',
    '10,13,17,26,36,46',
    '46 - 36 - 26 - 17 - 13 - 10',
    '0.010", 0.013", 0.017", 0.026", 0.036", 0.046"',
  ])('reads %j treble first', (text) => {
    expect(gauges(text)).toEqual([10, 13, 17, 26, 36, 46]);
  });

  it('keeps halves whole and the words plain and wound', () => {
    expect(gauges('10.5 13½ 17 1/2 20 wound 36 46')).toEqual([10.5, 13.5, 17.5, '20 wound', 36, 46]);
    expect(gauges('10-13-20p-30w')).toEqual([10, 13, '20 plain', '30 wound']);
  });

  it('takes a lone comma inside a number for a decimal comma', () => {
    expect(gauges('10,5 13 17')).toEqual([10.5, 13, 17]);
  });

  it('keeps the octave pairs of a twelve-string where they stand', () => {
    expect(gauges('10 10 14 14 9 24 13 34 18 44 28 54')).toEqual([
      10, 10, 14, 14, 9, 24, 13, 34, 18, 44, 28, 54,
    ]);
  });

  it('names the part that it cannot read, with what it may mean', () => {
    expect(gauges('10-x-17')).toMatchObject({ code: 'order.cell-unreadable', facts: { part: 'x' } });
    expect(gauges('10 13 0.46')).toMatchObject({ code: 'order.cell-ambiguous', facts: { part: '0.46' } });
  });
});

describe('a material in words', () => {
  it.each([
    ['Nickel-plated steel', 'nickel-plated-steel'],
    ['nickel plated', 'nickel-plated-steel'],
    ['80/20', 'bronze-80-20'],
    ['Phosphor Bronze', 'phosphor-bronze'],
    ['pure nickel', 'pure-nickel'],
  ])('%j is %s', (text, material) => {
    expect(readMaterial(text)).toEqual({ ok: true, value: material });
  });

  it('offers the nearest of a slip', () => {
    const read = readMaterial('phosfor bronze');
    expect(!read.ok && read.fault.nearest[0]).toBe('phosphor bronze');
  });
});

describe('an end', () => {
  it('is a ball unless told', () => {
    expect([readEnd(''), readEnd('Ball'), readEnd('loop ends'), readEnd('bullet')]).toEqual([
      'ball',
      'ball',
      'loop',
      undefined,
    ]);
  });
});
