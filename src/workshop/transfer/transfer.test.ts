import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { csvOf, flatten, unflatten } from './flat-table.js';
import { backupsToDrop } from './keep-rule.js';

describe('a body as cells', () => {
  it('comes back as it went, whatever it holds', () => {
    const leaf = fc.oneof(
      fc.string({ minLength: 1 }).filter((text) => text.trim() !== ''),
      fc.integer(),
      fc.boolean(),
      fc.array(fc.integer(), { maxLength: 3 }),
    );
    const name = fc
      .stringMatching(/^[a-z]{1,6}$/)
      .filter((each) => !['constructor', 'prototype'].includes(each));
    const body = fc.dictionary(name, fc.oneof(leaf, fc.dictionary(name, leaf, { minKeys: 1, maxKeys: 3 })), {
      maxKeys: 5,
    });
    fc.assert(
      fc.property(body, (each) => {
        expect(unflatten(flatten(each))).toEqual(JSON.parse(JSON.stringify(each)));
      }),
    );
  });

  it('keeps a text of digits a text', () => {
    expect(unflatten(flatten({ lot: '12', count: 12 }))).toEqual({ lot: '12', count: 12 });
  });

  it('writes formulas so that no spreadsheet runs them', () => {
    expect(csvOf([{ name: '=1+1' }])).toBe("name\n'=1+1\n");
  });

  it('does not let a column reach behind the body', () => {
    unflatten({ '__proto__.polluted': 'yes' });
    expect(({} as { polluted?: string }).polluted).toBeUndefined();
  });
});

describe('which backups go', () => {
  const backup = (day: string, hour = '03') => ({ path: day, at: `${day}T${hour}:00:00.000Z` });
  const rule = { daily: 2, weekly: 2, monthly: 2 };

  it('keeps the newest of each of the last days, weeks and months that have one', () => {
    const all = [
      '2027-01-04',
      '2027-01-20',
      '2027-02-10',
      '2027-02-22',
      '2027-02-27',
      '2027-02-28',
      '2027-03-01',
    ].map((day) => backup(day));
    // Days: 03-01, 02-28. Weeks (from Monday): that of 03-01, and that of 02-22 with 02-28 newest. Months: March, February (02-28).
    expect(backupsToDrop(all, rule).map(({ path }) => path)).toEqual([
      '2027-01-04',
      '2027-01-20',
      '2027-02-10',
      '2027-02-22',
      '2027-02-27',
    ]);
  });

  it('never drops the newest, whatever the rule', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 3000 }), { minLength: 1 }),
        fc.nat(5),
        fc.nat(5),
        fc.nat(5),
        (days, daily, weekly, monthly) => {
          const all = days.map((day) => {
            const at = new Date(Date.UTC(2020, 0, 1) + day * 86_400_000).toISOString();
            return { path: at, at };
          });
          const dropped = backupsToDrop(all, { daily, weekly, monthly });
          const newest = all.reduce((a, b) => (b.at > a.at ? b : a));
          expect(
            dropped.some(({ at }) => at === newest.at) &&
              all.filter(({ at }) => at === newest.at).length ===
                dropped.filter(({ at }) => at === newest.at).length,
          ).toBe(false);
          expect(all.length - dropped.length).toBeLessThanOrEqual(Math.max(1, daily + weekly + monthly + 1));
        },
      ),
    );
  });
});
