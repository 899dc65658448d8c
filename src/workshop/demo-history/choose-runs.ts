import type { Shop } from '../../core/day/index.js';
import { byText } from '../../core/foundation/index.js';
import type { Recipe } from '../../core/recipes/index.js';
import { readStringKey, type StringSpec, stringKey } from '../../core/sets/index.js';
import { mgFromKg } from '../../core/stock/index.js';
import { type StringWork, stringWork } from '../../core/winding/index.js';
import { type HistoryBook, onHand, type ShopSpool } from './history-book.js';

/** A run that a machine can begin: its wire lies on the shelf. */
export interface RunToWind {
  readonly machine: string;
  readonly recipe: Recipe;
  readonly spec: StringSpec;
  readonly stringKey: string;
  readonly quantity: number;
  readonly work: StringWork;
  readonly spools: readonly SpoolsOfWire[];
}

/** Wire for a run from one spool; from a remnant and then from another where the remnant does not suffice. */
export interface SpoolsOfWire {
  readonly wire: string;
  readonly mgPerString: number;
  readonly first: ShopSpool;
  readonly second?: ShopSpool;
  /** What the remnant gave before it was empty. */
  remnantMg: number;
}

/** Machines in the order in which the day's runs are given out; the quick ones twice. */
const TURNS = ['bench', 'wren', 'twin-finch', 'old-heron', 'two-herons', 'wren', 'bench'] as const;
/** Bins are filled to so many times their level, and not beyond. */
const FULL = 3;
const QUANTITIES = { plain: 12, wound: 6 } as const;
/** Wire beyond what strings need: trial strings, and a little fear. */
const MORE_WIRE = 1.2;
const MORE_STRINGS = 4;

/** What the owner has wound today: what orders wait for, then what bins lack most. */
export function chooseRuns(book: HistoryBook): readonly RunToWind[] {
  const wanted = wantedKinds(book);
  const chosen = new Set<string>();
  const taken = new Set<string>();
  const runs: RunToWind[] = [];
  for (const machine of TURNS) {
    for (const { spec, lacking } of wanted) {
      const key = stringKey(spec);
      if (chosen.has(key)) continue;
      const quantity = Math.max(QUANTITIES[spec.kind], Math.min(60, lacking + 2));
      const run = runOn(book, machine, { spec, quantity, taken });
      if (!run) continue;
      chosen.add(key);
      for (const spoolId of spoolsOf(run)) taken.add(spoolId);
      runs.push(run);
      break;
    }
  }
  return runs;
}

/** Spools that nobody else may have while the run goes on. */
export const spoolsOf = ({ spools }: RunToWind): readonly string[] =>
  spools.flatMap(({ first, second }) => (second ? [first.id, second.id] : [first.id]));

/** Kinds that are kept ready, those of which least lies there first: what to wind where nothing presses. */
export const kindsToFillUp = (book: HistoryBook): readonly StringSpec[] =>
  [...book.kinds]
    .map(([key, spec]) => ({ spec, key, share: onHand(book, key) / Math.max(1, book.levelOf(key)) }))
    .sort((a, b) => a.share - b.share || byText(a.key, b.key))
    .map(({ spec }) => spec);

interface WantedKind {
  readonly spec: StringSpec;
  /** How many orders lack. */
  readonly lacking: number;
  readonly share: number;
}

/** Strings that open orders want, by kind. */
export function demandOf(book: HistoryBook): ReadonlyMap<string, number> {
  const demand = new Map<string, number>();
  for (const { body } of book.orders)
    for (const { quantity, strings } of body.lines)
      for (const string of strings)
        demand.set(string.stringKey, (demand.get(string.stringKey) ?? 0) + quantity);
  return demand;
}

function wantedKinds(book: HistoryBook): readonly WantedKind[] {
  const demand = demandOf(book);
  const specs = new Map(book.kinds);
  for (const key of demand.keys()) {
    const spec = readStringKey(key);
    if (spec) specs.set(key, spec);
  }
  return [...specs]
    .map(([key, spec]) => {
      const free = onHand(book, key) - (demand.get(key) ?? 0);
      const level = book.levelOf(key);
      const share = free < 0 ? free - 1 : level > 0 ? free / level : FULL;
      return { spec, lacking: Math.max(0, -free), share };
    })
    .filter(({ share }) => share < FULL)
    .sort((a, b) => a.share - b.share || byText(stringKey(a.spec), stringKey(b.spec)));
}

export interface RunWish {
  readonly spec: StringSpec;
  readonly quantity: number;
  /** Spools that other runs of the day have. */
  readonly taken: ReadonlySet<string>;
}

/** A run of a kind on a machine; nothing where the machine cannot make it or the wire does not suffice. */
export function runOn(
  book: HistoryBook,
  machineName: string,
  { spec, quantity, taken }: RunWish,
): RunToWind | undefined {
  const { shop } = book;
  const recipe = recipeFor(shop, spec);
  const work = recipe && workOn(book, machineName, recipe, spec);
  if (!recipe || !work) return undefined;
  const spools = work.wire.map(({ wireId, kg }) =>
    spoolsFor(book, { wire: wireId, mgPerString: mgFromKg(kg), quantity, taken }),
  );
  const found = spools.filter((each) => each !== undefined);
  if (found.length < spools.length) return undefined;
  return { machine: machineName, recipe, spec, stringKey: stringKey(spec), quantity, work, spools: found };
}

const recipeFor = ({ recipes }: Shop, spec: StringSpec): Recipe | undefined =>
  recipes.find(
    ({ gaugeThou, material, construction }) =>
      gaugeThou === spec.gaugeThou && material === spec.material && construction.kind === spec.kind,
  );

function workOn(
  { shop, works }: HistoryBook,
  machineName: string,
  recipe: Recipe,
  { lengthM, end }: StringSpec,
): StringWork | undefined {
  const key = `${machineName} ${recipe.id} ${lengthM} ${end}`;
  if (!works.has(key)) {
    const machine = shop.machines.find(({ id }) => id === machineName);
    const seat = shop.seat ? { seat: shop.seat } : {};
    const work = machine && stringWork({ machine, recipe, lengthM, end, ...seat });
    works.set(key, work?.ok ? work.value : undefined);
  }
  return works.get(key);
}

interface WireWish {
  readonly wire: string;
  readonly mgPerString: number;
  readonly quantity: number;
  readonly taken: ReadonlySet<string>;
}

/** Of the spools that suffice the one that stands in front: the one that came last. A remnant is used up first. */
function spoolsFor({ spools }: HistoryBook, wish: WireWish): SpoolsOfWire | undefined {
  const { wire, mgPerString, quantity, taken } = wish;
  const neededMg = mgPerString * (quantity + MORE_STRINGS) * MORE_WIRE;
  const own = spools.filter((spool) => spool.wire === wire && !taken.has(spool.id));
  const enough = own.filter(({ bookMg, trueMg }) => Math.min(bookMg, trueMg) > neededMg);
  const front = enough.at(-1);
  if (!front) return undefined;
  const remnant = own.find(
    ({ bookMg, trueMg }) => bookMg < neededMg && Math.min(bookMg, trueMg) > 3 * mgPerString,
  );
  const both = remnant ? { first: remnant, second: front } : { first: front };
  return { wire, mgPerString, ...both, remnantMg: 0 };
}
