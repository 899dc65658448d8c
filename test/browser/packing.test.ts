import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { type ReadingAnswer, wholeStringInWords } from '../../src/contract/index.js';
import {
  barriers,
  describeInBrowser,
  expectQuiet,
  focusedName,
  type House,
  openHouse,
  roomIsThere,
  widerBy,
} from './harness.js';

/* The packer's main day: from the roll to the post, with a scanner, which is a keyboard, and without a line. */

const TABLET = { as: 'packer', width: 1024, height: 768 } as const;

type Roll = ReadingAnswer<'packing-roll'>;

const mayBePacked = ({ state, count }: Roll['lying'][number]): boolean => state === 'released' && count > 0;
const dueFirst = ({ body }: Roll['orders'][number]): string => `${body.due} ${body.number}`;

describeInBrowser('the packing room', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const packing = async (): Promise<ReadingAnswer<'packing-roll'>> => {
    const answer = await (await house.client('packer')).read('packing-roll', {});
    if (!answer.ok) throw new Error(answer.fault.detail);
    return answer.value;
  };
  const packOf = async (orderId: string, copy = 1) =>
    (await packing()).packs.find(({ body }) => body.orderId === orderId && body.copy === copy)!;
  const orderCalled = async (id: string) => {
    const answer = await (await house.client('packer')).get('order', id);
    return answer.ok ? answer.value : undefined;
  };
  let ordered = 0;
  /** An order of sets whose strings lie in the bins, due before all others so that nobody is served first. */
  const anOrder = async (quantity: number) => {
    const number = `P-${++ordered}`;
    const wanted = { kind: 'stock', setName: 'Meadow six, 10' } as const;
    const answer = await (await house.client('owner')).perform(
      'save-order',
      {
        id: crypto.randomUUID(),
        number,
        player: 'Perrin Oddlestone',
        due: '2027-02-20',
        note: '',
        lines: [{ quantity, wanted }],
      },
      { requestId: crypto.randomUUID() },
    );
    if (!answer.ok) throw new Error(answer.fault.detail);
    return answer.value;
  };
  /** As a scanner does: letters and Enter, wherever the focus is. */
  const scan = async (page: Page, text: string) => {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  };
  const begin = async (number: string) => {
    const page = await house.visit('/packing', TABLET);
    await page.getByRole('button', { name: `Pack order ${number}` }).click();
    await page.getByRole('heading', { name: 'Strings of this set' }).waitFor();
    return page;
  };
  /** The bin and lot that the page wants next. */
  const wantedNext = async (page: Page) => {
    const [, bin] = /^Taken from (.+)$/.exec(
      (await page.getByRole('button', { name: /^Taken from/ }).textContent()) ?? '',
    )!;
    return bin!;
  };
  const saysDone = (page: Page, done: number, all: number) =>
    page.getByRole('img', { name: `${done} of ${all} strings are in the pack` }).waitFor();

  it('shows the orders by due date with what each waits for, and one walk for those that can be packed', async () => {
    const page = await house.visit('/packing', TABLET);
    const roll = await packing();
    const due = roll.orders.toSorted((one, other) => (dueFirst(one) < dueFirst(other) ? -1 : 1));
    const lying = new Set(roll.lying.filter(mayBePacked).map(({ stringKey }) => stringKey));
    const rows = page.getByRole('region', { name: 'Orders to pack, those due first' }).getByRole('listitem');
    expect(await rows.count()).toBe(due.length);
    let waiting = 0;
    for (const [at, order] of due.entries()) {
      const row = await rows.nth(at).textContent();
      expect(row).toContain(order.body.number);
      const untouched = order.state === 'received';
      const lacks = order.body.lines
        .flatMap(({ strings }) => strings)
        .filter(({ stringKey }) => !lying.has(stringKey));
      if (!untouched || lacks.length === 0) continue;
      waiting++;
      expect(lacks.some(({ stringKey }) => row?.includes(wholeStringInWords(stringKey).split(',')[0]!))).toBe(
        true,
      );
    }
    expect(waiting).toBeGreaterThan(0);
    const bins = await page
      .getByRole('region', { name: 'The walk' })
      .locator('ol > li > strong')
      .allTextContents();
    const order = new Map(roll.bins.map(({ name, walkOrder }) => [name, walkOrder]));
    expect(bins).toEqual(bins.toSorted((a, b) => order.get(a)! - order.get(b)!));
    expect(new Set(bins).size).toBe(bins.length);
    await page.context().close();
  });

  it('packs an order with a scanner alone, from its number to its label, and sends it', async () => {
    const order = await anOrder(1);
    const page = await house.visit('/packing', TABLET);
    await page.getByRole('button', { name: `Pack order ${order.body.number}` }).waitFor();
    // Nobody began it: its number does.
    await scan(page, order.body.number);
    await page.getByRole('heading', { name: 'Strings of this set' }).waitFor();
    const count = order.body.lines[0]!.strings.length;
    for (let done = 0; done < count; done++) {
      const bin = await wantedNext(page);
      await scan(page, done % 2 === 0 ? bin : bin.replace(/\D+/g, ' ').trim());
      await saysDone(page, done + 1, count);
    }
    await page.getByRole('heading', { name: 'All strings are in' }).waitFor();
    const { body } = await packOf(order.id);
    await scan(page, body.labelCode);
    await page.getByRole('heading', { name: 'Sealed' }).waitFor();
    await page.getByText('All that was entered here is with the shop.').waitFor();
    expect((await packOf(order.id)).state).toBe('sealed');
    expect((await packOf(order.id)).body.picked.map(({ stringKey }) => stringKey)).toEqual(
      order.body.lines[0]!.strings.map(({ stringKey }) => stringKey),
    );

    await page.getByRole('button', { name: `Send the order ${order.body.number}` }).click();
    await page.getByRole('button', { name: 'It is on its way' }).click();
    await page.getByText('1 pack sent').waitFor();
    expect((await orderCalled(order.id))?.state).toBe('shipped');
    await page.context().close();
  });

  it('refuses the wrong string loudly: what was scanned, what belongs there, and nothing is booked', async () => {
    const order = await anOrder(1);
    const page = await begin(order.body.number);
    const roll = await packing();
    const pack = await packOf(order.id);
    const kinds = new Set(pack.body.wanted.map(({ stringKey }) => stringKey));
    const other = roll.lying.find(
      ({ stringKey, state, count }) => !kinds.has(stringKey) && state === 'released' && count > 0,
    )!;
    await scan(page, other.lot);
    const stop = page.getByRole('alert').filter({ hasText: 'Stop' });
    await stop.waitFor();
    const said = await stop.textContent();
    expect(said).toContain('Wrong string: another');
    expect(said).toContain(other.lot);
    expect(said).toContain(wholeStringInWords(other.stringKey));
    const wanted = pack.body.wanted.map(({ stringKey }) => wholeStringInWords(stringKey));
    expect(wanted.some((words) => said?.includes(words))).toBe(true);
    expect(await barriers(page)).toEqual([]);
    const { height } = (await stop.boundingBox())!;
    expect(height).toBeGreaterThan(300);
    expect((await packOf(order.id)).body.picked).toEqual([]);

    await scan(page, 'no such lot');
    await stop.getByText('No lot, bin or label is called that').waitFor();
    const [, right] = /Take it from (.+) \(/.exec((await stop.textContent()) ?? '')!;
    await scan(page, right!);
    await stop.waitFor({ state: 'detached' });
    await saysDone(page, 1, pack.body.wanted.length);
    await page.context().close();
  });

  it('refuses a lot that was put on hold meanwhile', async () => {
    const order = await anOrder(1);
    const page = await begin(order.body.number);
    const bin = await wantedNext(page);
    const roll = await packing();
    const wanted = new Set((await packOf(order.id)).body.wanted.map(({ stringKey }) => stringKey));
    const binId = roll.bins.find(({ name }) => name === bin)?.id;
    const lot = roll.lying
      .filter((each) => each.binId === binId && wanted.has(each.stringKey) && mayBePacked(each))
      // Ids are made in the order of time: the oldest lot goes first.
      .toSorted((one, other) => (one.lotId < other.lotId ? -1 : 1))[0]!;
    const owner = await house.client('owner');
    const now = await owner.get('string-lot', lot.lotId);
    const held = await owner.perform(
      'hold-lot',
      { lotId: lot.lotId, expectedVersion: now.ok ? now.value.version : 0, reason: 'kinked near the ball' },
      { requestId: crypto.randomUUID() },
    );
    expect(held.ok).toBe(true);
    // Another screen put it on hold: this one hears of it by itself.
    await page.getByText(`${lot.lot}, ${lot.count} there`).waitFor({ state: 'detached' });
    await scan(page, lot.lot);
    const stop = page.getByRole('alert').filter({ hasText: 'This lot may not be packed' });
    await stop.getByText('kinked near the ball', { exact: false }).waitFor();
    await page.context().close();
  });

  it('goes by touch and by keys too: take, lay back, take again, and gives a pack up with a reason', async () => {
    const order = await anOrder(1);
    const page = await begin(order.body.number);
    const count = order.body.lines[0]!.strings.length;
    const take = page.getByRole('button', { name: /^Taken from/ });
    const { height } = (await take.boundingBox())!;
    expect(height).toBeGreaterThanOrEqual(56);
    await take.focus();
    await page.keyboard.press('Enter');
    await saysDone(page, 1, count);
    await page.getByRole('button', { name: /^Lay back string/ }).click();
    await saysDone(page, 0, count);
    await page.getByText('All that was entered here is with the shop.').waitFor();
    expect((await packOf(order.id)).body.picked).toEqual([]);
    await take.click();
    await saysDone(page, 1, count);
    await page.getByText('All that was entered here is with the shop.').waitFor();
    const before = await packOf(order.id);

    await page.getByRole('button', { name: 'Give the pack up' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Give the pack up' }).click();
    await dialog.getByText('Say why').waitFor();
    await dialog.getByLabel('Why').fill('the player changed the tuning');
    await dialog.getByRole('button', { name: 'Give the pack up' }).click();
    await page.getByRole('heading', { level: 1, name: 'Packing' }).waitFor();
    const after = await (await house.client('packer')).get('pack', before.id);
    expect(after.ok && after.value.state).toBe('void');
    await page.context().close();
  });

  it('is packed with keys alone: Enter for each string, then on to the seal', async () => {
    const order = await anOrder(1);
    const page = await begin(order.body.number);
    const count = order.body.lines[0]!.strings.length;
    await page.getByRole('button', { name: /^Taken from/ }).focus();
    for (let done = 0; done < count; done++) {
      await page.keyboard.press('Enter');
      await saysDone(page, done + 1, count);
    }
    await page.getByRole('heading', { name: 'All strings are in' }).waitFor();
    await page.keyboard.press('Tab');
    expect(await focusedName(page)).toBe('Seal the pack');
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Sealed' }).waitFor();
    await page.getByText('All that was entered here is with the shop.').waitFor();
    expect((await packOf(order.id)).state).toBe('sealed');
    await page.context().close();
  });

  it('sends a part of an order, and the rest later', async () => {
    const order = await anOrder(2);
    const page = await begin(order.body.number);
    const fill = async () => {
      const { wanted } = (await packOf(order.id)).body;
      for (let done = 0; done < wanted.length; done++) {
        await page.getByRole('button', { name: /^Taken from/ }).click();
        await saysDone(page, done + 1, wanted.length);
      }
      await page.getByRole('button', { name: 'Seal the pack' }).click();
      await page.getByRole('heading', { name: 'Sealed' }).waitFor();
      await page.getByText('All that was entered here is with the shop.').waitFor();
    };
    await fill();
    await page.getByRole('button', { name: 'Send what is sealed' }).click();
    await page.getByText('1 set stays to be packed.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'It is on its way' }).click();
    await page.getByText('1 pack sent').waitFor();
    expect((await orderCalled(order.id))?.state).toBe('packing');
    await page.getByRole('link', { name: 'Next set' }).click();
    await page
      .getByRole('heading', { name: 'All strings are in' })
      .or(page.getByText(/^Taken from/))
      .first()
      .waitFor();
    await fill();
    await page.getByRole('button', { name: `Send the order ${order.body.number}` }).click();
    await page.getByRole('button', { name: 'It is on its way' }).click();
    await page.getByText('1 pack sent').last().waitFor();
    expect((await orderCalled(order.id))?.state).toBe('shipped');
    await page.context().close();
  });

  it('prints the label of a pack, and those of its order, as often as one likes', async () => {
    const roll = await packing();
    const pack = roll.packs[0]!;
    const page = await house.visit(`/packing?pack=${pack.id}`, TABLET);
    await page.getByRole('button', { name: 'Labels' }).click();
    await page.getByLabel('First label left on the sheet').selectOption('5');
    for (const name of ['Label of this pack', 'Labels of all']) {
      const href = (await page.getByRole('link', { name }).getAttribute('href'))!;
      expect(href).toContain('place=5');
      const answer = await page.request.get(new URL(href, house.url).href);
      expect(answer.headers()['content-type']).toBe('application/pdf');
      expect((await answer.body()).subarray(0, 5).toString()).toBe('%PDF-');
    }
    await page.context().close();
  });

  it('goes on without a line, and all arrives once when it is back', async () => {
    const order = await anOrder(1);
    const page = await begin(order.body.number);
    const { wanted } = (await packOf(order.id)).body;
    await house.stop();
    await page.getByText('No line', { exact: false }).first().waitFor();
    for (let done = 0; done < wanted.length; done++) {
      await page.getByRole('button', { name: /^Taken from/ }).click();
      await saysDone(page, done + 1, wanted.length);
    }
    await page.getByRole('button', { name: 'Seal the pack' }).click();
    await page.getByRole('heading', { name: 'Sealed' }).waitFor();
    await house.startAgain();
    await page.getByText('All that was entered here is with the shop.').waitFor({ timeout: 30_000 });
    const pack = await packOf(order.id);
    expect([pack.state, pack.body.picked.length]).toEqual(['sealed', wanted.length]);
    // What a browser says of a server that is away is no fault of the page.
    house.complaints();
    await page.context().close();
  });

  it('has no barriers and fits a tablet either way, light and dark', async () => {
    const open = (await packing()).packs.find(({ state }) => state === 'open')!;
    const page = await house.visit('/packing', TABLET);
    for (const path of ['/packing', `/packing?pack=${open.id}`, '/packing?pack=none']) {
      await page.goto(new URL(path, house.url).href);
      await roomIsThere(page);
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        expect(await barriers(page), `${path}, ${colorScheme}`).toEqual([]);
      }
      for (const [width, height] of [
        [820, 1180],
        [512, 384],
        [1024, 768],
      ] as const) {
        await page.setViewportSize({ width, height });
        expect(await widerBy(page), `${path} at ${width}`).toBe(0);
      }
    }
    await page.context().close();
  });
});
