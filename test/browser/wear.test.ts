import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import type { MachineWearView } from '../../src/contract/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

/* The owner sees whether a machine wears, with what it rests on. */

describeInBrowser('the wear of a machine', () => {
  let house: House;

  beforeAll(async () => {
    house = await openHouse();
  });
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const wearSeen = async (): Promise<MachineWearView> => {
    const answer = await (await house.client('owner')).read('machine-wear', {});
    if (!answer.ok) throw new Error(answer.fault.code);
    return answer.value;
  };
  const gearMachine = async () => {
    const answer = await (await house.client('owner')).list('machine', { limit: 50 });
    const found = answer.ok
      ? answer.value.items.find(({ body }) => body.kind === 'winder' && body.drive === 'gear')
      : undefined;
    if (!found) throw new Error('the shop has no winder with a gearbox');
    return found;
  };

  it('cannot be told from a fortnight, and the page says so', async () => {
    const machine = await gearMachine();
    const { machines } = await wearSeen();
    expect(machines.find(({ machineId }) => machineId === machine.id)).toMatchObject({
      verdict: 'too-little',
    });
    const page = await house.visit('/shop/machines', { as: 'owner' });
    await page.getByRole('button', { name: machine.body.name }).click();
    const part = page.getByRole('region', { name: 'Wear' });
    await part.getByText(/Too few months to tell/).waitFor();
    expect(await part.getByRole('img').count()).toBe(0);
    await page.context().close();
  });

  it('that uses the tolerance up is named above the list, with its rate, its interval and its months', async () => {
    const machine = await gearMachine();
    const view = await wearSeen();
    const months = [0, 1, 2, 3, 4, 5, 6, 7].map((month) => ({
      date: `2026-${String(month + 3).padStart(2, '0')}-15`,
      offM: month * 1.2e-6,
      u: 1e-6,
      runs: 20,
    }));
    const worn = {
      machineId: machine.id,
      verdict: 'replace' as const,
      points: months,
      drift: {
        z: 3.4,
        perDayM: { value: 40e-9, from: 30e-9, to: 50e-9 },
        soFarM: 8.4e-6,
        days: 210,
        daysLeft: { value: 57, earliest: 12, latest: 130 },
      },
    };
    const page = await house.visit('/account', { as: 'owner' });
    // A fortnight holds no wear: what a year would tell is put in its place.
    await page.route('**/api/v1/machine-wear*', (route) =>
      route.fulfill({
        json: {
          ...view,
          machines: [worn],
          instruments: [{ instrument: 'micrometer 2', from: '2026-06-01', byM: 5e-6 }],
        },
      }),
    );
    await page.goto(new URL('/shop/machines', house.url).href);
    await page.getByText(`${machine.body.name}: this box needs replacing.`).waitFor();
    await page.getByRole('button', { name: machine.body.name }).click();
    const part = page.getByRole('region', { name: 'Wear' });
    await part.getByText('This box needs replacing.').waitFor();
    await part.getByText(/0\.16 thou thicker every hundred days \(from 0\.12 thou to 0\.20 thou/).waitFor();
    await part
      .getByText(/used up in 57 days; at the earliest in 12 days, at the latest in 130 days/)
      .waitFor();
    await part.getByText(/micrometer 2 reads 0\.20 thou more since about/).waitFor();
    await part.getByRole('img', { name: /in 8 months/ }).waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await barriers(page, ['color-contrast'])).toEqual([]);
    await page.setViewportSize({ width: 820, height: 1180 });
    expect(await widerBy(page)).toBe(0);
    await part.getByText('Table', { exact: true }).click();
    expect(await part.getByRole('table', { name: 'Month by month' }).getByRole('rowheader').count()).toBe(8);
    await page.context().close();
  });
});
