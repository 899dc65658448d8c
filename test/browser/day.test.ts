import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { dateInWords, lateInWords, orderFaultWords, placementInWords } from '../../src/contract/index.js';
import type { Day } from '../../src/core/day/index.js';
import { formatMoney } from '../../src/core/units/index.js';
import { demoDay, demoShop } from '../../src/workshop/index.js';
import { describeInBrowser, expectQuiet, focusedName, type House, openHouse } from './harness.js';

describeInBrowser('the day in a browser', () => {
  let day: Day;
  let house: House;
  let page: Page;

  beforeAll(async () => {
    day = await demoDay();
    house = await openHouse({ dayOf: async () => day, shopOf: demoShop });
    page = await house.visit('/');
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const rowsOf = (table: string) => page.getByRole('table', { name: table }).locator('tbody tr');
  const seenAs = (view: 'Picture' | 'Table') => page.getByText(view, { exact: true }).click();

  it('says which day it is and that its workshop is invented', async () => {
    expect(await page.getByRole('heading', { level: 1 }).textContent()).toBe(dateInWords(day.date));
    expect(await page.getByRole('banner').textContent()).toContain('an invented workshop');
  });

  it('shows every order of the day, over as many pages as it takes', async () => {
    const count = page.getByText(`${day.orders.length} orders`, { exact: true });
    expect(await count.isVisible()).toBe(true);
    const first = rowsOf('Orders').first();
    expect(await first.textContent()).toContain(day.orders[0]?.player);
    const shown = await rowsOf('Orders').count();
    const last = Math.ceil(day.orders.length / shown);
    await page.getByRole('button', { name: `Page ${last}`, exact: true }).click();
    expect(await rowsOf('Orders').last().textContent()).toContain(day.orders.at(-1)?.orderId);
    expect((last - 1) * shown + (await rowsOf('Orders').count())).toBe(day.orders.length);
  });

  it('finds an order by any words of it', async () => {
    const wanted = day.orders[37];
    await page.getByLabel('Find').fill(`${wanted?.orderId} ${wanted?.player}`);
    await page.getByText(`1 order of ${day.orders.length}`, { exact: true }).waitFor();
    const row = rowsOf('Orders').first();
    expect(await row.textContent()).toContain(wanted?.setName);
    expect(await row.textContent()).toContain(formatMoney(wanted?.costMinor ?? 0, day.shop));
    await page.getByLabel('Find').fill('no such player');
    await page.getByText('No order is like that.').waitFor();
    await page.getByLabel('Find').fill('');
  });

  it('says of each late order how late it is and why', async () => {
    await page.getByText('Late', { exact: true }).and(page.locator('label *')).click();
    const late = day.orders.filter(({ daysLate }) => daysLate > 0);
    await page
      .getByRole('status')
      .filter({ hasText: `${late.length} order` })
      .waitFor();
    expect(late.length).toBeGreaterThan(0);
    const names = new Map(day.plan.machines.map(({ machineId, name }) => [machineId, name]));
    for (const { orderId, lateBecause } of late) {
      const row = await rowsOf('Orders').filter({ hasText: orderId }).textContent();
      if (lateBecause) expect(row).toContain(lateInWords(lateBecause, (id) => names.get(id) ?? id));
    }
    await page.getByText('All', { exact: true }).click();
  });

  it('lists the lines to mend with what is wrong and what to do', async () => {
    expect(await rowsOf('Lines to mend').count()).toBe(day.faults.length);
    for (const [at, fault] of day.faults.entries()) {
      const { what, mend } = orderFaultWords(fault);
      const row = await rowsOf('Lines to mend').nth(at).textContent();
      expect(row).toContain(what);
      expect(row).toContain(mend);
    }
  });

  it('lists the wire to pull, and costs whose parts are those of the day', async () => {
    expect(await rowsOf('Wire to pull').count()).toBe(day.wirePulls.length);
    const costs = await page.getByRole('table', { name: 'What it costs' }).textContent();
    for (const minor of Object.values(day.costs)) expect(costs).toContain(formatMoney(minor, day.shop));
  });

  it('draws every run that is under way on the day, and the whole plan when asked', async () => {
    const today = day.plan.runs.filter(
      ({ setUpFrom, to }) => setUpFrom.date <= day.date && to.date >= day.date,
    );
    const bars = page.locator('svg a[href^="/runs/"]');
    expect(await bars.count()).toBe(today.length);
    await page.getByText('Whole plan').click();
    expect(await bars.count()).toBe(day.plan.runs.length);
    await page.getByText('This day', { exact: true }).click();
  });

  it('is as good as a table: every run with why it stands where it does', async () => {
    await seenAs('Table');
    const drawn = day.plan.runs.find(({ setUpFrom }) => setUpFrom.date === day.date);
    const row = rowsOf('Runs')
      .filter({ hasText: drawn?.lotId ?? '' })
      .first();
    expect(await row.textContent()).toContain(drawn && placementInWords(drawn.reason));
    await seenAs('Picture');
  });

  it('is walked by keyboard: into the lanes, from run to run, to a set-up sheet and back to its title', async () => {
    const inLanes = async () => (await focusedName(page)).startsWith('lot-');
    await page.getByText('Skip to the page').focus();
    for (let presses = 0; presses < 30 && !(await inLanes()); presses++) await page.keyboard.press('Tab');
    const [machine] = day.plan.machines;
    const lane = day.plan.runs.filter(({ machineId }) => machineId === machine?.machineId);
    expect(await focusedName(page)).toMatch(new RegExp(`^${lane[0]?.lotId}: `));
    await page.keyboard.press('ArrowRight');
    expect(await focusedName(page)).toMatch(new RegExp(`^${lane[1]?.lotId}: `));
    expect(await page.getByTestId('run-panel').textContent()).toContain(
      lane[1] && placementInWords(lane[1].reason),
    );
    await page.keyboard.press('ArrowDown');
    const below = await focusedName(page);
    await page.keyboard.press('Enter');
    await page.getByRole('heading', { name: 'Before your hands go near the machine' }).waitFor();
    expect(page.url()).toBe(`${house.url}runs/${below.split(':')[0]}`);
    expect(await focusedName(page)).toBe(await page.getByRole('heading', { level: 1 }).textContent());
    await page.goBack();
    await page.getByRole('heading', { name: 'Plan' }).waitFor();
  });
});
