import { describe, expect, it } from 'vitest';
import type { RecordOf } from '../../api/use-records.js';
import type { QueuedEntry } from '../../outbox/index.js';
import { lotAsComing, lotCalled, lotCount, lyingIn } from './lot-count.js';

const tally = (outcome: 'good' | 'scrap', count: number, station: 'coiler' | 'winder' = 'coiler') => ({
  id: `${outcome} ${count}`,
  station,
  outcome,
  reason: outcome === 'good' ? '' : 'kinked',
  count,
});

describe('a lot on the coiling table', () => {
  it('has left to look at what nobody counted there', () => {
    const count = lotCount([tally('good', 8), tally('scrap', 1), tally('good', 12, 'winder')], 12);
    expect(count).toEqual({ good: 8, rejects: [{ reason: 'kinked', count: 1 }], rejected: 1, left: 3 });
    expect(lotCount([tally('good', 20)], 12).left).toBe(0);
  });

  it('lies in the bin less what was rejected and is not booked yet', () => {
    const balance = (binId: string, quantity: number) =>
      ({ account: `bin/${binId}`, item: 'string/x', lot: 'l', unit: 'pieces', quantity }) as const;
    const scrap = (state: string) =>
      ({
        useCase: 'scrap-strings',
        state,
        input: { lotId: 'l', binId: 'b', count: 1 },
      }) as unknown as QueuedEntry;
    const lying = lyingIn([balance('a', 2), balance('b', 5)], [scrap('waiting'), scrap('done')], 'l');
    expect(lying).toEqual([
      { binId: 'b', count: 4 },
      { binId: 'a', count: 2 },
    ]);
  });

  it('stands as it was judged here', () => {
    const lot = {
      id: 'l',
      version: 1,
      state: 'in-check',
      body: { name: 'Lot 4' },
    } as unknown as RecordOf<'string-lot'>;
    const judged = (useCase: string, expectedVersion: number) =>
      ({ useCase, input: { lotId: 'l', expectedVersion, reason: 'why' } }) as unknown as QueuedEntry;
    expect(lotAsComing(lot, [judged('hold-lot', 1)])).toMatchObject({
      state: 'on-hold',
      version: 2,
      body: { holdReason: 'why' },
    });
    expect(lotAsComing({ ...lot, version: 2, state: 'released' }, [judged('release-lot', 1)]).version).toBe(
      2,
    );
    expect(lotCalled(' lot 4', [lot])).toBe(lot);
  });
});
