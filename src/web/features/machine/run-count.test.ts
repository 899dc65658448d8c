import { describe, expect, it } from 'vitest';
import type { RecordOf } from '../../api/use-records.js';
import { eachOnce, type Tally } from '../../parts/tallies.js';
import { closeFormOf, closingOf } from './close-form.js';
import { runCount } from './run-count.js';
import { cellsOf, cellsShown, meanDiameterM, readingIn } from './trial-readings.js';

const tally = (id: string, outcome: Tally['outcome'], count: number, reason = ''): Tally => ({
  id,
  station: 'winder',
  outcome,
  reason,
  count,
});

const COUNT = runCount(
  [
    tally('1', 'good', 10),
    tally('2', 'good', 2),
    tally('3', 'scrap', 1, 'kinked'),
    tally('4', 'scrap', 1, 'kinked'),
    { ...tally('5', 'scrap', 1, 'kinked'), station: 'coiler' },
  ],
  [{ verdict: 'good' }, { verdict: 'scrap' }, { verdict: 'open' }],
  'dialling in',
);

describe('the count of a run', () => {
  it('has trial strings by their verdict, and leaves the coiler’s out', () => {
    expect(COUNT).toEqual({
      tallied: 12,
      goodTrials: 1,
      good: 13,
      scrap: [
        { reason: 'kinked', count: 2 },
        { reason: 'dialling in', count: 1 },
      ],
      scrapped: 3,
    });
  });

  it('has an entry once, though it waits here and is with the shop already', () => {
    expect(eachOnce([{ id: 'a' }], [{ id: 'a' }, { id: 'b' }])).toEqual([{ id: 'a' }, { id: 'b' }]);
  });
});

describe('the close', () => {
  const run = { id: 'r', version: 4 } as RecordOf<'run'>;
  const spools = [
    { id: 's', body: { tareKg: 0.2, weighed: { grossKg: 4, at: '' } } },
    { id: 't', body: { tareKg: 0 } },
  ] as unknown as RecordOf<'spool'>[];
  const of = { run, spools, lotId: 'l', lotName: 'lot' };
  const form = closeFormOf(COUNT, undefined);

  it('begins with what was counted, wants a bin, and leaves out what was not weighed', () => {
    expect(closingOf(form, of)).toBeUndefined();
    expect(closingOf({ ...form, binId: 'b', weights: { s: '3,950', t: ' ' } }, of)).toEqual({
      runId: 'r',
      expectedVersion: 4,
      lotId: 'l',
      lotName: 'lot',
      binId: 'b',
      good: 13,
      scrap: COUNT.scrap,
      spools: [{ spoolId: 's', grossKg: 3.95 }],
    });
  });

  it('does not take grams for kilograms, nor half a string', () => {
    expect(closingOf({ ...form, binId: 'b', weights: { s: '3950' } }, of)).toBeUndefined();
    expect(closingOf({ ...form, binId: 'b', good: '12.5' }, of)).toBeUndefined();
  });

  it('drops a reason that was put right to nothing', () => {
    const scrap = form.scrap.map((each) => (each.reason === 'kinked' ? { ...each, count: '0' } : each));
    expect(closingOf({ ...form, binId: 'b', scrap }, of)?.scrap).toEqual([
      { reason: 'dialling in', count: 1 },
    ]);
  });
});

describe('the readings of a trial string', () => {
  const cells = cellsOf({
    placesFromEndM: [0.05, 0.5],
    rotationsDeg: [0, 30],
  });
  const reading = (placeM: number, rotationDeg: number, value: number) => ({
    quantity: 'diameter' as const,
    placeM,
    rotationDeg,
    value,
  });

  it('go place by place, turn by turn, and end with the weight', () => {
    expect(
      cells.map((cell) => (cell.quantity === 'mass' ? 'mass' : `${cell.placeM} ${cell.rotationDeg}`)),
    ).toEqual(['0.05 0', '0.05 30', '0.5 0', '0.5 30', 'mass']);
  });

  it('hold the last where a place was measured again', () => {
    const cell = cells[0]!;
    expect(readingIn(cell, [reading(0.05, 0, 1), reading(0.0502, 0, 2)])?.value).toBe(2);
  });

  it('are shown where another plan was followed, in the order along the string', () => {
    const readings = [reading(0.7, 0, 1), reading(0.2, 90, 1), reading(0.2, 0, 1), reading(0.7001, 0, 1)];
    const shown = cellsShown(cells, readings);
    expect(
      shown.map((cell) => (cell.quantity === 'mass' ? 'mass' : `${cell.placeM} ${cell.rotationDeg}`)),
    ).toEqual(['0.2 0', '0.2 90', '0.7 0', 'mass']);
    expect(cellsShown(cells, [])).toBe(cells);
  });

  it('have a mean in which each place weighs the same', () => {
    const readings = [reading(0.05, 0, 1), reading(0.05, 30, 3), reading(0.5, 0, 4)];
    expect(meanDiameterM(cells, readings)).toBe(3);
    expect(meanDiameterM(cells, [])).toBeUndefined();
  });
});
