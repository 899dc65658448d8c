import { existsSync } from 'node:fs';
import { copyFile, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import axe from 'axe-core';
import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { type Client, createClient, type Role } from '../../src/contract/index.js';
import { type OpenShop, serveShop } from '../../src/server/index.js';
import {
  consoleSignInLink,
  loadDemoHistory,
  newId,
  openStore,
  packageRoot,
  shopClock,
} from '../../src/workshop/index.js';

const BROWSER_PATH = process.env.CHROMIUM_PATH ?? '/usr/bin/chromium';
/** The built page; another copy of it by `WEB_ROOT`. */
const WEB_ROOT = process.env.WEB_ROOT ?? fileURLToPath(new URL('dist/web/', packageRoot()));

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
  if (!existsSync(join(WEB_ROOT, 'index.html')))
    return 'The page was never built: run npm test, or npx vite build before this suite alone.';
  return undefined;
}

export interface Sight {
  /** Whose eyes: someone who has this role. Left out: nobody is signed in. */
  readonly as?: Role;
  readonly width?: number;
  readonly height?: number;
  readonly scheme?: 'light' | 'dark';
}

/** A shop of its own behind our real server on a free port of this machine, with a browser before it. */
export interface House {
  readonly url: string;
  /** What stands after the # of the link that the console shows while no owner can sign in. */
  readonly firstLink: string | undefined;
  /** A page in a fresh browser, as one who never was here sees it. */
  readonly visit: (path: string, sight?: Sight) => Promise<Page>;
  /** Another page of the same browser. */
  readonly again: (page: Page, path: string) => Promise<Page>;
  /** Asks the shop as someone with this role does by script: to prepare what a test needs, and to see what came of it. */
  readonly client: (as: Role) => Promise<Client>;
  /** What any page complained of since the last time this was asked: errors, warnings, forbidden styles or scripts,
   * requests that leave the house. */
  readonly complaints: () => readonly string[];
  /** Takes the server down, and puts it up again at the same address with the same records. */
  readonly stop: () => Promise<void>;
  readonly startAgain: () => Promise<void>;
  readonly close: () => Promise<void>;
}

export interface HouseWish {
  /** A fortnight of the invented workshop where left out; `empty` has its owner and nothing else. */
  readonly shop?: 'demo' | 'empty';
  /** Days of the invented workshop's past; the whole year, which takes half a minute to make, by `year`. */
  readonly past?: number | 'year';
  /** Folder of another build of the page. */
  readonly webRoot?: string;
}

export async function openHouse({
  shop = 'demo',
  past = 14,
  webRoot = WEB_ROOT,
}: HouseWish = {}): Promise<House> {
  const folder = await mkdtemp(join(tmpdir(), 'tautwork-house-'));
  const file = join(folder, 'shop.db');
  if (shop === 'demo') await copyFile(await demoFileOnce(past), file);
  let server = await serve(file, { port: 0, webRoot });
  const { url, port } = server;
  const browser = await chromium.launch({ executablePath: BROWSER_PATH, args: FLAGS });
  const keys = new Map<Role, Promise<string>>();
  const keyOf = (role: Role): Promise<string> => {
    const key = keys.get(role) ?? keyFor(file, url, role);
    keys.set(role, key);
    return key;
  };
  let complaints: string[] = [];
  const open = async (context: BrowserContext, path: string) => {
    const page = await context.newPage();
    listen(page, url, (complaint) => complaints.push(complaint));
    await page.goto(new URL(path, url).href);
    await roomIsThere(page);
    return page;
  };
  return {
    url,
    firstLink: server.firstLink?.secret,
    visit: async (path, sight = {}) => {
      const context = await newContext(browser, sight);
      if (sight.as !== undefined) {
        const value = await keyOf(sight.as);
        await context.addCookies([
          { name: 'tautwork-session', value, url: `${url}api`, httpOnly: true, sameSite: 'Strict' },
        ]);
      }
      return open(context, path);
    },
    again: (page, path) => open(page.context(), path),
    client: async (as) => {
      const cookie = `tautwork-session=${await keyOf(as)}`;
      return createClient({
        origin: url.replace(/\/$/, ''),
        fetch: (address, request) =>
          fetch(address, {
            ...request,
            headers: { ...request.headers, cookie, origin: new URL(url).origin },
          }),
      });
    },
    complaints: () => {
      const heard = complaints;
      complaints = [];
      return heard;
    },
    stop: () => server.close(),
    startAgain: async () => {
      server = await serve(file, { port, webRoot });
    },
    close: async () => {
      await browser.close();
      await server.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function serve(
  file: string,
  { port, webRoot }: { readonly port: number; readonly webRoot: string },
): Promise<OpenShop> {
  const served = await serveShop({ place: { file }, port, webRoot });
  if (!served.ok) throw new Error(`The shop could not be served: ${JSON.stringify(served.fault)}`);
  return served.value;
}

const made = new Map<number | 'year', Promise<string>>();

/** Making the history takes a second or two: once for all houses of a file of tests. */
function demoFileOnce(past: number | 'year'): Promise<string> {
  const file = made.get(past) ?? makeDemoFile(past);
  made.set(past, file);
  return file;
}

async function makeDemoFile(past: number | 'year'): Promise<string> {
  const file = join(await mkdtemp(join(tmpdir(), 'tautwork-demo-')), 'demo.db');
  const store = await openStore({ file });
  await loadDemoHistory(store, past === 'year' ? {} : { days: past });
  await store.close();
  return file;
}

/** Signs someone of a role in, by a link from the console as a person would, and gives the cookie. */
async function keyFor(file: string, url: string, role: Role): Promise<string> {
  const store = await openStore({ file });
  const people = await store.read(({ records }) => records.all('person'));
  const person = people.find(({ body }) => body.roles.includes(role));
  if (!person) throw new Error(`Nobody in this shop is ${role}`);
  const parts = { store, clock: await shopClock(store), newId };
  const link = await consoleSignInLink(parts, person.body.name);
  await store.close();
  if (!link.ok) throw new Error(`No link for the ${role}: ${link.fault.code}`);
  const answer = await fetch(`${url}api/v1/set-password`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: new URL(url).origin },
    body: JSON.stringify({ link: link.value.secret, password: 'lake, mist and copper' }),
  });
  const cookie = answer.headers.getSetCookie().find((each) => each.startsWith('tautwork-session='));
  const key = cookie === undefined ? undefined : /^tautwork-session=([^;]+)/.exec(cookie)?.[1];
  if (key === undefined) throw new Error(`The ${role} could not sign in: ${await answer.text()}`);
  return decodeURIComponent(key);
}

async function newContext(browser: Browser, sight: Sight): Promise<BrowserContext> {
  const { width = 1440, height = 900, scheme = 'light' } = sight;
  const context = await browser.newContext({
    viewport: { width, height },
    colorScheme: scheme,
    reducedMotion: 'reduce',
    locale: 'en-GB',
  });
  // What is not there by then will not come: a failing test should not take half a minute to say so.
  context.setDefaultTimeout(45_000);
  return context;
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

/** Waits for the title of a room. While the page asks who is there, it bears the name of the house. */
export const roomIsThere = (page: Page): Promise<void> =>
  page
    .getByRole('heading', { level: 1 })
    .filter({ hasNotText: /^Tautwork$/ })
    .first()
    .waitFor();

/** What axe finds wrong with a page as it stands, one line each; by some of its rules alone where they are named. */
export async function barriers(page: Page, only?: readonly string[]): Promise<readonly string[]> {
  // By the debugger's door, which the page's own rules on scripts do not close.
  await page.evaluate(axe.source);
  const found = (await page.evaluate(
    `axe.run(${only ? JSON.stringify({ runOnly: only }) : ''})`,
  )) as axe.AxeResults;
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

/** What the shop answered; a refusal fails the test. */
export async function answered<Value>(
  answer: Promise<
    { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly fault: object }
  >,
): Promise<Value> {
  const given = await answer;
  if (!given.ok) throw new Error(JSON.stringify(given.fault));
  return given.value;
}
