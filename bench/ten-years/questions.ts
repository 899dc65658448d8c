import { seededChance } from '../../src/core/foundation/index.js';
import type { ReadTransaction } from '../../src/store/index.js';
import { BIN, BINS, LOT, MOVEMENTS_A_LOT, uuid } from '../ledger-history/lay-down.js';
import { MACHINES, machineId, ORDER_RECORD, ORDERS, player, RUN, RUNS } from './lay-down.js';

export const MOVEMENTS = 500_000;
export const PAGE = 50;

const chance = seededChance(11);

/** Goes on where the last time ended: deep pages cost as little as the first. */
function pageByPage(): Ask {
  let after: string | undefined;
  return async ({ records }) => {
    const page = await records.list('order', { limit: PAGE, ...(after === undefined ? {} : { after }) });
    after = page.next;
  };
}

const anyRun = () => uuid(RUN, chance.whole(0, RUNS - 1));
const anyOrder = () => uuid(ORDER_RECORD, chance.whole(0, ORDERS - 1));

type Ask = (tx: ReadTransaction) => Promise<unknown>;
/** What people ask of long lists, each another time than the last. */
export const QUESTIONS: readonly (readonly [string, Ask])[] = [
  ['newest 50 orders', ({ records }) => records.list('order', { limit: PAGE })],
  ['newest 500 orders', ({ records }) => records.list('order', { limit: 500 })],
  [
    '50 orders received',
    ({ records }) => records.list('order', { where: { state: 'received' }, limit: PAGE }),
  ],
  ['50 orders shipped', ({ records }) => records.list('order', { where: { state: 'shipped' }, limit: PAGE })],
  [
    'orders of a player',
    ({ records }) => records.list('order', { where: { player: player(chance.whole(0, 8999)) }, limit: PAGE }),
  ],
  [
    '50 orders in which a part of a name is found',
    ({ records }) => records.list('order', { search: `er ${chance.whole(0, 899)}`, limit: PAGE }),
  ],
  [
    'orders in which a number is found that one has',
    ({ records }) =>
      records.list('order', { search: `t-${1000 + chance.whole(0, ORDERS - 1)}`, limit: PAGE }),
  ],
  ['orders, page by page from somewhere', pageByPage()],
  ['one order', ({ records }) => records.get('order', anyOrder())],
  ['newest 50 runs', ({ records }) => records.list('run', { limit: PAGE })],
  [
    '50 runs of a machine',
    ({ records }) =>
      records.list('run', { where: { machineId: machineId(chance.whole(0, MACHINES - 1)) }, limit: PAGE }),
  ],
  ['runs under way', ({ records }) => records.list('run', { where: { state: 'running' }, limit: PAGE })],
  [
    'runs of a machine under way',
    ({ records }) =>
      records.list('run', { where: { machineId: machineId(1), state: 'running' }, limit: PAGE }),
  ],
  ['one run', ({ records }) => records.get('run', anyRun())],
  ['newest 50 measurements', ({ readings }) => readings.measurements({ limit: PAGE, order: 'newest' })],
  ['measurements of a run', ({ readings }) => readings.measurements({ runId: anyRun(), limit: 500 })],
  ['newest 50 movements', ({ ledger }) => ledger.movements({ limit: PAGE })],
  [
    '50 movements of a bin',
    ({ ledger }) => ledger.movements({ account: `bin/${uuid(BIN, chance.whole(0, BINS - 1))}`, limit: PAGE }),
  ],
  [
    '50 movements of a lot',
    ({ ledger }) =>
      ledger.movements({
        lot: uuid(LOT, chance.whole(0, MOVEMENTS / MOVEMENTS_A_LOT - 1)),
        limit: PAGE,
      }),
  ],
];

/** The same over HTTP. */
export const PATHS: readonly (() => string)[] = [
  () => '/orders?limit=50',
  () => `/orders/${anyOrder()}`,
  () => '/runs?limit=50',
  () => '/measurements?limit=50',
  () => `/measurements?runId=${anyRun()}`,
  () => '/movements?limit=50',
];
