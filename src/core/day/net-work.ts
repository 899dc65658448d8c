import { addDays, byText, type CalendarDate, grouped } from '../foundation/index.js';
import type { OrderFault, ResolvedOrder } from '../orders/index.js';
import { type Lot, type Lots, lotsFor, type NetDemand, netDemand } from '../planning/index.js';
import type { StringShortage, StringStock } from '../stock/index.js';
import type { UnmadeLot } from './day.js';
import type { KnownKind, Make, MakeOf } from './make.js';
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
  /** Strings for bins alone that cannot be made. */
  readonly unmade: readonly UnmadeLot[];
}

export interface NetTask {
  readonly shop: Shop;
  readonly orders: readonly ResolvedOrder[];
  readonly date: CalendarDate;
  readonly kinds: ReadonlyMap<string, KnownKind>;
  readonly makeOf: MakeOf;
  /** Strings on their way to the shelf, those that come first before the others. */
  readonly coming: readonly StringStock[];
}

/**
 * Sets orders against the shelf and turns what is short into lots that a machine can make and the wire on
 * hand suffices for. Where one cannot be made, the orders due last leave it (each with its fault) until the
 * rest can, and what lay on the shelf for them is free for others. The shop's spools hold what is free for new work.
 */
export function netWork(task: NetTask): NetWork {
  const faults: OrderFault[] = [];
  let { orders } = task;
  for (;;) {
    const net = netDemand({ orders, strings: task.shop.strings, coming: task.coming });
    const { lots, withoutRecipe } = lotsOf(task, net);
    const blocks = blockedLots(task.shop, lots, task.makeOf);
    const leaving = leavers(blocks, net);
    if (leaving.size === 0) {
      const blocked = new Set(blocks.map(({ lot }) => lot));
      return {
        orders,
        net,
        lots: lots.filter((lot) => !blocked.has(lot)),
        faults,
        unmade: [...blocks.map(unmadeLot), ...unmadeWithoutRecipe(net, withoutRecipe)],
      };
    }
    faults.push(...orders.flatMap((order) => faultOf(order, leaving.get(order.line), task.shop)));
    orders = orders.filter(({ line }) => !leaving.has(line));
  }
}

const lotsOf = ({ shop, date, kinds }: NetTask, net: NetDemand): Lots =>
  lotsFor({
    ...net,
    binsFullBy: addDays(date, BINS_FULL_AFTER_DAYS),
    lotSize: shop.rules.lotSize,
    recipeIdOf: (key) => kinds.get(key)?.recipeId,
    mergeWindowDays: MERGE_WINDOW_DAYS,
    largestLot: LARGEST_LOT,
  });

const unmadeLot = ({ lot, unmade }: Block): UnmadeLot => ({
  stringKey: lot.stringKey,
  quantity: lot.quantity,
  ...unmade,
});

/** Orders are refused before they come here where a recipe is missing: this is of bins alone. */
const unmadeWithoutRecipe = (net: NetDemand, withoutRecipe: readonly string[]): readonly UnmadeLot[] =>
  net.reorder
    .filter(({ stringKey }) => withoutRecipe.includes(stringKey))
    .map(({ stringKey, count }) => ({ stringKey, quantity: count, because: 'recipe' }));

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
  const usedUp = new Set<string>();
  const blocks: Block[] = [];
  for (const lot of lots) {
    const make = makeOf(lot.stringKey);
    if (make.able.length === 0) {
      blocks.push({ lot, make, unmade: { because: 'machine' }, tooMany: lot.quantity });
      continue;
    }
    const perString = 1 + shop.rates.runScrapShare;
    const wound = lot.quantity * perString + dialInScrap(make);
    const worst = worstShortage(make, wound, onHandKg);
    if (worst.shortKg > 0) {
      // What is left for a kind its first short lot takes: nothing of the later ones can be made.
      const tooMany = usedUp.has(lot.stringKey)
        ? lot.quantity
        : Math.min(lot.quantity, Math.ceil(worst.shortKg / worst.kg / perString));
      usedUp.add(lot.stringKey);
      const { wireId, shortKg } = worst;
      blocks.push({ lot, make, unmade: { because: 'wire', wireId, shortKg }, tooMany });
      continue;
    }
    for (const { wireId, kg } of make.wire) onHandKg.set(wireId, (onHandKg.get(wireId) ?? 0) - kg * wound);
  }
  return blocks;
}

/** Of the wires of so many strings the one that lacks most strings' worth; below 0 where none is short. */
function worstShortage({ wire }: Make, strings: number, onHandKg: ReadonlyMap<string, number>) {
  return wire
    .map(({ wireId, kg }) => ({ wireId, kg, shortKg: kg * strings - (onHandKg.get(wireId) ?? 0) }))
    .reduce((a, b) => (b.shortKg / b.kg > a.shortKg / a.kg ? b : a));
}

/** Strings that dialling in may cost at worst, everything changed: wire that must be there before the lot is promised. */
const dialInScrap = ({ able }: Make): number =>
  Math.max(
    ...able.map(({ machine: { changeScrap } }) =>
      Object.values<number>({ ...changeScrap }).reduce((sum, each) => sum + each, 0),
    ),
  );

/** The lines that leave because their lots are blocked, each with the first block of the kind that it leaves for. */
function leavers(blocks: readonly Block[], net: NetDemand): ReadonlyMap<number, Block> {
  const shortages = grouped(net.shortages, ({ stringKey }) => stringKey);
  const leaving = new Map<number, Block>();
  for (const [key, ofKind] of grouped(blocks, ({ lot }) => lot.stringKey))
    for (const { line } of leaversOfKind(ofKind, shortages.get(key) ?? [])) leaving.set(line, ofKind[0]!);
  return leaving;
}

/** Of the lines that wait for blocked lots of a kind those due last, until the strings that cannot be made are given up. */
function leaversOfKind(
  blocks: readonly Block[],
  shortages: readonly StringShortage[],
): readonly StringShortage[] {
  const tooMany = blocks.reduce((sum, block) => sum + block.tooMany, 0);
  const blocked = new Set(blocks.flatMap(({ lot }) => lot.orderLines));
  const dueLast = shortages
    .filter(({ line }) => blocked.has(line))
    .sort((a, b) => byText(b.due, a.due) || b.line - a.line);
  const taken: StringShortage[] = [];
  let given = 0;
  for (const shortage of dueLast) {
    if (given >= tooMany) break;
    taken.push(shortage);
    given += shortage.count;
  }
  // A small order need not leave beside a large one that alone gives up enough.
  return taken.toReversed().filter(({ count }) => {
    const isNeedless = given - count >= tooMany;
    if (isNeedless) given -= count;
    return !isNeedless;
  });
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
