import { describe, expect, it } from 'vitest';
import { kindsOfEnd } from './kinds-of-end.js';
import type { KeptCheck } from './use-end-checks.js';

const check = (id: string, wireId: string, changes: Partial<KeptCheck> = {}): KeptCheck => ({
  id,
  runId: 'run',
  machineId: 'bench',
  wireId,
  spoolId: null,
  end: 'ball',
  leastBreakingN: 190,
  strengthFrom: 'standard',
  gauge: '',
  insteadOf: null,
  at: '2027-03-01T08:00:00.000Z',
  by: 'person/a',
  pull: { forceN: 124, came: 'held' },
  ...changes,
});

describe('checks by kind of end', () => {
  it('stand by wire and by end, the most pulled first; what was taken back or not pulled is left out', () => {
    const { pull: _, ...looked } = check('e', 'steel 12', { twists: 9 });
    const { pull: __, ...withdrawn } = check('f', 'steel 10', { insteadOf: 'd' });
    const kinds = kindsOfEnd([
      check('a', 'steel 10', { end: 'loop' }),
      check('b', 'steel 12'),
      check('c', 'steel 12'),
      check('d', 'steel 10'),
      looked,
      withdrawn,
    ]);
    expect(kinds.map(({ wireId, end, rows }) => [wireId, end, rows.map(({ id }) => id).join()])).toEqual([
      ['steel 12', 'ball', 'b,c'],
      ['steel 10', 'loop', 'a'],
    ]);
  });
});
