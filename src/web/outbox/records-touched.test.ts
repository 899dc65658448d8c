import { describe, expect, it } from 'vitest';
import type { QueuedEntry } from './entry.js';
import { followersMoved, inputReckonedOn, recordsTouched, subjectOf } from './records-touched.js';

const queued = (number: number, input: object): QueuedEntry =>
  ({ number, input, state: 'waiting' }) as unknown as QueuedEntry;

describe('what an entry depends on', () => {
  it('is the record that it changes, and those that it makes', () => {
    expect(recordsTouched({ runId: 'r', expectedVersion: 1 })).toEqual(['r']);
    expect(recordsTouched({ id: 't', runId: 'r', outcome: 'good' })).toEqual(['r', 't']);
    expect(recordsTouched({ runId: 'r', lotId: 'l', binId: 'b' })).toEqual(['r', 'l']);
  });

  it('is not what it merely takes from: a string’s lot, a bin', () => {
    expect(recordsTouched({ packId: 'p', position: 1, lotId: 'l', binId: 'b' })).toEqual(['p']);
    expect(subjectOf({ packId: 'p', lotId: 'l' })).toBe('p');
  });

  it('is, of several rows, theirs', () => {
    const rows = [{ id: 'm', runId: 'r', trialStringId: 't' }];
    expect(recordsTouched({ rows })).toEqual(['r', 'm', 't']);
  });
});

describe('the version that an entry expects', () => {
  const start = queued(1, { runId: 'r', expectedVersion: 1 });
  const pause = queued(2, { runId: 'r', expectedVersion: 2 });

  it('is reckoned on from what waits about the same record', () => {
    const input = { runId: 'r', expectedVersion: 1 };
    expect(inputReckonedOn(input, [start, pause])).toMatchObject({ expectedVersion: 3 });
    expect(inputReckonedOn(input, [queued(1, { runId: 'x', expectedVersion: 9 })])).toEqual(input);
  });

  it('is what the page has seen, where that is more', () => {
    expect(inputReckonedOn({ runId: 'r', expectedVersion: 7 }, [start])).toMatchObject({
      expectedVersion: 7,
    });
  });

  it('does not appear where none is asked for', () => {
    expect(inputReckonedOn({ runId: 'r' }, [start])).toEqual({ runId: 'r' });
  });

  it('moves with an entry before it that is thrown away, and only behind it', () => {
    const moved = followersMoved([start, pause, queued(3, { runId: 'x', expectedVersion: 5 })], {
      entry: start,
      by: -1,
    });
    expect(moved.map(({ number, input }) => [number, input])).toEqual([
      [2, { runId: 'r', expectedVersion: 1 }],
    ]);
  });
});
