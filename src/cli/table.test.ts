import { describe, expect, it } from 'vitest';
import { textTable } from './table.js';

describe('a table on a terminal', () => {
  it('sets words left, numbers right, and cuts what is too long', () => {
    const rows = [
      { name: 'Ida', count: 7 },
      { name: 'Bartholomäus', count: 120 },
    ];
    expect(
      textTable(rows, [
        { heading: 'player', cell: (row) => row.name, widest: 8 },
        { heading: 'sets', cell: (row) => String(row.count), align: 'right' },
      ]).split('\n'),
    ).toEqual(['player    sets', '────────  ────', 'Ida          7', 'Barthol…   120']);
  });

  it('shows its headings where there is nothing else', () => {
    expect(textTable([], [{ heading: 'set', cell: () => '' }])).toBe('set\n───');
  });
});
