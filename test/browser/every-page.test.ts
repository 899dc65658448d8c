import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { RecordKind, Role } from '../../src/contract/index.js';
import {
  barriers,
  describeInBrowser,
  expectQuiet,
  type House,
  openHouse,
  roomIsThere,
  widerBy,
} from './harness.js';

/* Every room of the house, as those see it whom it is for: named, without barriers, in the light and in the dark, on every screen. */

const SIZES = [
  [1440, 900],
  [1024, 768],
  [820, 1180],
] as const;
/** A screen of 1440 by 900 whose letters are of twice the size has so much room left. */
const LARGE_LETTERS = [720, 450] as const;

interface Room {
  readonly as: Role;
  readonly path: string;
  /** A record that the address leads to: the newest of its kind, of a state where one is named. */
  readonly of?: readonly [RecordKind, string?];
  /** Someone who may not go in. */
  readonly notFor?: Role;
}

const ROOMS: Readonly<Record<string, Room>> = {
  'the day': { as: 'owner', path: '/' },
  'the account': { as: 'adviser', path: '/account' },
  requests: { as: 'adviser', path: '/requests', notFor: 'winder' },
  'a request that waits': { as: 'adviser', path: '/requests/ID', of: ['request', 'waiting'] },
  'a request that was answered': { as: 'adviser', path: '/requests/ID', of: ['request', 'ordered'] },
  'a new request': { as: 'adviser', path: '/requests/new' },
  sets: { as: 'adviser', path: '/sets' },
  'a set': { as: 'adviser', path: '/sets/ID', of: ['set'] },
  recipes: { as: 'owner', path: '/recipes', notFor: 'packer' },
  'a recipe': { as: 'owner', path: '/recipes/ID', of: ['recipe'] },
  'a recipe that is calibrated': { as: 'owner', path: '/recipes/ID', of: ['recipe', 'calibrated'] },
  'what strings teach': { as: 'owner', path: '/calibration', notFor: 'packer' },
  orders: { as: 'adviser', path: '/orders', notFor: 'winder' },
  'an order': { as: 'adviser', path: '/orders/ID', of: ['order', 'received'] },
  'orders from a file': { as: 'adviser', path: '/orders/import', notFor: 'packer' },
  complaints: { as: 'adviser', path: '/complaints', notFor: 'winder' },
  'a complaint': { as: 'adviser', path: '/complaints/ID', of: ['complaint', 'open'] },
  'a new complaint': { as: 'owner', path: '/complaints/new' },
  'readings of a logger': { as: 'packer', path: '/dry-room/import' },
  'the plan': { as: 'owner', path: '/plan' },
  strings: { as: 'owner', path: '/strings' },
  'a lot of strings': { as: 'coiler', path: '/strings?lot=ID', of: ['string-lot'] },
  'a bin': { as: 'packer', path: '/strings?bin=ID', of: ['bin'] },
  wire: { as: 'owner', path: '/wire' },
  'a kind of wire': { as: 'owner', path: '/wire?wire=ID', of: ['wire'] },
  'a spool': { as: 'winder', path: '/wire?spool=ID', of: ['spool'] },
  'the shop': { as: 'owner', path: '/shop', notFor: 'adviser' },
  'a run': { as: 'owner', path: '/runs/ID', of: ['run', 'closed'], notFor: 'packer' },
  'my machine': { as: 'winder', path: '/machine', notFor: 'packer' },
  'a run on my machine': { as: 'winder', path: '/machine?run=ID', of: ['run', 'running'] },
  coiling: { as: 'coiler', path: '/coiling', notFor: 'adviser' },
  packing: { as: 'packer', path: '/packing', notFor: 'winder' },
  'a pack': { as: 'packer', path: '/packing?pack=ID', of: ['pack', 'open'] },
  'the dry room': { as: 'coiler', path: '/dry-room' },
  'no such address': { as: 'owner', path: '/no/such/place' },
  'no such record': { as: 'owner', path: '/orders/01980000-0000-7000-8000-000000000000' },
};
const ENTRIES = Object.entries(ROOMS);

/** Rooms of the whole house that need no record. */
const EMPTY_ROOMS = ENTRIES.filter(([, { of }]) => of === undefined).map(
  ([name, { path }]) => [name, path] as const,
);

describeInBrowser('every page', () => {
  let house: House;
  const pages = new Map<Role, Promise<Page>>();

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  /** One page for each role goes from room to room: to open one costs more than to walk. */
  const pageOf = (role: Role): Promise<Page> => {
    const page = pages.get(role) ?? house.visit('/account', { as: role });
    pages.set(role, page);
    return page;
  };
  const goTo = async (page: Page, path: string, base = house.url) => {
    await page.goto(new URL(path, base).href);
    await roomIsThere(page);
    await page
      .getByText(/^Fetching .*…$/)
      .first()
      .waitFor({ state: 'detached' });
  };
  const addressOf = async ({ path, of }: Room): Promise<string> => {
    if (!of) return path;
    const [kind, state] = of;
    const answer = await (await house.client('owner')).list(kind, { limit: 1, ...(state ? { state } : {}) });
    const id = answer.ok ? answer.value.items[0]?.id : undefined;
    if (id === undefined) throw new Error(`The invented shop has no ${kind} ${state ?? ''}`);
    return path.replace('ID', id);
  };
  /** What holds of any page in any state. */
  const isWellMade = async (page: Page) => {
    const headings = page.getByRole('heading', { level: 1 });
    expect(await headings.count()).toBe(1);
    expect(await page.title()).toBe(`${await headings.textContent()} · Tautwork`);
    await page.emulateMedia({ colorScheme: 'light' });
    expect(await barriers(page), 'light').toEqual([]);
    // In the dark only the colours are others.
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await barriers(page, ['color-contrast']), 'dark').toEqual([]);
    for (const [width, height] of [...SIZES, LARGE_LETTERS]) {
      await page.setViewportSize({ width, height });
      expect(await widerBy(page), `wider than ${width} by ${height}`).toBe(0);
    }
    await page.setViewportSize({ width: 1440, height: 900 });
  };

  it.each(ENTRIES)('%s: one title, no barriers, light and dark, and fits', async (_name, room) => {
    const page = await pageOf(room.as);
    await goTo(page, await addressOf(room));
    await isWellMade(page);
    // What does not exist is asked for in vain, and the browser says so.
    if (_name === 'no such record') house.complaints();
  });

  it.each(ENTRIES.filter(([, { notFor }]) => notFor !== undefined))(
    '%s: tells who may not go in what it takes',
    async (_name, room) => {
      const page = await pageOf(room.notFor!);
      await goTo(page, await addressOf(room));
      expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe('Not among your rooms');
      expect(await page.getByRole('main').textContent()).toMatch(/“[a-z]+\.[a-z]+”/);
    },
  );

  it('moves nothing for those who wish for no motion', async () => {
    const page = await pageOf('owner');
    for (const path of ['/', '/requests', '/plan', '/packing']) {
      await goTo(page, path);
      const moving = await page.evaluate(
        `[...document.querySelectorAll('*')].filter((node) => {
          const style = getComputedStyle(node);
          return style.animationName !== 'none' || parseFloat(style.transitionDuration) > 0;
        }).length`,
      );
      expect(moving, path).toBe(0);
    }
  });

  it('sends the people of the floor to the floor, and lets nobody in who is not signed in', async () => {
    const page = await pageOf('packer');
    await page.goto(house.url);
    await page.getByRole('heading', { level: 1, name: 'Packing' }).waitFor();
    expect(new URL(page.url()).pathname).toBe('/packing');
    const stranger = await house.visit('/orders');
    expect(await stranger.getByRole('heading', { level: 1 }).textContent()).toBe('Sign in');
    expect(await barriers(stranger)).toEqual([]);
    // Who is not signed in is told so, and the browser repeats it.
    house.complaints();
    await stranger.context().close();
  });
});

describeInBrowser('every page of a shop that has nothing yet', () => {
  let house: House;
  let page: Page;

  beforeAll(async () => {
    house = await openHouse({ shop: 'empty' });
    page = await house.visit('/account', { as: 'owner' });
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  it.each(EMPTY_ROOMS)('%s: one title, no barriers, fits, and complains of nothing', async (name, path) => {
    await page.goto(new URL(path, house.url).href);
    await roomIsThere(page);
    await page
      .getByText(/^Fetching .*…$/)
      .first()
      .waitFor({ state: 'detached' });
    expect(await page.getByRole('heading', { level: 1 }).count()).toBe(1);
    expect(await barriers(page)).toEqual([]);
    expect(await widerBy(page)).toBe(0);
    // What is worked out of the shop's settings is refused until there are some; the browser repeats it.
    const others = house.complaints().filter((line) => !line.includes('status of 422'));
    expect(name === 'no such record' ? [] : others).toEqual([]);
    // An empty room says what to do first; it does not fail.
    if (name !== 'no such record') expect(await page.getByText(/^Could not fetch/).count()).toBe(0);
  });

  it('says on the first day what is to be entered, and leads there', async () => {
    await page.goto(house.url);
    const steps = page.getByRole('region', { name: 'How this shop begins' });
    await steps.getByRole('listitem').first().getByText('to do').waitFor();
    await steps.getByRole('link', { name: 'Rules and rates' }).click();
    await page.getByLabel('Name', { exact: true }).fill('Lakeside Strings');
    await page.getByRole('button', { name: 'Write it down' }).click();
    await page.getByText('Nothing is settled yet.').waitFor({ state: 'detached' });
    await page.getByRole('link', { name: 'Today' }).click();
    await steps.getByRole('listitem').first().getByText('begun').waitFor();
    house.complaints();
  });
});
