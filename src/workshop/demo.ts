import { readFile } from 'node:fs/promises';
import { DEMO_DATE } from '../../demo/index.js';
import { type Day, type Shop, workOutDay } from '../core/day/index.js';
import { invariant } from '../core/foundation/index.js';
import { loadShop } from './load-shop.js';
import { packageRoot } from './package-root.js';
import { readOrdersFile } from './read-orders-file.js';

/** A file of the invented workshop: its shop, its orders, or orders with faults. */
export const demoFile = (name: 'shop.json' | 'orders.csv' | 'faulty-orders.csv'): URL =>
  new URL(`demo/workshop/${name}`, packageRoot());

/** The invented workshop, as its file in this package has it. */
export async function demoShop(): Promise<Shop> {
  const shop = loadShop(await readFile(demoFile('shop.json'), 'utf8'));
  invariant(shop.ok, 'the demo workshop of this package is sound');
  return shop.value;
}

/** The invented workshop's first day, worked out from its files. */
export async function demoDay(): Promise<Day> {
  const shop = await demoShop();
  const read = readOrdersFile(await readFile(demoFile('orders.csv')), shop);
  invariant(read.ok, 'the demo orders of this package can be read');
  return workOutDay({ shop, read: read.value, date: DEMO_DATE });
}
