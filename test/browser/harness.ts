import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type { Day, Shop } from '../../src/core/day/index.js';
import { createServer, openServer } from '../../src/server/index.js';
import { packageRoot } from '../../src/workshop/index.js';

const BROWSER_PATH = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';
const WEB_ROOT = fileURLToPath(new URL('dist/web/', packageRoot()));

/** What keeps a browser from asking its maker, its disk and its sound card for things that no test needs. */
const FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * A suite that walks the built page in a real browser. Where there is no browser it is skipped, and says so
 * aloud; where CI judges a change that is a failure, as is a page that was never built.
 */
export function describeInBrowser(title: string, suite: () => void): void {
  const lack = lackOf();
  if (lack === undefined) {
    describe(title, suite);
    return;
  }
  if (process.env.CI || existsSync(BROWSER_PATH)) {
    describe(title, () => {
      it('can be walked at all', () => {
        throw new Error(lack);
      });
    });
    return;
  }
  console.warn(`\n*** SKIPPED in a browser: ${title}. ${lack} ***\n`);
  describe.skip(title, suite);
}

function lackOf(): string | undefined {
  if (!existsSync(BROWSER_PATH))
    return `There is no browser at ${BROWSER_PATH}: install Chromium, or name one by CHROMIUM_PATH.`;
  if (!existsSync(`${WEB_ROOT}index.html`))
    return 'The page was never built: run npm test, or npx vite build before this suite alone.';
  return undefined;
}

export interface Sight {
  readonly width?: number;
  readonly height?: number;
  readonly scheme?: 'light' | 'dark';
}

/** Our own server on a free port of this machine, with a browser before it. */
export interface House {
  readonly url: string;
  /** A fresh page, as one who never was here sees it. */
  readonly visit: (path: string, sight?: Sight) => Promise<Page>;
  /** What any page complained of since the last time this was asked: errors, warnings, forbidden styles or scripts,
   * requests that leave the house. */
  readonly complaints: () => readonly string[];
  readonly close: () => Promise<void>;
}

export async function openHouse(parts: {
  readonly dayOf: () => Promise<Day>;
  readonly shopOf: () => Promise<Shop>;
}): Promise<House> {
  const server = await openServer(createServer({ ...parts, webRoot: WEB_ROOT }), 0);
  const browser = await chromium.launch({ executablePath: BROWSER_PATH, args: FLAGS });
  let complaints: string[] = [];
  return {
    url: server.url,
    visit: async (path, sight = {}) => {
      const page = await newPage(browser, sight);
      listen(page, server.url, (complaint) => complaints.push(complaint));
      await page.goto(new URL(path, server.url).href);
      await page.getByRole('heading', { level: 1 }).waitFor();
      return page;
    },
    complaints: () => {
      const heard = complaints;
      complaints = [];
      return heard;
    },
    close: async () => {
      await browser.close();
      await server.close();
    },
  };
}

async function newPage(browser: Browser, sight: Sight): Promise<Page> {
  const { width = 1440, height = 900, scheme = 'light' } = sight;
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: scheme,
    reducedMotion: 'reduce',
  });
  // What is not there by then will not come: a failing test should not take half a minute to say so.
  context.setDefaultTimeout(10_000);
  return context.newPage();
}

function listen(page: Page, home: string, hear: (complaint: string) => void): void {
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) hear(`${message.type()}: ${message.text()}`);
  });
  page.on('pageerror', (error) => hear(`thrown: ${error.message}`));
  page.on('request', (request) => {
    if (!request.url().startsWith(home)) hear(`leaves the house: ${request.url()}`);
  });
}

/** What axe finds wrong with a page as it stands, one line each. */
export async function barriers(page: Page): Promise<readonly string[]> {
  // By the debugger's door, which the page's own rules on scripts do not close.
  await page.evaluate(axe.source);
  const found = (await page.evaluate('axe.run()')) as axe.AxeResults;
  return found.violations.flatMap(({ id, help, nodes }) =>
    nodes.map(({ target, failureSummary }) => `${id}: ${help}: ${target.join(' ')}: ${failureSummary}`),
  );
}

/** How far a page is wider than its window, in pixels. */
export const widerBy = (page: Page): Promise<number> =>
  page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth');

/** What a person who only has a keyboard stands on. */
export const focusedName = (page: Page): Promise<string> =>
  page.evaluate(
    '(document.activeElement.getAttribute("aria-label") ?? document.activeElement.textContent ?? "").trim()',
  );

/** Expects that what was heard of any page is nothing. */
export const expectQuiet = (house: House): void => expect(house.complaints()).toEqual([]);
