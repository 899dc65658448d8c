import { mkdirSync, writeFileSync } from 'node:fs';
import { demoFaultyOrders } from './faulty-orders.js';
import { DEMO_DATE } from './index.js';
import { demoOrders } from './orders.js';
import { demoWorkshop } from './workshop.js';

/** Writes the invented workshop and its orders to files: `npx tsx demo/write.ts`. */
const folder = new URL('./workshop/', import.meta.url);
mkdirSync(folder, { recursive: true });
const shop = demoWorkshop();
writeFileSync(new URL('shop.json', folder), shopText(shop));
writeFileSync(new URL('orders.csv', folder), demoOrders(shop, { from: DEMO_DATE, days: 28, count: 400 }));
writeFileSync(new URL('faulty-orders.csv', folder), demoFaultyOrders());

/** One record a line: small enough to keep, and a change shows where it is. */
function shopText(shop: object): string {
  const fields = Object.entries(shop).map(([name, value]) =>
    Array.isArray(value)
      ? `  ${JSON.stringify(name)}: [\n${value.map((item) => `    ${JSON.stringify(item)}`).join(',\n')}\n  ]`
      : `  ${JSON.stringify(name)}: ${JSON.stringify(value)}`,
  );
  return `{\n${fields.join(',\n')}\n}\n`;
}
