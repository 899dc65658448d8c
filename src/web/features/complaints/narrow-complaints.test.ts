import { expect, it } from 'vitest';
import { narrowComplaints } from './narrow-complaints.js';

const row = (id: string, more: object) => ({
  id,
  at: '2027-01-01T00:00:00.000Z',
  state: 'open',
  player: 'Ilonek Copperstead',
  fault: 'dull' as const,
  hasTrace: false,
  ...more,
});

it('complaints are found by player, string and lot, in any case, and by where they stand', () => {
  const rows = [
    row('one', { stringKey: 'k46', lot: '2027-01-04 lot 2' }),
    row('two', { player: 'Brila Winnowholt', state: 'closed' }),
  ];
  const found = (wish: object) => narrowComplaints(rows, wish, () => '46 wound').map(({ id }) => id);
  expect(found({})).toEqual(['one', 'two']);
  expect(found({ text: 'winnow' })).toEqual(['two']);
  expect(found({ text: '46 W' })).toEqual(['one']);
  expect(found({ text: 'lot 2' })).toEqual(['one']);
  expect(found({ state: 'closed' })).toEqual(['two']);
  expect(found({ state: 'all', text: 'nobody' })).toEqual([]);
});
