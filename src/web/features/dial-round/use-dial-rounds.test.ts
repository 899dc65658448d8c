import { describe, expect, it } from 'vitest';
import type { QueuedEntry } from '../../outbox/index.js';
import { type DialRound, roundsAsComing } from './use-dial-rounds.js';

const round: DialRound = {
  id: 'r',
  version: 2,
  state: 'open',
  createdAt: '2026-11-25T08:00:00.000Z',
  updatedAt: '2026-11-25T08:00:00.000Z',
  body: {
    machineId: 'm',
    quantity: 'pull',
    dials: [2, 4],
    readingError: 0.05,
    wantedShare: 0.01,
    readings: [],
  },
};

const entry = (useCase: string, input: object): QueuedEntry =>
  ({ useCase, input, at: '2026-11-25T09:00:00.000Z', by: { id: 'p', name: 'A hand' } }) as QueuedEntry;

const read = (readingId: string) =>
  entry('record-dial-reading', {
    roundId: 'r',
    readingId,
    dial: 2,
    read: { pullN: 6 },
    instrument: 'scale',
  });

describe('a round with what waits on this screen', () => {
  it('has readings at once, each once, and those that were struck out', () => {
    const [now] = roundsAsComing(
      [round],
      [read('a'), read('b'), entry('strike-dial-reading', { roundId: 'r', readingId: 'a', isStruck: true })],
    );
    expect(now!.body.readings.map(({ readingId, isStruck }) => [readingId, isStruck])).toEqual([
      ['a', true],
      ['b', undefined],
    ]);
    const [again] = roundsAsComing([now!], [read('b')]);
    expect(again!.body.readings).toHaveLength(2);
  });

  it('is there before the shop knows of it', () => {
    const { readings: _, ...asked } = round.body;
    const begun = entry('begin-dial-round', { id: 'n', ...asked });
    expect(roundsAsComing([round], [begun]).map(({ id }) => id)).toEqual(['r', 'n']);
    expect(roundsAsComing([{ ...round, id: 'n' }], [begun])).toHaveLength(1);
  });
});
