import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deeds, overdrawn, playedOut } from '../../../test/fixtures/ledger-history.js';
import { correctMovement } from './correct-movement.js';
import type { Entry, Movement } from './ledger.js';
import { movementFault, mustNotGoBelowZero } from './ledger-laws.js';
import { netEntries, replay } from './ledger-replay.js';

const entry = (account: string, quantity: number, more: Partial<Entry> = {}): Entry => ({
  account: account as Entry['account'],
  item: 'string/46',
  lot: 'lot',
  unit: 'pieces',
  quantity,
  ...more,
});
const movement = (entries: readonly Entry[], more: Partial<Movement> = {}): Movement => ({
  what: 'move',
  reason: '',
  ofKind: 'string-lot',
  ofId: 'lot',
  entries,
  ...more,
});
const codeOf = (...entries: readonly Entry[]) => movementFault(movement(entries))?.code;
const wire = (account: string, mg: number, mm: number): readonly Entry[] => [
  entry(account, mg, { item: 'wire/core', unit: 'mg' }),
  ...(mm === 0 ? [] : [entry(account, mm, { item: 'wire/core', unit: 'mm' })]),
];

describe('a movement', () => {
  it('stands when what leaves one account comes to another', () => {
    expect(codeOf(entry('bin/a', -3), entry('bin/b', 2), entry('scrap/rust', 1))).toBeUndefined();
    expect(codeOf(...wire('spool/s', -2000, -900), ...wire('wound-in', 2000, 900))).toBeUndefined();
  });

  it.each([
    ['ledger.nothing-moved', []],
    ['ledger.unbalanced', [entry('bin/a', -3), entry('bin/b', 2)]],
    ['ledger.unbalanced', [entry('bin/a', -2), entry('bin/b', 3)]],
    ['ledger.unbalanced', [entry('bin/a', -3), entry('bin/b', 3, { lot: 'other' })]],
    ['ledger.unbalanced', [entry('bin/a', -3), entry('bin/b', 3, { item: 'string/42' })]],
    ['ledger.not-whole', [entry('bin/a', -0.5), entry('bin/b', 0.5)]],
    ['ledger.not-whole', [entry('bin/a', Number.NaN), entry('bin/b', Number.NaN)]],
    ['ledger.beyond-limit', [entry('made', -2e12), entry('bin/b', 2e12)]],
    ['ledger.zero-entry', [entry('bin/a', 0), entry('bin/b', 0)]],
    ['ledger.unknown-account', [entry('shelf/a', -1), entry('bin/b', 1)]],
    ['ledger.unknown-account', [entry('bin/', -1), entry('bin/b', 1)]],
    ['ledger.unknown-account', [entry('supplier/x', -1), entry('bin/b', 1)]],
    ['ledger.unknown-item', [entry('made', -1, { item: 'string/' }), entry('bin/b', 1, { item: 'string/' })]],
    ['ledger.other-unit', [entry('made', -1, { unit: 'mg' }), entry('bin/b', 1, { unit: 'mg' })]],
    ['ledger.weight-without-length', [...wire('spool/s', -2000, 0), ...wire('wound-in', 2000, 0)]],
    ['ledger.length-without-weight', [...wire('spool/s', -2000, 9), ...wire('wound-in', 2000, -9)]],
  ] as const)('is none: %s', (code, entries) => {
    expect(codeOf(...entries)).toBe(code);
  });

  it('needs a reason where a person overrules the book', () => {
    const entries = [entry('count-difference/stock-take', -1), entry('bin/a', 1)];
    expect(movementFault(movement(entries, { what: 'count' }))?.code).toBe('ledger.without-reason');
    expect(movementFault(movement(entries, { what: 'count', reason: 'stock-taking' }))).toBeUndefined();
  });

  it('of less wire than a scale shows may have no length', () => {
    expect(codeOf(...wire('spool/s', -3, 0), ...wire('wound-in', 3, 0))).toBeUndefined();
  });
});

it('things that can be touched are guarded, sources and drains are not', () => {
  const guarded = ['spool/s', 'run/r', 'bin/b', 'order/o', 'pack/p'];
  const open = ['supplier', 'customer', 'made', 'wound-in', 'scrap/rust', 'count-difference/weighing'];
  expect([...guarded, ...open].filter(mustNotGoBelowZero)).toEqual(guarded);
});

it('entries on the same place come together, and what cancels out is no change', () => {
  const there = [entry('bin/a', -2), entry('bin/b', 2)];
  const back = [entry('bin/b', -2), entry('bin/a', 2)];
  expect(netEntries([...there, ...there])).toEqual([entry('bin/a', -4), entry('bin/b', 4)]);
  expect(netEntries([...there, ...back])).toEqual([]);
});

describe('any history', () => {
  const histories = deeds(60).map(playedOut);

  it('holds only movements that obey the laws, done or refused', () => {
    fc.assert(
      fc.property(histories, ({ done, refused }) => {
        expect([...done, ...refused].map(movementFault).filter(Boolean)).toEqual([]);
      }),
    );
  });

  it('sums to zero over all accounts at every instant, and no guarded account is ever below zero', () => {
    fc.assert(
      fc.property(histories, ({ done }) => {
        for (const [index] of done.entries()) {
          const books = replay(done.slice(0, index + 1));
          const sums = new Map<string, number>();
          for (const { item, lot, unit, quantity } of books) {
            const thing = `${item} ${lot} ${unit}`;
            sums.set(thing, (sums.get(thing) ?? 0) + quantity);
          }
          expect([...sums.values()].every((sum) => sum === 0)).toBe(true);
          expect(overdrawn(books)).toEqual([]);
        }
      }),
      { numRuns: 40 },
    );
  });

  it('gives the same balances in whatever order it is replayed', () => {
    fc.assert(
      fc.property(histories, ({ done }) => {
        expect(replay([...done].reverse())).toEqual(replay(done));
      }),
    );
  });

  it('is restored by the correction of its last movement, and a correction of that brings it back', () => {
    fc.assert(
      fc.property(histories, ({ done }) => {
        const last = done.at(-1);
        fc.pre(last !== undefined);
        const correction = { ...correctMovement(last!, 'done by mistake'), id: 'correction' };
        expect(replay([...done, correction])).toEqual(replay(done.slice(0, -1)));
        expect(replay([...done, correction, correctMovement(correction, 'it was right')])).toEqual(
          replay(done),
        );
      }),
    );
  });

  it('leaves a spool without length when it is without weight', () => {
    fc.assert(
      fc.property(histories, ({ done }) => {
        const books = replay(done).filter(({ account }) => account.startsWith('spool/'));
        for (const { account, unit } of books.filter((row) => row.unit === 'mm'))
          expect(
            books.some((row) => row.account === account && row.unit === 'mg'),
            `${account} ${unit}`,
          ).toBe(true);
      }),
    );
  });

  it('is refused things at times, or these laws were not tried', () => {
    const drawn = fc.sample(histories, { numRuns: 100, seed: 3 });
    const whats = new Set(drawn.flatMap(({ done }) => done.map(({ what }) => what)));
    expect(drawn.some(({ refused }) => refused.length > 0)).toBe(true);
    expect([...whats].sort()).toEqual([
      'correct',
      'count',
      'make',
      'move',
      'pick',
      'receive',
      'scrap',
      'seal',
      'ship',
      'unpick',
      'use',
      'void',
    ]);
  });
});
