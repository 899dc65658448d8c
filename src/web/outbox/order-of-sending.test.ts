import { describe, expect, it } from 'vitest';
import type { QueuedEntry } from './entry.js';
import { nextToSend, stoppedByRefusal } from './order-of-sending.js';

const entry = (number: number, about: string[], change: Partial<QueuedEntry> = {}): QueuedEntry =>
  ({
    number,
    about,
    state: 'waiting',
    by: { id: 'winder', name: 'W' },
    ...change,
  }) as QueuedEntry;

const next = (entries: readonly QueuedEntry[], now = 0) => {
  const found = nextToSend(entries, { personId: 'winder', now });
  return found.kind === 'entry' ? found.entry.number : found.kind;
};

describe('the order of sending', () => {
  it('is that of entry', () => {
    expect(next([entry(1, ['run']), entry(2, ['run'])])).toBe(1);
    expect(next([entry(1, ['run'], { state: 'done' }), entry(2, ['run'])])).toBe(2);
  });

  it('sends again what got no answer before anything after it', () => {
    expect(next([entry(1, ['run'], { state: 'sending' }), entry(2, ['lot'])])).toBe(1);
  });

  it('lets a refused entry stop only those about the same, and those behind them', () => {
    const entries = [
      entry(1, ['run'], { state: 'refused' }),
      entry(2, ['run', 'lot']),
      entry(3, ['lot']),
      entry(4, ['other']),
    ];
    expect(next(entries)).toBe(4);
    expect([...stoppedByRefusal(entries)]).toEqual([2, 3]);
  });

  it('passes by what is another person’s, but not what builds on it', () => {
    const theirs = entry(1, ['run'], { by: { id: 'other', name: 'O' } });
    expect(next([theirs, entry(2, ['run']), entry(3, ['lot'])])).toBe(3);
    expect(next([theirs, entry(2, ['run'])])).toBe('nothing');
  });

  it('waits for an entry that can still be taken back, and sends nothing past it', () => {
    const entries = [entry(1, ['run'], { heldUntil: 100 }), entry(2, ['lot'])];
    expect(next(entries, 99)).toBe('held');
    expect(next(entries, 100)).toBe(1);
  });
});
