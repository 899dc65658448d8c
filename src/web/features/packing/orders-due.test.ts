import { describe, expect, it } from 'vitest';
import { ordersDue } from './orders-due.js';
import { anOrder, aPack, aPacking, PLAIN_10, PLAIN_13, WOUND_26 } from './small-packing.js';
import { walkFor } from './walk.js';

describe('orders on the roll', () => {
  it('are served in the order of their due dates: who is due first has the last strings', () => {
    const orders = [anOrder('R-2', '2026-04-17'), anOrder('R-1', '2026-04-16', 2)];
    const due = ordersDue(aPacking({ orders }));
    expect(due.map(({ order, standing }) => [order.id, standing])).toEqual([
      ['R-1', 'can-be-packed'],
      ['R-2', 'waits'],
    ]);
    expect(due[1]!.lacks.map(({ stringKey, count }) => [stringKey, count])).toEqual([[WOUND_26, 1]]);
  });

  it('want no more than what their open packs lack', () => {
    const picked = [{ position: 3, stringKey: WOUND_26, lotId: '2026-04-03 lot 2', binId: 'bin 3' }];
    const packing = aPacking({
      orders: [anOrder('R-1', '2026-04-16')],
      packs: [aPack('R-1', { picked })],
    });
    const [due] = ordersDue(packing);
    expect(due!.takes.map(({ stringKey }) => stringKey).sort()).toEqual([PLAIN_10, PLAIN_13]);
  });

  it('are ready to send when all that is not sent is sealed', () => {
    const packs = [aPack('R-1', { state: 'shipped' }), aPack('R-1', { copy: 2, state: 'sealed' })];
    const due = (state: string) =>
      ordersDue(
        aPacking({ orders: [anOrder('R-1', '2026-04-16', 2)], packs: [packs[0]!, { ...packs[1]!, state }] }),
      );
    expect(due('sealed')[0]).toMatchObject({ standing: 'to-send', sets: 2, sealed: 1, sent: 1 });
    expect(due('open')[0]).toMatchObject({ standing: 'can-be-packed', sealed: 0 });
  });

  it('never take strings of lots that are on hold', () => {
    const packing = aPacking({ orders: [anOrder('R-1', '2026-04-16')] });
    const held = packing.lying.map((each) => ({ ...each, state: 'on-hold' }));
    expect(ordersDue({ ...packing, lying: held })[0]).toMatchObject({ standing: 'waits', takes: [] });
  });
});

describe('the walk', () => {
  it('passes each bin once, in walking order, and tells for whom', () => {
    const packing = aPacking({ orders: [anOrder('R-1', '2026-04-16'), anOrder('R-2', '2026-04-17')] });
    const stops = walkFor(ordersDue(packing), packing.bins);
    expect(stops.map(({ bin }) => bin.name)).toEqual(['bin 1', 'bin 2', 'bin 3', 'bin 4']);
    expect(stops[3]!.takes).toEqual([{ stringKey: PLAIN_10, count: 2, orders: ['R-1', 'R-2'] }]);
    expect(stops[1]!.takes).toEqual([{ stringKey: PLAIN_13, count: 1, orders: ['R-1'] }]);
  });

  it('leaves out bins that the chosen orders need nothing from', () => {
    const packing = aPacking({ orders: [anOrder('R-1', '2026-04-16', 1, [PLAIN_10])] });
    expect(walkFor(ordersDue(packing), packing.bins).map(({ bin }) => bin.name)).toEqual(['bin 4']);
  });
});
