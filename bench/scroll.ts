import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type BrowserContext, type CDPSession, chromium, type Page } from 'playwright-core';
import { demoWorkshop } from '../demo/index.js';
import { serveShop } from '../src/server/index.js';
import { machineDescription, spreadOf } from './measure.js';
import { ownersKey } from './page/owners-key.js';
import { BINS, layDownRows } from './scroll/lay-down-rows.js';
import { ORDERS } from './ten-years/lay-down.js';

/**
 * How much work a frame takes while a list of 100,000 rows is scrolled: all tasks of the page's main thread (script,
 * style, layout, paint), the mean over all frames; and by the clock from the scroll event to after the frame is drawn.
 * Slowly by the wheel, fast by a fling in which every row is new, and by leaps as one drags the bar. One list is had
 * whole, the other comes page by page as one goes down. Run: npx tsx bench/scroll.ts, after the page was built
 */
const LIMIT_MS = 1000 / 60;
const FRAMES = 240;

const WAYS = {
  'by the wheel, 120 px a frame': 'at + 120',
  'flung, 2,000 px a frame': 'at + 2000',
  'by leaps over the whole list': '(frame * 0.618034 % 1) * most',
} as const;

const folder = mkdtempSync(join(tmpdir(), 'tautwork-bench-scroll-'));
const file = join(folder, 'shop.db');
const served = await serveShop({ place: { file }, port: 0 });
if (!served.ok) throw new Error(JSON.stringify(served.fault));
const { url, close } = served.value;
const browser = await chromium.launch({
  executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
try {
  console.log(machineDescription());
  layDownRows(file, demoWorkshop());
  const context = await browser.newContext({ serviceWorkers: 'block' });
  const key = await ownersKey(file, url);
  await context.addCookies([
    { name: 'tautwork-session', value: key, url: `${url}api`, httpOnly: true, sameSite: 'Strict' },
  ]);
  await scrolls(context, `${BINS.toLocaleString('en')} bins, had whole`, 'shop/bins', BINS);
  await scrolls(
    context,
    `orders of ten years (${ORDERS.toLocaleString('en')}), by pages`,
    'orders?state=all',
  );
} finally {
  await browser.close();
  await close();
  rmSync(folder, { recursive: true, force: true });
}

async function scrolls(context: BrowserContext, list: string, path: string, rows?: number): Promise<void> {
  const page = await context.newPage();
  page.setDefaultTimeout(240_000);
  await page.goto(new URL(path, url).href);
  await page
    .locator(rows === undefined ? 'table[aria-rowcount]' : `table[aria-rowcount="${rows + 1}"]`)
    .waitFor();
  const devtools = await context.newCDPSession(page);
  // By the clock of the thread: what other programs take from the machine meanwhile is not the page's work.
  await devtools.send('Performance.enable', { timeDomain: 'threadTicks' });
  for (const [way, next] of Object.entries(WAYS)) {
    await framesOf(page, next);
    const before = await taskSeconds(devtools);
    const works = spreadOf(await framesOf(page, next));
    const processorMs = ((await taskSeconds(devtools)) - before) * (1000 / FRAMES);
    const verdict = processorMs <= LIMIT_MS ? 'kept' : 'MISSED';
    console.log(
      `${list}, ${way}: ${processorMs.toFixed(1)} ms of processor a frame, limit ${LIMIT_MS.toFixed(1)} ms: ${verdict}; by the clock p50 ${works.p50Ms.toFixed(1)} ms, p95 ${works.p95Ms.toFixed(1)} ms`,
    );
  }
  const drawn = await page.locator('table[aria-rowcount] tbody tr[aria-rowindex]').count();
  const known = await page.locator('table[aria-rowcount]').getAttribute('aria-rowcount');
  console.log(`${list}: ${drawn} rows drawn at the end of ${Number(known) - 1} known`);
  await page.close();
}

async function taskSeconds(devtools: CDPSession): Promise<number> {
  const { metrics } = await devtools.send('Performance.getMetrics');
  return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
}

/** Milliseconds of work of each frame. As text: what runs in the page is no part of this program. */
function framesOf(page: Page, next: string): Promise<readonly number[]> {
  return page.evaluate(`new Promise((done) => {
    const place = document.querySelector('table[aria-rowcount]').parentElement;
    const works = [];
    let frame = 0;
    let began = 0;
    place.scrollTop = 0;
    // Before anyone else hears of it: the page's own work on the event counts.
    window.addEventListener('scroll', () => { began = performance.now(); }, { capture: true });
    const afterDrawing = new MessageChannel();
    afterDrawing.port1.onmessage = () => {
      if (began > 0) works.push(performance.now() - began);
      began = 0;
      if (works.length >= ${FRAMES}) return done(works);
      requestAnimationFrame(move);
    };
    const move = () => {
      const at = place.scrollTop;
      const most = place.scrollHeight - place.clientHeight;
      frame += 1;
      const to = ${next};
      place.scrollTop = to >= most ? 0 : to;
      // The event comes with the next frame; this message once that is drawn.
      requestAnimationFrame(() => afterDrawing.port2.postMessage(''));
    };
    requestAnimationFrame(move);
  })`);
}
