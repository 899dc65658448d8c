import { describe, expect, it } from 'vitest';
import type { QueuedEntry } from './entry.js';
import { recordsTouched } from './records-touched.js';
import { takenBackIn, waitingOf } from './take-back.js';

let count = 0;
const entry = (useCase: string, input: object, state = 'waiting'): QueuedEntry =>
  ({ number: ++count, useCase, input, state, about: recordsTouched(input) }) as unknown as QueuedEntry;

const trial = entry('record-trial-string', { id: 't', runId: 'r' });
const reading = entry('record-measurements', { rows: [{ id: 'm', runId: 'r', trialStringId: 't' }] });
const good = entry('judge-trial-string', { trialStringId: 't', runId: 'r', verdict: 'good' });
const scrap = entry('judge-trial-string', { trialStringId: 't', runId: 'r', verdict: 'scrap' });
const tally = entry('record-tally', { id: 'c', runId: 'r' });
const all = [trial, reading, good, scrap, tally];

describe('what waits of an entry that is taken back', () => {
  it('is the entry alone, and of a trial string all that was entered of it', () => {
    expect(waitingOf(all, { of: 'tally', id: 'c' })).toEqual([tally]);
    expect(waitingOf(all, { of: 'measurement', id: 'm' })).toEqual([reading]);
    expect(waitingOf(all, { of: 'trial-string', id: 't' })).toEqual([trial, reading, good, scrap]);
  });

  it('is the last word of a verdict, so that the one before it stands again', () => {
    expect(waitingOf(all, { of: 'verdict', id: 't' })).toEqual([scrap]);
  });

  it('is nothing once the entry may be with the shop, or came among others in one', () => {
    const gone = { ...tally, state: 'sending' as const };
    expect(waitingOf([gone], { of: 'tally', id: 'c' })).toEqual([]);
    const rows = entry('record-measurements', { rows: [{ id: 'm' }, { id: 'n' }] });
    expect(waitingOf([rows], { of: 'measurement', id: 'm' })).toEqual([]);
  });
});

it('names what entries on their way take back', () => {
  const coming = [
    tally,
    entry('void-tally', { id: '1', tallyId: 'c' }),
    entry('void-measurement', { id: '2', measurementId: 'm' }),
    entry('void-trial-string', { id: '3', trialStringId: 't' }),
  ];
  expect([...takenBackIn(coming)]).toEqual(['c', 'm', 't']);
});
