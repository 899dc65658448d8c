import { COMPLAINTS_OF_THE_MORNING, DRYER_STOOD_STILL, STANDSTILL } from '../../../demo/index.js';
import { byText } from '../../core/foundation/index.js';
import { registerComplaint } from '../orders/complaints.js';
import { holdLot } from '../production/judge-lot.js';
import { recordDryRoom } from '../stock/record-dry-room.js';
import type { Act, HistoryDay, InHand } from './act.js';
import { lookThrough } from './checking-day.js';
import { demandOf } from './choose-runs.js';
import { receive, takeInOrders } from './desk-day.js';
import { allLots } from './history-book.js';
import { packSome } from './last-day-packing.js';
import { freezeToday, type RunsOfToday } from './last-day-plan.js';
import { actsOfLanes } from './last-day-winding.js';
import { writeDown } from './requests.js';

/** The last thing that anybody did: a reading of the dry room, at eleven. */
const LAST_MINUTE = 660;

/**
 * The last day of the history, which goes on still: a plan is in force, machines run and stand, lots wait to be looked
 * through, packs lie open, letters wait. Nothing of it is told in advance; acts are done as soon as they are known.
 */
export async function liveLastDay(
  day: HistoryDay,
  live: (acts: readonly Act[]) => Promise<void>,
): Promise<void> {
  let runs: RunsOfToday | undefined;
  await live([
    { minute: 440, by: 'coiler', work: (shop) => readDampAir(shop, day, DRYER_STOOD_STILL.relativeHumidity) },
    { minute: 445, by: 'servoWinder', work: (shop) => receive(shop, day) },
    {
      minute: 451,
      by: 'owner',
      work: async (shop) => {
        runs = await freezeToday(shop, day);
      },
    },
  ]);
  await live([
    { minute: 480, by: 'adviser', work: (shop) => takeInOrders(shop, day) },
    ...actsOfHalfTheChecking(day),
    { minute: 550, by: 'adviser', work: (shop) => readTheMorningsPost(shop, day) },
    ...(runs ? actsOfLanes(day, runs) : []),
    { minute: 620, by: 'packer', work: (shop) => packSome(shop, day) },
    { minute: 645, by: 'secondCoiler', work: (shop) => holdOne(shop, day) },
    {
      minute: LAST_MINUTE,
      by: 'coiler',
      work: (shop) => readDampAir(shop, day, DRYER_STOOD_STILL.relativeHumidity - DRIED_SINCE),
    },
  ]);
}

/** How far the dryer came in the morning. */
const DRIED_SINCE = 0.024;

async function readDampAir({ ask }: InHand, { book }: HistoryDay, relativeHumidity: number): Promise<void> {
  const humidity = Number(relativeHumidity.toFixed(3));
  await ask(recordDryRoom, { id: book.newId(), ...DRYER_STOOD_STILL, relativeHumidity: humidity });
}

/** Of the lots that wait the coiler has looked through every other one by now. */
const actsOfHalfTheChecking = (day: HistoryDay): readonly Act[] =>
  allLots(day.book)
    .filter(({ state, lookAgain }) => state === 'in-check' && lookAgain <= day.date)
    .filter((_, at) => at % 2 === 0)
    .map((lot, at) => ({ minute: 510 + 7 * at, by: 'coiler', work: (shop) => lookThrough(shop, day, lot) }));

/** Two players ask for something of their own, and two complain; nobody has answered them yet. */
async function readTheMorningsPost(shop: InHand, day: HistoryDay): Promise<void> {
  await writeDown(shop, day);
  await writeDown(shop, day);
  const { items: packs } = await shop.tx.records.list('pack', { where: { state: 'shipped' }, limit: 40 });
  for (const [at, complaint] of COMPLAINTS_OF_THE_MORNING.entries()) {
    const pack = packs[at * 7 + 3];
    const order = pack && (await shop.tx.records.get('order', pack.body.orderId));
    if (!pack || !order) continue;
    const about = { player: order.body.player, packId: pack.id };
    await shop.ask(registerComplaint, { id: day.book.newId(), ...complaint, ...about });
  }
}

/** A lot that was let onto the shelf and that nobody waits for is taken back. */
async function holdOne({ ask }: InHand, { book }: HistoryDay): Promise<void> {
  const wanted = demandOf(book);
  const newest = allLots(book)
    .filter(({ state, left, stringKey }) => state === 'released' && left > 0 && !wanted.has(stringKey))
    .sort((a, b) => byText(b.id, a.id));
  const lot = newest.find(({ wireLots }) => wireLots.length > 0) ?? newest[0];
  if (!lot) return;
  const seen = { lotId: lot.id, expectedVersion: lot.version };
  const { version } = await ask(holdLot, { ...seen, reason: STANDSTILL.lotOnHold });
  lot.version = version;
  lot.state = 'on-hold';
}
