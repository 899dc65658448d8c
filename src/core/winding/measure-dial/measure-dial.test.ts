import { describe, expect, it } from 'vitest';
import { seededChance } from '../../foundation/index.js';
import { dialForPull, pullAtDial } from './dial-for-pull.js';
import { asDialReading, type DialReading, valueRead } from './dial-reading.js';
import { dialsToRead } from './dials-to-read.js';
import { measuredTable } from './measured-table.js';
import { nextDial } from './next-dial.js';
import { tableDrift } from './table-drift.js';
import { turnsToCount } from './turns-to-count.js';

const reading = (dial: number, value: number, at: number): DialReading => ({
  id: `reading ${at}`,
  dial,
  value,
  instrumentShare: 0.0005,
});

const TRUE_TABLE = [10, 20, 30, 40, 50].map((dial) => ({ dial, value: 1e-5 * dial }));

/** Leads a round through to its end; `read` is what the hand reads, by number and how often it was asked for. */
function led(read: (dial: number, time: number) => number) {
  const dials = TRUE_TABLE.map(({ dial }) => dial);
  const readings: DialReading[] = [];
  const asked: Exclude<ReturnType<typeof nextDial>, { kind: 'done' }>[] = [];
  for (;;) {
    const next = nextDial({ dials, readings, inForce: TRUE_TABLE, runUp: 3 });
    if (next.kind === 'done') return { readings, asked };
    asked.push(next);
    const time = readings.filter(({ dial }) => dial === next.dial).length;
    readings.push(reading(next.dial, read(next.dial, time), readings.length));
  }
}

describe('a dial that is measured', () => {
  it('is gone through upwards twice, and turned back below only before each pass', () => {
    const { asked } = led((dial) => 1e-5 * dial);
    expect(asked.map(({ dial }) => dial)).toEqual([10, 20, 30, 40, 50, 10, 20, 30, 40, 50]);
    expect(asked.map(({ backBelow }) => backBelow)).toEqual([
      7,
      ...Array(4).fill(undefined),
      7,
      ...Array(4).fill(undefined),
    ]);
    expect(asked[0]).toMatchObject({ why: 'first', done: 0, foreseen: 10 });
  });

  it('asks a number once more whose readings do not agree, and sets the stray aside', () => {
    const { asked, readings } = led((dial, time) => 1e-5 * dial * (dial === 30 && time === 1 ? 1.04 : 1));
    expect(asked.slice(10).map(({ dial, why }) => [dial, why])).toEqual([[30, 'apart']]);
    const row = measuredTable(readings)!.rows.find(({ dial }) => dial === 30)!;
    expect(row.asideIds).toEqual([readings.filter(({ dial }) => dial === 30)[1]!.id]);
    expect(row.value).toBeCloseTo(3e-4, 12);
  });

  it('asks a number once more that was misread twice alike', () => {
    const { asked } = led((dial, time) => 1e-5 * dial * (dial === 30 && time < 2 ? 1.05 : 1));
    expect(asked[10]).toMatchObject({ dial: 30, why: 'unlike-before' });
  });

  it('ends even where a number never settles', () => {
    const chance = seededChance(4);
    const { asked } = led((dial) => 1e-5 * dial * (dial === 20 ? 1 + 0.3 * chance.next() : 1));
    expect(asked.filter(({ dial }) => dial === 20)).toHaveLength(5);
  });

  it('averages repeats: the uncertainty falls with the root of their number', () => {
    const readings = TRUE_TABLE.flatMap(({ dial, value }, at) =>
      [0, 1, 2, 3].map((time) => reading(dial, value * (1 + (time % 2 ? 1e-3 : -1e-3)), 4 * at + time)),
    );
    const { rows, spreadShare } = measuredTable(readings)!;
    for (const { value, u, count } of rows) {
      expect(count).toBe(4);
      expect(u).toBeCloseTo((spreadShare * value) / 2, 15);
    }
  });

  it('keeps one direction, and gives no two numbers the same', () => {
    const values = [1, 2, 2.5, 2.25, 3];
    const readings = values.flatMap((value, at) => [
      reading(10 * at, value, 2 * at),
      reading(10 * at, value, 2 * at + 1),
    ]);
    const found = measuredTable(readings)!;
    expect(found.rows.map(({ fitted }) => fitted)).toEqual([1, 2, 2.375, 2.375, 3]);
    expect(found.against).toEqual([20, 30]);
    expect(found.table).toEqual([
      { dial: 0, value: 1 },
      { dial: 10, value: 2 },
      { dial: 20, value: 2.375 },
      { dial: 40, value: 3 },
    ]);
  });

  it('does not count what a person struck out', () => {
    const readings = TRUE_TABLE.map(({ dial, value }, at) => reading(dial, value, at));
    const slip = { ...reading(30, 9e-4, 99), isStruck: true };
    expect(measuredTable([...readings, slip])).toEqual(measuredTable(readings));
  });

  it('has drifted where it gives otherwise than its table by more than its readings may be off', () => {
    const chance = seededChance(9);
    const noisy = (factor: number) =>
      measuredTable(
        TRUE_TABLE.flatMap(({ dial, value }, at) =>
          [0, 1].map((time) =>
            reading(dial, value * factor * (1 + 4e-4 * (chance.next() - 0.5)), 2 * at + time),
          ),
        ),
      )!;
    const worn = tableDrift(noisy(1.01), TRUE_TABLE)!;
    expect(worn.isProven).toBe(true);
    expect(worn.share).toBeCloseTo(0.01, 3);
    expect(tableDrift(noisy(1), TRUE_TABLE)!.isProven).toBe(false);
  });

  it('cannot be compared with a table of other numbers', () => {
    const found = measuredTable(TRUE_TABLE.map(({ dial, value }, at) => reading(dial, value, at)))!;
    expect(tableDrift(found, [])).toBeUndefined();
    expect(
      tableDrift(found, [
        { dial: 60, value: 1 },
        { dial: 70, value: 2 },
      ]),
    ).toBeUndefined();
  });
});

describe('turns to be counted', () => {
  it('are so many that two readings of the rule leave the uncertainty that is wanted', () => {
    const asked = { aboutPerTurnM: 2.5e-4, readingErrorM: 5e-5, wantedShare: 0.002, travelM: 1 };
    // sqrt(2) 0.05 mm / (0.002 x 0.25 mm) = 141.4 turns
    expect(turnsToCount(asked)).toMatchObject({ turns: 150, isEnough: true });
    expect(turnsToCount(asked).share).toBeCloseTo((Math.SQRT2 * 0.05) / (150 * 0.25), 12);
  });

  it('are held to the travel that there is, and it is said that they are too few', () => {
    const short = turnsToCount({
      aboutPerTurnM: 2.5e-4,
      readingErrorM: 5e-5,
      wantedShare: 0.002,
      travelM: 0.02,
    });
    expect(short).toMatchObject({ turns: 80, isEnough: false });
  });

  it('give the traverse per turn, whichever way the guide went', () => {
    expect(valueRead({ turns: 100, startM: 0.05, endM: 0.075 })).toBeCloseTo(2.5e-4, 12);
    expect(valueRead({ turns: 100, startM: 0.075, endM: 0.05 })).toBeCloseTo(2.5e-4, 12);
    expect(valueRead({ turns: 100, startM: 0.05, endM: 0.05 })).toBeUndefined();
  });

  it('leave to each reading the share that its instrument may be off', () => {
    const read = { turns: 150, startM: 0, endM: 0.0375 };
    expect(asDialReading({ readingId: 'a', dial: 3, read }, 5e-5)!.instrumentShare).toBeCloseTo(
      (Math.SQRT2 * 0.05) / 37.5,
      12,
    );
    expect(asDialReading({ readingId: 'b', dial: 3, read: { pullN: 8 } }, 0.04)!.instrumentShare).toBeCloseTo(
      0.005,
      12,
    );
  });
});

describe('numbers to be measured', () => {
  it('are spread over the dial, its ends among them, on its steps', () => {
    expect(dialsToRead({ least: 1, most: 60, step: 0.5 })).toEqual([1, 9.5, 18, 26.5, 34.5, 43, 51.5, 60]);
    expect(dialsToRead({ least: 0, most: 3, step: 1 })).toEqual([0, 1, 2, 3]);
  });
});

describe('a tension scale in numbers', () => {
  const rows = [
    { dial: 0, pullN: 2 },
    { dial: 5, pullN: 7 },
    { dial: 10, pullN: 12 },
  ];

  it('gives a pull by its table, both ways', () => {
    expect(pullAtDial(rows, 7)).toBeCloseTo(9, 9);
    expect(dialForPull(rows, 9)).toBeCloseTo(7, 9);
  });

  it('says nothing outside its table, nor by one that goes both ways', () => {
    expect(pullAtDial(rows, 11)).toBeUndefined();
    expect(dialForPull(rows, 13)).toBeUndefined();
    expect(dialForPull([...rows, { dial: 12, pullN: 11 }], 9)).toBeUndefined();
  });
});
