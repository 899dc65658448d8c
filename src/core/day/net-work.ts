import { addDays, type CalendarDate } from '../foundation/index.js';
import type { OrderFault, ResolvedOrder } from '../orders/index.js';
import { type Lot, lotsFor, type NetDemand, netDemand } from '../planning/index.js';
import type { UnmadeLot } from './day.js';
import type { Make, MakeOf } from './make.js';
import type { Shop } from './shop.js';

/** Bins may stay below their level so long: orders go first. Our own choice. */
const BINS_FULL_AFTER_DAYS = 7;
/** Wants of a kind due within so many days of each other share a lot: one set-up serves them. Our own choice. */
const MERGE_WINDOW_DAYS = 7;
/** Two grosses: larger lots are cut so that two machines can share them. Our own choice. */
const LARGEST_LOT = 288;

/** What is to be made, and which orders had to be left out because it cannot be. */
export interface NetWork {
  readonly orders: readonly ResolvedOrder[];
  readonly net: NetDemand;
  readonly lots: readonly Lot[];
  readonly faults: readonly OrderFault[];
  /** Lots for bins alone that cannot be made. */
  readonly unmade: readonly UnmadeLot[];
}

/**
 * Sets orders against the shelf and turns what is short into lots that a machine can make and the wire on
 * hand suffices for. Where one cannot be made, the orders due last leave it (each with its fault) until the
 * rest can, and what lay on the shelf for them is free for others.
 */
export function netWork(
  shop: Shop,
  resolved: readonly ResolvedOrder[],
  date: CalendarDate,
  makeOf: MakeOf,
): NetWork {
  const faults: OrderFault[] = [];
  let orders = resolved;
  for (;;) {
    const net = netDemand({ orders, strings: shop.strings });
    const { lots } = lotsFor({
      ...net,
      binsFullBy: addDays(date, BINS_FULL_AFTER_DAYS),
      lotSize: shop.rules.lotSize,
      recipeIdOf: (key) => makeOf(key).recipe.id,
      mergeWindowDays: MERGE_WINDOW_DAYS,
      largestLot: LARGEST_LOT,
    });
    const blocks = blockedLots(shop, lots, makeOf);
    const dropped = new Map(
      blocks.flatMap((block) => leavers(block, net, orders).map((line) => [line, block] as const)),
    );
    if (dropped.size === 0) {
      const blocked = new Set(blocks.map(({ lot }) => lot.id));
      return {
        orders,
        net,
        lots: lots.filter(({ id }) => !blocked.has(id)),
        faults,
        unmade: blocks.map(({ lot, unmade }) => ({
          stringKey: lot.stringKey,
          quantity: lot.quantity,
          ...unmade,
        })),
      };
    }
    faults.push(...orders.flatMap((order) => faultOf(order, dropped.get(order.line), shop)));
    orders = orders.filter(({ line }) => !dropped.has(line));
  }
}

interface Block {
  readonly lot: Lot;
  readonly make: Make;
  readonly unmade: Pick<UnmadeLot, 'because' | 'wireId' | 'shortKg'>;
  /** Strings of the lot that cannot be made. */
  readonly tooMany: number;
}

/** Lots that no machine can make or the wire does not suffice for, wire given to lots in their order. */
function blockedLots(shop: Shop, lots: readonly Lot[], makeOf: MakeOf): readonly Block[] {
  const onHandKg = new Map<string, number>();
  for (const { wireId, netKg } of shop.spools) onHandKg.set(wireId, (onHandKg.get(wireId) ?? 0) + netKg);
  const blocks: Block[] = [];
  for (const lot of lots) {
    const make = makeOf(lot.stringKey);
    if (make.able.length === 0) {
      blocks.push({ lot, make, unmade: { because: 'machine' }, tooMany: lot.quantity });
      continue;
    }
    const wound = lot.quantity * (1 + shop.rates.runScrapShare) + dialInScrap(make);
    const short = make.wire.map(({ wireId, kg }) => ({
      wireId,
      kg,
      shortKg: kg * wound - (onHandKg.get(wireId) ?? 0),
    }));
    const worst = short.reduce((a, b) => (b.shortKg / b.kg > a.shortKg / a.kg ? b : a));
    if (worst.shortKg > 0) {
      const tooMany = Math.min(
        lot.quantity,
        Math.ceil(worst.shortKg / worst.kg / (1 + shop.rates.runScrapShare)),
      );
      blocks.push({
        lot,
        make,
        unmade: { because: 'wire', wireId: worst.wireId, shortKg: worst.shortKg },
        tooMany,
      });
      continue;
    }
    for (const { wireId, kg } of make.wire) onHandKg.set(wireId, (onHandKg.get(wireId) ?? 0) - kg * wound);
  }
  return blocks;
}

/** Strings that dialling in may cost at worst, everything changed: wire that must be there before the lot is promised. */
const dialInScrap = ({ able }: Make): number =>
  Math.max(
    ...able.map(({ machine: { changeScrap } }) =>
      Object.values<number>({ ...changeScrap }).reduce((sum, each) => sum + each, 0),
    ),
  );

/** The lines that leave a blocked lot: those due last, until the strings that cannot be made are given up. */
function leavers(
  { lot, tooMany }: Block,
  net: NetDemand,
  orders: readonly ResolvedOrder[],
): readonly number[] {
  const dueOf = new Map(orders.map(({ line, due }) => [line, due]));
  const waiting = net.shortages
    .filter(({ stringKey, line }) => stringKey === lot.stringKey && lot.orderLines.includes(line))
    .sort((a, b) => ((dueOf.get(b.line) ?? '') > (dueOf.get(a.line) ?? '') ? 1 : -1) || b.line - a.line);
  const lines: number[] = [];
  let given = 0;
  for (const { line, count } of waiting) {
    if (given >= tooMany) break;
    lines.push(line);
    given += count;
  }
  return lines;
}

function faultOf(order: ResolvedOrder, block: Block | undefined, shop: Shop): readonly OrderFault[] {
  if (!block) return [];
  const { lot, make, unmade } = block;
  const place = { line: order.line, orderId: order.orderId };
  if (unmade.because === 'machine')
    return [
      {
        ...place,
        code: 'order.machine-missing',
        facts: {
          stringKey: lot.stringKey,
          machines: make.unable.map(({ machine }) => machine.name),
          reasons: make.unable.map(({ reasons }) => reasons.map(({ code }) => code).join(' ')),
          nearest: nearestMakeable(make, shop),
        },
      },
    ];
  return [
    {
      ...place,
      code: 'order.wire-missing',
      facts: {
        stringKey: lot.stringKey,
        wireId: unmade.wireId ?? '',
        shortKg: Math.ceil((unmade.shortKg ?? 0) * 1000) / 1000,
        nearest: otherWires(unmade.wireId ?? '', shop),
      },
    },
  ];
}

/** Gauges of the same material that lie nearest and whose gauge some machine takes. */
function nearestMakeable({ recipe }: Make, shop: Shop): readonly string[] {
  const kind = recipe.construction.kind;
  return shop.recipes
    .filter(
      (other) =>
        other.material === recipe.material && other.id !== recipe.id && other.construction.kind === kind,
    )
    .filter(({ gaugeThou }) =>
      shop.machines.some(
        (machine) =>
          (machine.kind === 'winder') === (kind === 'wound') &&
          gaugeThou >= machine.gaugesThou.least &&
          gaugeThou <= machine.gaugesThou.most,
      ),
    )
    .sort((a, b) => Math.abs(a.gaugeThou - recipe.gaugeThou) - Math.abs(b.gaugeThou - recipe.gaugeThou))
    .slice(0, 2)
    .map(({ gaugeThou }) => `${gaugeThou}`);
}

/** Wires of the same kind and alloy with wire on hand, nearest in size. */
function otherWires(wireId: string, shop: Shop): readonly string[] {
  const wanted = shop.wires.find(({ id }) => id === wireId);
  if (!wanted) return [];
  const onHand = new Set(shop.spools.filter(({ netKg }) => netKg > 0).map((spool) => spool.wireId));
  return shop.wires
    .filter(
      ({ id, use, shape, alloy }) =>
        id !== wireId &&
        use === wanted.use &&
        shape === wanted.shape &&
        alloy === wanted.alloy &&
        onHand.has(id),
    )
    .sort((a, b) => Math.abs(a.sizeM - wanted.sizeM) - Math.abs(b.sizeM - wanted.sizeM))
    .slice(0, 2)
    .map(({ id }) => id);
}
