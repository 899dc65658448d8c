import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import type { QualityView } from '../../src/contract/index.js';
import { serveShop } from '../../src/server/index.js';
import { loadDemoHistory, openStore } from '../../src/workshop/index.js';
import { ownersKey } from '../page/owners-key.js';

const TIMES = 30;

/**
 * How long the page's own thread works to bring a chart onto the screen that it had as a table before: script, style,
 * layout and paint together, as the browser counts them, in ms. Other rooms' work is not in it.
 */
export async function drawingTimes(view: QualityView): Promise<readonly number[]> {
  const folder = mkdtempSync(join(tmpdir(), 'tautwork-draw-'));
  const file = join(folder, 'shop.db');
  const store = await openStore({ file });
  await loadDemoHistory(store, { days: 1 });
  await store.close();
  const webRoot = process.env.WEB_ROOT;
  const served = await serveShop({ place: { file }, port: 0, ...(webRoot ? { webRoot } : {}) });
  if (!served.ok) throw new Error(JSON.stringify(served.fault));
  const { url, close } = served.value;
  const browser = await chromium.launch({
    executablePath: process.env.CHROMIUM_PATH ?? '/usr/bin/chromium',
    args: ['--no-sandbox', '--disable-gpu'],
  });
  try {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 } });
    const value = await ownersKey(file, url);
    await context.addCookies([
      { name: 'tautwork-session', value, url: `${url}api`, httpOnly: true, sameSite: 'Strict' },
    ]);
    const page = await context.newPage();
    await page.route('**/api/v1/quality?*', (route) => route.fulfill({ json: view }));
    await page.goto(new URL('/quality', url).href);
    await page.getByRole('img', { name: `${view.series.points.length} points` }).waitFor();
    const devtools = await context.newCDPSession(page);
    await devtools.send('Performance.enable');
    const busyS = async (): Promise<number> => {
      const { metrics } = await devtools.send('Performance.getMetrics');
      return metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN;
    };
    const times: number[] = [];
    for (let at = 0; at < TIMES; at++) {
      await page.evaluate(press('Table'));
      const before = await busyS();
      await page.evaluate(press('Picture'));
      times.push(((await busyS()) - before) * 1000);
    }
    return times;
  } finally {
    await browser.close();
    await close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Presses one of the two, and waits until what comes of it was painted. */
const press = (label: string): string => `(async () => {
  const chart = document.querySelector('#chart');
  [...chart.querySelectorAll('label')].find((each) => each.textContent === '${label}').click();
  await new Promise((seen) => requestAnimationFrame(() => requestAnimationFrame(seen)));
})()`;
