import { execFile } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { packageRoot } from '../../src/workshop/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

/* The page that shows every part in every state. The shop's own build does not have it: another is made for it here. */

const SCHEMES = ['light', 'dark'] as const;

async function buildWithLook(folder: string): Promise<void> {
  const root = fileURLToPath(packageRoot());
  const vite = join(root, 'node_modules', 'vite', 'bin', 'vite.js');
  const args = [vite, 'build', '--mode', 'look', '--logLevel', 'error', '--outDir', folder, '--emptyOutDir'];
  // As the shop's own: what runs these tests must not make another kind of build of it.
  const env = { ...process.env, NODE_ENV: 'production' };
  await promisify(execFile)(process.execPath, args, { cwd: root, env });
}

describeInBrowser('the look', () => {
  let folder: string;
  let house: House;
  let page: Page;

  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'tautwork-look-'));
    await buildWithLook(folder);
    house = await openHouse({ webRoot: `${folder}/` });
    page = await house.visit('/look', { as: 'owner' });
    await page.getByRole('heading', { name: 'Machines over a day' }).waitFor();
  });
  afterAll(async () => {
    await house?.close();
    await rm(folder, { recursive: true, force: true });
  });
  afterEach(() => expectQuiet(house));

  it.each(SCHEMES)('has no barriers in any part, %s', async (colorScheme) => {
    await page.emulateMedia({ colorScheme });
    expect(await barriers(page)).toEqual([]);
  });

  it.each(SCHEMES)(
    'has none in notices, sheets and explanations while they are open, %s',
    async (colorScheme) => {
      await page.emulateMedia({ colorScheme });
      for (const name of ['Tell what was done', 'Tell what needs care', 'Tell with a way back'])
        await page.getByRole('button', { name }).click();
      await page.getByRole('button', { name: /^83\.6 N/ }).click();
      await page.getByText('T = 4 µ L² f²').waitFor();
      expect(await barriers(page)).toEqual([]);
      await page.keyboard.press('Escape');
      for (const name of ['Open a sheet', 'Ask before it is done']) {
        await page.getByRole('button', { name }).click();
        expect(await barriers(page), name).toEqual([]);
        await page.keyboard.press('Escape');
      }
    },
  );

  it.each([
    ['Fetching', 'status', 'Fetching The look'],
    ['Could not be fetched', 'alert', 'Could not fetch The look'],
    ['Not your room', 'main', 'Not among your rooms'],
    ['No such address', 'main', 'Nothing here'],
  ] as const)('has a state of a whole room: %s', async (name, role, words) => {
    const href = await page.getByRole('link', { name, exact: true }).getAttribute('href');
    const room = await page.context().newPage();
    await room.goto(new URL(`look${href}`, house.url).href);
    await room.getByRole(role).filter({ hasText: words }).first().waitFor();
    for (const colorScheme of SCHEMES) {
      await room.emulateMedia({ colorScheme });
      // While it is fetched a room has no title yet: it would be heard, and then another at once.
      const found = (await barriers(room)).filter(
        (line) => name !== 'Fetching' || !line.startsWith('page-has-heading-one'),
      );
      expect(found, colorScheme).toEqual([]);
    }
    await room.close();
  });

  it('fits three sizes, and letters of twice the size', async () => {
    for (const [width, height] of [
      [1440, 900],
      [1024, 768],
      [820, 1180],
      [720, 450],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect(await widerBy(page), `${width} by ${height}`).toBe(0);
    }
  });

  it('is made of targets that can be hit: 24 px at the desk, 56 px where it says floor', async () => {
    await page.setViewportSize({ width: 1440, height: 900 });
    const small = await page.evaluate(`[...document.querySelectorAll('main button, main select, main input')]
      .filter((node) => node.checkVisibility() && node.getBoundingClientRect().height > 0 && !node.closest('label, table, svg'))
      .map((node) => ({ name: node.textContent || node.ariaLabel || node.type, height: node.getBoundingClientRect().height }))
      .filter(({ height, name }) => height < (/^(Main|Plain|Grave|Bare)/.test(name) ? 44 : 24))`);
    expect(small).toEqual([]);
    const taken = await page.getByRole('button', { name: /^Taken from/ }).boundingBox();
    expect(taken!.height).toBeGreaterThanOrEqual(56);
  });

  it('is not in the shop’s own build', async () => {
    const shop = await openHouse({ shop: 'empty' });
    const there = await shop.visit('/look', { as: 'owner' });
    expect(await there.getByRole('heading', { level: 1 }).textContent()).toBe('Nothing here');
    await shop.close();
  });
});
