import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { Client, InputNamed } from '../../src/contract/index.js';
import { newId } from '../../src/workshop/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

const SET = 'Meadow six, 10';

describeInBrowser('the room of orders', () => {
  let house: House;
  let adviser: Client;
  let page: Page;

  beforeAll(async () => {
    house = await openHouse();
    adviser = await house.client('adviser');
  });
  afterAll(() => house?.close());
  afterEach(async () => {
    await page.context().close();
    expectQuiet(house);
  });

  const visit = async (path: string) => {
    page = await house.visit(path, { as: 'adviser' });
  };
  const orderOf = async (number: string) => {
    const page = await adviser.list('order', { search: number });
    if (!page.ok) throw new Error(page.fault.detail);
    return page.value.items.find(({ body }) => body.number === number);
  };
  const save = async (input: Partial<InputNamed<'save-order'>> & { readonly number: string }) => {
    const done = await adviser.perform(
      'save-order',
      {
        id: newId(),
        player: 'Jorla Barleycroft',
        due: '2027-03-12',
        note: '',
        lines: [{ quantity: 1, wanted: { kind: 'stock', setName: SET } }],
        ...input,
      },
      { requestId: newId() },
    );
    if (!done.ok) throw new Error(done.fault.detail);
    return done.value;
  };
  const rows = () => page.getByRole('table', { name: 'Orders' }).locator('tbody tr');

  it('lists what is open by due date, says what is late, and finds by any part', async () => {
    await visit('/orders');
    await page.getByRole('status').filter({ hasText: 'by due date' }).waitFor();
    const open = await Promise.all(
      ['received', 'packing'].map((state) => adviser.list('order', { state, limit: 500 })),
    );
    const dues = open.flatMap((answer) => (answer.ok ? answer.value.items.map(({ body }) => body.due) : []));
    expect(await rows().first().getByRole('link').textContent()).toBe(
      open
        .flatMap((answer) => (answer.ok ? answer.value.items : []))
        .find(({ body }) => body.due === dues.toSorted()[0])?.body.number,
    );
    await page.getByText(`${dues.length} orders, by due date`).waitFor();
    await page
      .getByText(/days late/)
      .first()
      .waitFor();
    await page.getByLabel('Find among these').fill('Copperstead');
    await page.getByText('1 order, by due date').waitFor();
    await page.getByLabel('Which orders').selectOption('shipped');
    await page.getByLabel('Find among these').fill('');
    await page.getByRole('status').filter({ hasText: 'newest first' }).waitFor();
    expect(await rows().first().textContent()).toContain('Shipped');
    expect(await barriers(page)).toEqual([]);
  });

  it('writes the whole list to a file', async () => {
    await visit('/orders');
    await page.getByText(/orders, by due date/).waitFor();
    const saving = page.waitForEvent('download');
    await page.getByRole('button', { name: 'List as CSV' }).click();
    const text = await readFile(await (await saving).path(), 'utf8');
    const [head, ...lines] = text.split('\r\n');
    expect(head).toBe('\uFEFFOrder,Player,Due,Sets,State,Promised');
    await page.getByText(`${lines.length} orders written to a file.`).waitFor();
  });

  it('takes an order by hand, of a set of the shop and of gauges, after saying what it lacks', async () => {
    await visit('/orders/new');
    await page.getByRole('button', { name: 'Save the order' }).click();
    await page.getByText('Give it a number.').waitFor();
    await page.getByText('Choose a day.').waitFor();
    await page.getByLabel('Number').fill('B-1');
    await page.getByLabel('Player').fill('Brila Winnowholt');
    await page.getByLabel('Due').fill('2027-03-19');
    await page.getByLabel('Set', { exact: true }).selectOption(SET);
    await page.getByRole('button', { name: 'Another line' }).click();
    await page.getByLabel('What', { exact: true }).nth(1).selectOption('custom');
    await page.getByLabel('Gauges').fill('46 36 26w 17 13 10');
    await page.getByLabel('Sets', { exact: true }).nth(1).fill('2');
    expect(await barriers(page)).toEqual([]);
    await page.getByRole('button', { name: 'Save the order' }).click();
    await page.getByRole('heading', { level: 1, name: 'Order B-1' }).waitFor();
    const order = await orderOf('B-1');
    expect(order?.body).toMatchObject({ player: 'Brila Winnowholt', due: '2027-03-19' });
    expect(
      order?.body.lines.map(({ kind, quantity, strings }) => [
        kind,
        quantity,
        strings.map(({ spec }) => spec.gaugeThou),
      ]),
    ).toEqual([
      ['stock', 1, [10, 13, 17, 26, 36, 46]],
      ['custom', 2, [10, 13, 17, 26, 36, 46]],
    ]);
  });

  it('shows an order with its strings, what lies there, and what happened to it; a change can be taken back', async () => {
    const { id } = await save({ number: 'B-2' });
    await visit(`/orders/${id}`);
    expect(
      await page
        .getByRole('table', { name: /Meadow six, 10/ })
        .locator('tbody tr')
        .count(),
    ).toBe(6);
    await page.getByRole('button', { name: 'Change it' }).click();
    await page.getByLabel('Note').fill('will collect');
    await page.getByRole('button', { name: 'Save the order' }).click();
    await page.getByText('“will collect”').waitFor();
    expect((await orderOf('B-2'))?.body.note).toBe('will collect');
    const history = page.getByRole('table', { name: 'What happened' });
    await history.locator('tbody tr').first().getByText('Note: — → will collect').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Order B-2 is as it was.').waitFor();
    expect((await orderOf('B-2'))?.body.note).toBe('');
    expect(await barriers(page)).toEqual([]);
  });

  it('loses nothing where two change it: both versions are shown, and a person decides', async () => {
    const order = await save({ number: 'B-3' });
    await visit(`/orders/${order.id}`);
    await page.getByRole('button', { name: 'Change it' }).click();
    await page.getByLabel('Player').fill('Halris Fallowmere');
    await save({ number: 'B-3', id: order.id, expectedVersion: order.version, player: 'Cormin Winnowstead' });
    const both = page.getByRole('alert').filter({ hasText: 'Someone changed it meanwhile' });
    await both.getByText('Cormin Winnowstead').waitFor();
    await both.getByText('Halris Fallowmere').waitFor();
    expect(await page.getByLabel('Player').inputValue()).toBe('Halris Fallowmere');
    await both.getByRole('button').first().click();
    await page.getByRole('heading', { level: 1, name: 'Order B-3' }).waitFor();
    const kept = await orderOf('B-3');
    expect([kept?.version, kept?.body.player]).toEqual([3, 'Halris Fallowmere']);
  });

  it('cancels only after a second thought, and with a reason', async () => {
    const { id } = await save({ number: 'B-4' });
    await visit(`/orders/${id}`);
    await page.getByRole('button', { name: 'Cancel it' }).click();
    const sheet = page.getByRole('dialog');
    expect(await sheet.getByRole('button', { name: 'Cancel it' }).isDisabled()).toBe(true);
    await sheet.getByLabel('Why').fill('the player moved away');
    await sheet.getByRole('button', { name: 'Cancel it' }).click();
    await page.getByText('Order B-4 is cancelled.').waitFor();
    expect((await orderOf('B-4'))?.state).toBe('cancelled');
  });

  it('says so where there is no such order', async () => {
    await visit(`/orders/${newId()}`);
    await page.getByText('There is no such order.').waitFor();
    // The browser itself notes that the shop answered “not found”.
    expect(house.complaints().every((complaint) => complaint.includes('404'))).toBe(true);
  });

  it('takes a file in: maps its headings, shows what would change, has lines mended, and then all or nothing', async () => {
    await visit('/orders/import');
    await page.getByLabel('Where it comes from').fill('the fair');
    await page.getByLabel('Choose a file').setInputFiles({
      name: 'fair.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(
        [
          'Ref;Who;Howmany;Due;Set',
          `F-1;Ilomin Coppercroft;2;2027-03-15;${SET}`,
          `F-2;Delvo Quarrelbeck;1;2027-03-15;Medow six, 10x`,
        ].join('\n'),
      ),
    });
    const mapping = page.getByRole('table', { name: 'What its headings mean' });
    expect(await mapping.getByRole('row', { name: /Who/ }).textContent()).toContain('Ilomin Coppercroft');
    await page.getByLabel('What “Ref” means').selectOption('order');
    await page.getByLabel('What “Who” means').selectOption('player');
    const wrong = page.getByRole('table', { name: 'To mend' });
    await wrong.getByText('Medow six, 10x', { exact: true }).waitFor();
    await page.getByText('Mend the one line first.').waitFor();
    expect(await barriers(page)).toEqual([]);
    await wrong.getByRole('button', { name: 'Line 3' }).click();
    const text = page.getByLabel('Text of the file');
    await page.keyboard.type(`F-2;Delvo Quarrelbeck;1;2027-03-15;${SET}`);
    expect((await text.inputValue()).split('\n')[2]).toBe(`F-2;Delvo Quarrelbeck;1;2027-03-15;${SET}`);
    expect(await orderOf('F-1')).toBeUndefined();
    await page.getByRole('button', { name: 'Look again' }).click();
    await page.getByRole('button', { name: 'Take in 2 new orders' }).click();
    await page.getByText('Taken in: 2 new, 0 changed.').waitFor();
    expect((await orderOf('F-1'))?.body).toMatchObject({
      player: 'Ilomin Coppercroft',
      imported: { source: 'the fair' },
      lines: [{ quantity: 2, setName: SET }],
    });
    expect((await orderOf('F-2'))?.body.player).toBe('Delvo Quarrelbeck');
  });

  it('remembers what the headings of a source mean, and takes the same file again for nothing new', async () => {
    await visit('/orders/import');
    await page.getByLabel('Where it comes from').fill('the fair');
    await page
      .getByLabel('Text of the file')
      .fill(`Ref;Who;Howmany;Due;Set\nF-1;Ilomin Coppercroft;2;2027-03-15;${SET}`);
    await page.getByRole('button', { name: 'Show what would change' }).click();
    await page.getByText('Nothing in it is new: every order stands as the file has it.').waitFor();
    expect(await page.getByLabel('What “Ref” means').inputValue()).toBe('order');
  });

  it('fits every screen', async () => {
    for (const path of ['/orders', '/orders/new', '/orders/import']) {
      await visit(path);
      for (const [width, height] of [
        [1440, 900],
        [1024, 768],
        [820, 1180],
      ] as const) {
        await page.setViewportSize({ width, height });
        expect(await widerBy(page), `${path} ${width}`).toBe(0);
      }
      await page.emulateMedia({ colorScheme: 'dark' });
      expect(await barriers(page), path).toEqual([]);
      await page.context().close();
    }
    await visit('/orders');
  });

  it('is not for those who wind', async () => {
    page = await house.visit('/orders', { as: 'winder' });
    await page.getByText('“order.read”').waitFor();
  });
});
