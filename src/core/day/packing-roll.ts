import type { NetDemand } from '../planning/index.js';
import type { DayOrder, PackedSet, PackingRoll, RollStop } from './day.js';
import type { Shop } from './shop.js';

/** Where strings fresh from the machines are picked up: after the last bin of the walk. */
export const NEW_STRINGS_BIN = 'new strings';

/**
 * The orders that can be packed on the day, and one walk past the bins that gathers what they need: what
 * lies on the shelf bin by bin or is to lie there today, and last what the day's runs bring.
 */
export function packingRoll(
  shop: Shop,
  orders: readonly DayOrder[],
  net: NetDemand,
  date: string,
): PackingRoll {
  const onRoll = orders.filter(({ readyAt }) => readyAt === 'now' || readyAt.date === date);
  const lines = new Set(onRoll.map(({ line }) => line));
  const takes = net.takes.filter(({ line }) => lines.has(line));
  const fresh = net.shortages
    .filter(({ line }) => lines.has(line))
    .map(({ line, stringKey, count }) => ({ line, stringKey, count, binId: NEW_STRINGS_BIN }));
  const awaited = net.awaits.filter(({ line }) => lines.has(line));
  const picks = [...takes, ...awaited, ...fresh];
  const binOf = new Map(picks.map(({ line, stringKey, binId }) => [`${line} ${stringKey}`, binId]));
  return {
    stops: stopsOf(shop, picks),
    sets: onRoll.map((order) => packedSet(order, binOf)),
  };
}

type RollPick = Omit<NetDemand['takes'][number], 'lot'>;

function stopsOf(shop: Shop, picks: readonly RollPick[]): readonly RollStop[] {
  const walkOrder = new Map(shop.bins.map((bin) => [bin.id, bin.walkOrder]));
  const last = Math.max(0, ...walkOrder.values()) + 1;
  const stops = new Map<string, Map<string, { count: number; lines: number[] }>>();
  for (const { binId, stringKey, count, line } of picks) {
    const stop = stops.get(binId) ?? new Map<string, { count: number; lines: number[] }>();
    const pick = stop.get(stringKey) ?? { count: 0, lines: [] };
    pick.count += count;
    if (!pick.lines.includes(line)) pick.lines.push(line);
    stop.set(stringKey, pick);
    stops.set(binId, stop);
  }
  return [...stops]
    .map(([binId, kinds]) => ({
      binId,
      walkOrder: walkOrder.get(binId) ?? last,
      picks: [...kinds].map(([stringKey, { count, lines }]) => ({
        stringKey,
        count,
        forLines: lines.sort((a, b) => a - b),
      })),
    }))
    .sort((a, b) => a.walkOrder - b.walkOrder);
}

const packedSet = (order: DayOrder, binOf: ReadonlyMap<string, string>): PackedSet => ({
  line: order.line,
  orderId: order.orderId,
  player: order.player,
  setName: order.setName,
  quantity: order.quantity,
  state: order.readyAt === 'now' ? 'pack-now' : 'after-winding',
  strings: order.strings.map(({ position, stringKey }) => ({
    position,
    stringKey,
    binId: binOf.get(`${order.line} ${stringKey}`) ?? NEW_STRINGS_BIN,
  })),
  labelCode: labelCode(order),
});

/** What a label's code reads as: our own form, version 1. A colon inside an order number is written %3A. */
export const labelCode = ({ orderId, line }: Pick<DayOrder, 'orderId' | 'line'>): string =>
  `TW1:${encodeURIComponent(orderId)}:${line}`;
