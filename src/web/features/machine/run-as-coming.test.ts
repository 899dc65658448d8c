import { describe, expect, it } from 'vitest';
import type { RecordOf } from '../../api/use-records.js';
import type { QueuedEntry } from '../../outbox/index.js';
import { runAsComing } from './run-as-coming.js';
import { runsAhead } from './runs-ahead.js';

type Run = RecordOf<'run'>;

const run = (change: Partial<Run> = {}): Run =>
  ({
    id: 'r',
    version: 1,
    state: 'planned',
    createdAt: '2027-03-01',
    body: { spoolIds: [], goodCount: 0 },
    ...change,
  }) as Run;

const entry = (useCase: string, input: object): QueuedEntry =>
  ({ useCase, input: { runId: 'r', ...input }, at: '2027-03-01T08:00:00.000Z' }) as unknown as QueuedEntry;

const START = entry('start-run', { expectedVersion: 1, spoolIds: ['a', 'b'] });
const CHANGE = entry('change-spool', { expectedVersion: 2, oldSpoolId: 'a', newSpoolId: 'c' });
const PAUSE = entry('pause-run', { expectedVersion: 3 });

describe('a run with what was entered and is not with the shop yet', () => {
  it('stands as it will stand', () => {
    expect(runAsComing(run(), [START, CHANGE, PAUSE])).toMatchObject({
      version: 4,
      state: 'paused',
      body: { spoolIds: ['c', 'b'] },
    });
  });

  it('has nothing done twice to it once the shop has some of it', () => {
    const known = run({
      version: 3,
      state: 'running',
      body: { spoolIds: ['c', 'b'] } as unknown as Run['body'],
    });
    expect(runAsComing(known, [START, CHANGE, PAUSE])).toMatchObject({
      version: 4,
      state: 'paused',
      body: { spoolIds: ['c', 'b'] },
    });
  });

  it('closes with its counts', () => {
    const close = entry('close-run', {
      expectedVersion: 2,
      good: 70,
      scrap: [{ reason: 'kinked', count: 2 }],
      lotId: 'l',
    });
    expect(runAsComing(run(), [START, close])).toMatchObject({
      state: 'closed',
      body: { goodCount: 70, scrapCount: 2, lotId: 'l', spoolIds: [] },
    });
  });

  it('is let alone by what is about another', () => {
    const other = { ...PAUSE, input: { runId: 'x', expectedVersion: 1 } } as QueuedEntry;
    expect(runAsComing(run(), [other])).toEqual(run());
  });
});

it('the next run is the next of the plan; those of no plan come after, the oldest first', () => {
  const runs = [
    run({ id: 'loose 2', createdAt: '2027-02-02' }),
    run({ id: 'loose 1', createdAt: '2027-02-01' }),
    run({ id: 'second' }),
    run({ id: 'first' }),
    run({ id: 'paused', state: 'paused' }),
    run({ id: 'running', state: 'running' }),
  ];
  const plan = { date: '2027-03-01', runs: [{ runId: 'first' }, {}, { runId: 'second' }] };
  const { underWay, planned } = runsAhead(runs, [plan as never]);
  expect(underWay.map(({ id }) => id)).toEqual(['running', 'paused']);
  expect(planned.map(({ id }) => id)).toEqual(['first', 'second', 'loose 1', 'loose 2']);
});
