import { describe, expect, it } from 'vitest';
import {
  readDialRows,
  readPitches,
  readScales,
  writeDialRows,
  writePitches,
  writeScales,
} from './list-texts.js';

describe('several values written as one text', () => {
  it('may be the rows of a dial table, with points or commas', () => {
    const rows = readDialRows('10 0.125\n 20,5   0,251 \n');
    expect(rows).toEqual([
      { dial: 10, traversePerTurnM: 0.000125 },
      { dial: 20.5, traversePerTurnM: 0.000251 },
    ]);
    expect(readDialRows(writeDialRows(rows!))).toEqual(rows);
    expect(readDialRows('10 0.125')).toBeUndefined();
    expect(readDialRows('10 0.125\n20')).toBeUndefined();
  });

  it('may be scale lengths', () => {
    expect(readScales('25.5 in\n648 mm')?.map((lengthM) => Math.round(lengthM * 1000))).toEqual([648, 648]);
    expect(readScales(writeScales([0.6477, 0.6858]))).toEqual([0.6477, 0.6858]);
    expect(readScales('long')).toBeUndefined();
  });

  it('may be notes with their octaves, cents too', () => {
    const pitches = readPitches('E4 B3 -4 c G3');
    expect(pitches?.map(({ midi }) => midi)).toEqual([64, 59, 55]);
    expect(pitches?.[1]?.cents).toBe(-4);
    expect(readPitches(writePitches(pitches!))).toEqual(pitches);
    expect(readPitches('E B G')).toBeUndefined();
  });
});
