import { describe, expect, it } from 'vitest';
import type { QueuedEntry } from './entry.js';
import { inputReckonedOn } from './records-touched.js';
import { versionsReached } from './versions-reached.js';

const sealing = (packId: string, expectedVersion: number): QueuedEntry<'seal-pack'> => ({
  number: 1,
  requestId: 'request',
  useCase: 'seal-pack',
  input: { packId, expectedVersion },
  label: 'Seal',
  by: { id: 'person', name: 'Person' },
  at: '2026-04-14T08:00:00.000Z',
  about: [packId],
  state: 'done',
});

describe('versions that were reached', () => {
  it('carry an entry on whose hand was quicker than the screen', () => {
    const reached = versionsReached();
    reached.note(sealing('pack', 4));
    const input = { packId: 'pack', expectedVersion: 4 };
    expect(inputReckonedOn(input, [], reached.of(input)).expectedVersion).toBe(5);
  });

  it('never hold back one that saw more, nor one about another record', () => {
    const reached = versionsReached();
    reached.note(sealing('pack', 4));
    const later = { packId: 'pack', expectedVersion: 9 };
    expect(inputReckonedOn(later, [], reached.of(later)).expectedVersion).toBe(9);
    const other = { packId: 'other', expectedVersion: 1 };
    expect(inputReckonedOn(other, [], reached.of(other)).expectedVersion).toBe(1);
  });
});
