import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { demoWorkshop } from '../demo/index.js';
import { serveShop } from '../src/server/index.js';
import { openStore } from '../src/workshop/index.js';
import { machineDescription, reportSpread, spreadOf } from './measure.js';
import { ownersKey } from './page/owners-key.js';
import { layDownTenYears, ORDERS } from './ten-years/lay-down.js';

/**
 * Times the frames of a browser that scrolls through ten years of orders, once all of them are in the page.
 * Run: npx tsx bench/scroll.ts (after npm run build)
 */
const LIMIT_MS = 50;
const folder = mkdtempSync(join(tmpdir(), 'tautwork-scroll-'));
const file = join(folder, 'shop.db');
await (await openStore({ file })).close();
layDownTenYears(file, demoWorkshop());
const served = await serveShop({ place: { file }, port: 0 });
if (!served.ok) throw new Error(JSON.stringify(served.fault));
const { url, close } = served.value;
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  console.log(machineDescription());
  const value = await ownersKey(file, url);
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    serviceWorkers: 'block',
  });
  await context.addCookies([
    { name: 'tautwork-session', value, url: `${url}api`, httpOnly: true, sameSite: 'Strict' },
  ]);
  const page = await context.newPage();
  await page.goto(`${url}orders?state=shipped`);
  const list = page.locator('section:has(> table[aria-rowcount])').last();
  await list.waitFor();
  const rows = await list.evaluate(ALL_IN);
  console.log(`${rows} of ${ORDERS} orders are in the page`);
  reportSpread('a frame while scrolling', spreadOf(await list.evaluate(SCROLLED)), LIMIT_MS);
} finally {
  await browser.close();
  await close();
  rmSync(folder, { recursive: true });
}

/** Goes to the end again and again, until no more comes for a while; gives how many rows there are. */
async function ALL_IN(place: {
  scrollTop: number;
  scrollHeight: number;
  querySelector(what: string): { getAttribute(name: string): string | null } | null;
}): Promise<number> {
  const count = () => Number(place.querySelector('table')?.getAttribute('aria-rowcount')) - 1;
  let still = 0;
  for (let last = -1; still < 40; ) {
    place.scrollTop = place.scrollHeight;
    await new Promise((resolve) => setTimeout(resolve, 50));
    still = count() === last ? still + 1 : 0;
    last = count();
  }
  return count();
}

/** A few screens a second, from the top: how long each frame took, ms. */
async function SCROLLED(place: { scrollTop: number }): Promise<number[]> {
  const frame = () => new Promise<number>((resolve) => requestAnimationFrame(resolve));
  place.scrollTop = 0;
  let before = await frame();
  const times: number[] = [];
  for (let at = 0; at < 600; at++) {
    place.scrollTop += at % 100 === 0 ? 500_000 : 90;
    const now = await frame();
    times.push(now - before);
    before = now;
  }
  return times;
}

declare function requestAnimationFrame(then: (at: number) => void): void;
