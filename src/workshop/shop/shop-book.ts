import type { Shop } from '../../core/day/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { seatByMachine } from '../calibration/seat-by-machine.js';
import { refuse } from '../refusal.js';
import { machinesLearned } from '../set-ups/machines-learned.js';
import { pastRuns } from './past-runs.js';
import { setUpNow } from './set-up-now.js';
import { shelf } from './shelf.js';
import { asWire, byName, type NameIndex, recipesOf } from './shop-parts.js';
import { spoolsOnHand } from './spools-on-hand.js';

/** The shop as the core works with it, and the way back from the core's names to the records. */
export interface ShopBook {
  readonly shop: Shop;
  readonly records: {
    readonly wire: NameIndex<'wire'>;
    readonly machine: NameIndex<'machine'>;
    readonly recipe: NameIndex<'recipe'>;
    readonly bin: NameIndex<'bin'>;
  };
}

/**
 * The shop as it stands at this moment, from its records and the balances of its ledger. Names stand for ids
 * there; retired recipes are left out; of strings, only released lots count. Refuses while nothing is settled yet.
 */
export const shopView = async (tx: ReadTransaction): Promise<Shop> => (await shopBook(tx)).shop;

/** The same, with the records behind the names. */
export async function shopBook(tx: ReadTransaction): Promise<ShopBook> {
  const [settled] = await tx.records.all('settings');
  if (!settled) return refuse({ code: 'settings.missing' });
  const wires = await tx.records.all('wire');
  const machines = await tx.records.all('machine');
  const everyRecipe = await tx.records.all('recipe');
  const recipes = everyRecipe.filter(({ state }) => state !== 'retired');
  const bins = await tx.records.all('bin');
  const records: ShopBook['records'] = {
    wire: byName(wires),
    machine: byName(machines),
    recipe: byName(recipes),
    bin: byName(bins),
  };
  const { name, invented, rules, rates, seat, spread } = settled.body;
  const record = await pastRuns(tx, records);
  const shop: Shop = {
    name,
    invented,
    rules,
    rates,
    ...(seat ? { seat: seatByMachine(seat, records.machine.nameOf) } : {}),
    ...(spread ? { spread } : {}),
    ...(record.length > 0 ? { record } : {}),
    wires: wires.map(asWire),
    machines: await machinesLearned(tx, { machines, recipes: everyRecipe, wire: records.wire }),
    recipes: recipesOf(recipes, records.wire),
    sets: (await tx.records.all('set')).map(({ version, body }) => ({ id: body.name, version, ...body })),
    instruments: (await tx.records.all('instrument')).map(({ body }) => body),
    tunings: (await tx.records.all('tuning')).map(({ body }) => ({ name: body.name, tuning: body })),
    bins: bins.map(({ body }) => ({ id: body.name, walkOrder: body.walkOrder })),
    strings: await shelf(tx, bins),
    spools: await spoolsOnHand(tx, records.wire),
    setUpNow: await setUpNow(tx, records),
  };
  return { shop, records };
}
