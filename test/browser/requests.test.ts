import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type Client, gaugesInWords, orderFaultWords } from '../../src/contract/index.js';
import type { Shop } from '../../src/core/day/index.js';
import { type PlayerRequest, readOrders, requestAnswerer } from '../../src/core/orders/index.js';
import { formatForce } from '../../src/core/units/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

describeInBrowser('requests in a browser', () => {
  let house: House;
  let client: Client;
  let shop: Shop;
  let page: Page;

  beforeAll(async () => {
    house = await openHouse();
    client = await house.client('owner');
    shop = await shopNow();
  });
  afterAll(() => house?.close());
  afterEach(async () => {
    await page.close();
    expectQuiet(house);
  });

  async function shopNow(): Promise<Shop> {
    const view = await client.read('shop-view', {});
    if (!view.ok) throw new Error(view.fault.detail);
    return view.value.shop;
  }

  const best = () => page.getByRole('article').first();
  const field = (name: string) => page.getByLabel(name, { exact: true });

  async function fill(texts: Readonly<Record<string, string>>): Promise<void> {
    for (const [name, text] of Object.entries(texts)) await field(name).fill(text);
  }

  const OPEN_D = {
    Instrument: 'electric 25.5',
    'Tuning, low to high': 'D A D F# A D',
    'Set that is liked': 'Meadow six, 10',
  };

  function asked(cells: Readonly<Record<string, string>>): PlayerRequest {
    const whole = {
      order: 'A-1',
      quantity: '1',
      due: '2027-03-05',
      material: 'nickel-plated steel',
      instrument: 'electric 25.5',
      tuning: 'D A D F# A D',
      likes: 'Meadow six, 10',
      ...cells,
    };
    const { lines } = readOrders(Object.keys(whole), [{ line: 2, cells: whole }], shop);
    const wanted = lines[0]?.wanted;
    if (wanted?.kind !== 'request') throw new Error('the cells make a request');
    return wanted.request;
  }

  function answersTo(cells: Readonly<Record<string, string>>, quantity = 1) {
    const answer = requestAnswerer(shop)({ request: asked(cells), quantity, count: 3 });
    if (!answer.ok) throw new Error('the shop can answer');
    return answer.value.sets.map((set) => ({
      gauges: gaugesInWords(set.strings.map(({ candidate }) => candidate)),
      totalN: set.totalTensionN,
    }));
  }

  async function answeredWith(cells: Readonly<Record<string, string>>): Promise<void> {
    const [first] = answersTo(cells);
    await best()
      .getByRole('heading', { name: first?.gauges ?? '', exact: true })
      .waitFor();
    await best()
      .getByText(formatForce(first?.totalN ?? 0, 'N'))
      .first()
      .waitFor();
  }

  describe('while a letter is typed', () => {
    beforeEach(async () => {
      page = await house.visit('/requests/new', { as: 'adviser' });
      await field('Player').waitFor();
    });

    it('says what is still needed, and blames no field that is empty', async () => {
      await page.getByRole('heading', { name: 'The sets stand here' }).waitFor();
      expect(await page.locator('[aria-invalid=true]').count()).toBe(0);
      expect(await barriers(page)).toEqual([]);
    });

    it('is answered by the three best sets of the core, and anew when the tuning changes', async () => {
      await fill(OPEN_D);
      await answeredWith({});
      expect(await page.getByRole('article').count()).toBe(3);
      await field('Tuning, low to high').fill('D A D G A D');
      await answeredWith({ tuning: 'D A D G A D' });
      expect(await barriers(page)).toEqual([]);
    });

    it('follows a slider that is moved by keyboard', async () => {
      await fill(OPEN_D);
      await page.getByRole('slider', { name: 'Basses' }).focus();
      for (let step = 0; step < 12; step++) await page.keyboard.press('ArrowRight');
      await page.getByText('12 % heavier').waitFor();
      await answeredWith({ wishes: 'heavier bass 12 %' });
    });

    it('takes pulls that are given in place of a feel', async () => {
      await fill({ Instrument: 'electric 25.5', 'Tuning, low to high': 'E A D G B E' });
      await field('Aim').selectOption('even');
      await field('Pull').fill('75 N');
      await answeredWith({ tuning: 'E A D G B E', likes: '', wishes: 'even 75 N' });
    });

    it('carries the feel of tens to a baritone in open B', async () => {
      await fill({
        Instrument: 'baritone 27',
        'Tuning, low to high': 'B F# B F# B D#',
        'Set that is liked': 'Meadow six, 10',
        'Liked at scale length': '25.5 in',
      });
      await answeredWith({ instrument: 'baritone 27', tuning: 'B F# B F# B D#', likesScale: '25.5 in' });
      await page.getByText('read as B1 F#2 B2 F#3 B3 D#4').waitFor();
    });

    it('says in plain words what it cannot read, where it stands, and what it needs', async () => {
      await fill({ ...OPEN_D, 'Tuning, low to high': 'D A D H A D' });
      const cells = {
        order: 'A-1',
        quantity: '1',
        due: '2027-03-05',
        instrument: 'electric 25.5',
        tuning: 'D A D H A D',
        material: 'nickel-plated steel',
        likes: 'Meadow six, 10',
      };
      const { faults } = readOrders(Object.keys(cells), [{ line: 1, cells }], shop);
      const [fault] = faults;
      if (!fault) throw new Error('an H is no note');
      await page.getByText(orderFaultWords(fault).what).first().waitFor();
      await field('Tuning, low to high').fill('');
      await page.getByText('No tuning is given.').waitFor();
      expect(await barriers(page)).toEqual([]);
    });

    it('says which string would break, and up to where it may go', async () => {
      await fill({ ...OPEN_D, 'Scale length': '34 in', 'Tuning, low to high': 'E A D G B E' });
      await page
        .getByText(/would break before it reaches E4/)
        .first()
        .waitFor();
    });

    it('tells of a pull how it is known', async () => {
      await fill(OPEN_D);
      await best()
        .getByRole('button', { name: /How pull of string 1 is known/ })
        .click();
      await page.getByText('T = µ (2 L f)²').waitFor();
      await page.getByText('25.5 in', { exact: true }).waitFor();
    });
  });

  describe('from a letter to an order', () => {
    it('keeps the set that was chosen, prints its card, and makes the order of it', async () => {
      page = await house.visit('/requests', { as: 'adviser' });
      await page.getByRole('link', { name: 'New request' }).click();
      await fill({
        Player: 'Jorla Barleycroft',
        Sets: '2',
        'What the player wrote': 'Open D, please, and it should feel like my tens.',
        ...OPEN_D,
      });
      const second = answersTo({}, 2)[1]?.gauges ?? '';
      await page.getByRole('button', { name: new RegExp(`^Answer with this set\\W+${second}$`) }).click();
      await page.getByRole('heading', { name: 'Request of Jorla Barleycroft' }).waitFor();
      await page.getByRole('heading', { name: 'Given answer' }).waitFor();
      const id = page.url().split('/').at(-1) ?? '';
      const kept = await client.get('request', id);
      expect(kept).toMatchObject({
        ok: true,
        value: {
          state: 'answered',
          body: {
            player: 'Jorla Barleycroft',
            quantity: 2,
            letter: 'Open D, please, and it should feel like my tens.',
          },
        },
      });
      const strings = kept.ok ? (kept.value.body.answer?.strings ?? []) : [];
      expect(gaugesInWords(strings.map(({ spec }) => spec))).toBe(second);

      await page.getByRole('link', { name: 'Player’s card' }).click();
      await page.getByRole('heading', { name: 'Strings for Jorla Barleycroft' }).waitFor();
      await expect.poll(() => page.getByRole('row').count(), { timeout: 10_000 }).toBe(7);
      expect(await barriers(page)).toEqual([]);
      const pdf = await page.getByRole('link', { name: 'Card as PDF' }).getAttribute('href');
      const printed = await page.evaluate(
        `fetch(${JSON.stringify(pdf)}).then(async (answer) => [answer.headers.get('content-type'), (await answer.text()).slice(0, 5)])`,
      );
      expect(printed).toEqual(['application/pdf', '%PDF-']);

      await page.getByRole('link', { name: 'Back to the request' }).click();
      await page.getByRole('button', { name: 'Make an order of it' }).click();
      await expect.poll(() => field('Order number').inputValue(), { timeout: 10_000 }).not.toBe('');
      await fill({ 'Order number': 'Q-77' });
      await page.getByRole('button', { name: 'Make the order' }).click();
      await page.getByText('A day, such as 2027-03-20.').waitFor();
      await field('Due').fill('2027-03-26');
      await page.getByRole('button', { name: 'Make the order' }).click();
      await page.waitForURL(/\/orders\//);
      const orders = await client.list('order', { number: 'Q-77' });
      expect(orders).toMatchObject({
        ok: true,
        value: {
          items: [{ body: { player: 'Jorla Barleycroft', due: '2027-03-26', lines: [{ quantity: 2 }] } }],
        },
      });
      page = await house.again(page, `/requests/${id}`);
      await page.getByText('It is ordered').waitFor();
      expect(await barriers(page)).toEqual([]);
    });

    it('waits for somebody, is found by the next, and is declined with a reason', async () => {
      page = await house.visit('/requests/new', { as: 'adviser' });
      await fill({ ...OPEN_D, 'What the player wrote': 'Left-handed, if that matters.' });
      await page.getByRole('button', { name: 'Keep it waiting' }).click();
      await page.getByText('Whose letter is it?').waitFor();
      await field('Player').fill('Tove Alderwick');
      await page.getByRole('button', { name: 'Keep it waiting' }).click();
      await page.getByRole('heading', { name: 'Request of Tove Alderwick' }).waitFor();
      page = await house.again(page, '/requests');
      const row = page
        .getByRole('table', { name: 'Waiting for an answer' })
        .getByRole('row', { name: /Tove Alderwick/ });
      await row.getByText('Left-handed, if that matters.').waitFor();
      expect(await barriers(page)).toEqual([]);
      await row.getByRole('link').click();
      await page.getByRole('button', { name: 'Decline' }).click();
      await page.getByRole('button', { name: 'Decline it' }).click();
      await page.getByText('A reason is kept in the journal: write one.').waitFor();
      await field('Why').fill('the player bought elsewhere');
      await page.getByRole('button', { name: 'Decline it' }).click();
      await page.getByText('It was declined.').waitFor();
      const kept = await client.list('request', { player: 'Tove Alderwick' });
      expect(kept).toMatchObject({ ok: true, value: { items: [{ state: 'declined' }] } });
    });

    it('shows both answers where somebody else was quicker, and writes neither over the other unasked', async () => {
      const id = '01a40000-0000-7000-8000-0000000000aa';
      const request = asked({}) as never;
      const sent = { id, player: 'Wen Hollowmoor', letter: 'As before.', quantity: 1, request };
      const first = await client.perform('resolve-request', sent, { requestId: freshUuid(1) });
      expect(first.ok).toBe(true);
      page = await house.visit(`/requests/${id}`, { as: 'adviser' });
      await field('Sets').fill('3');
      const theirs = { ...sent, quantity: 2, expectedVersion: 1 };
      expect((await client.perform('resolve-request', theirs, { requestId: freshUuid(2) })).ok).toBe(true);
      await page
        .getByRole('button', { name: /Answer anew with this set/ })
        .first()
        .click();
      await page.getByRole('alert').waitFor();
      // The browser tells of the refusal as well.
      expect(house.complaints()).toEqual([expect.stringContaining('412')]);
      const box = page.getByRole('alert', { name: /Someone changed it meanwhile/ });
      await box.getByRole('row', { name: /Sets 2 3/ }).waitFor();
      expect(await field('Sets').inputValue()).toBe('3');
      expect(await barriers(page)).toEqual([]);
      await box.getByRole('button', { name: 'Write mine over it' }).click();
      await box.waitFor({ state: 'detached' });
      const kept = await client.get('request', id);
      expect(kept).toMatchObject({ ok: true, value: { version: 3, body: { quantity: 3 } } });
    });
  });

  it.each([
    [1440, 900, 'dark'],
    [1024, 768, 'light'],
    [820, 1180, 'light'],
  ] as const)('stands on a page of %i by %i, %s, without barriers', async (width, height, scheme) => {
    page = await house.visit('/requests/new', { as: 'owner', width, height, scheme });
    await fill(OPEN_D);
    await best().waitFor();
    expect(await widerBy(page)).toBe(0);
    expect(await barriers(page)).toEqual([]);
  });
});

/** Ids of requests to the server: any UUID, as long as each is another. */
const freshUuid = (number: number): string => `01a40000-0000-7000-8000-${String(number).padStart(12, '0')}`;
