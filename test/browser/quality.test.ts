import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect, it } from 'vitest';
import { PLANTED_CAUSES } from '../../demo/index.js';
import type { QualityQuery, QualityView } from '../../src/contract/index.js';
import { barriers, describeInBrowser, expectQuiet, type House, openHouse, widerBy } from './harness.js';

/* The owner comes to the quality room for the first time, and walks from each sentence to what caused it. */

describeInBrowser('the quality room over the year of the invented workshop', () => {
  const { wear, badLot, micrometer } = PLANTED_CAUSES;
  let house: House;
  let view: QualityView;

  beforeAll(async () => {
    house = await openHouse({ past: 'year' });
    const answer = await (await house.client('owner')).read('quality', {});
    if (!answer.ok) throw new Error(answer.fault.code);
    view = answer.value;
  }, 240_000);
  afterAll(() => house?.close());
  afterEach(() => expectQuiet(house));

  const enter = async (): Promise<Page> => {
    const page = await house.visit('/', { as: 'owner' });
    await page.getByRole('link', { name: 'Quality', exact: true }).click();
    await page.getByRole('heading', { name: 'What the numbers say now' }).waitFor();
    return page;
  };
  const finding = (page: Page, words: RegExp) => page.getByRole('listitem').filter({ hasText: words });
  const nameOf = (names: readonly { readonly id: string; readonly name: string }[], id: string): string =>
    names.find((each) => each.id === id)!.name;
  /** The chart shows what was asked for, and no more what was there before. */
  const chartOf = async (page: Page, query: QualityQuery) => {
    const answer = await (await house.client('owner')).read('quality', query);
    if (!answer.ok) throw new Error(answer.fault.code);
    const { points } = answer.value.series;
    await page.getByRole('img', { name: `${points.length} points in the order of time` }).waitFor();
  };
  /** Opens the run at which the chart stands: its last. */
  const openLastRun = async (page: Page) => {
    await page.getByRole('button', { name: /^Open a run of the chart/ }).press('Enter');
    const run = page.getByRole('region', { name: /^Run / });
    await run.waitFor();
    return run;
  };

  it('says what was planted and nothing else, with intervals that hold the truth', () => {
    const { machines, instruments, lots } = view.findings;
    expect(machines.map(({ machineId }) => nameOf(view.choices.machines, machineId))).toEqual([
      'Old Heron (gearbox)',
    ]);
    expect(machines[0]!.perDayM.from).toBeLessThan(wear.growthMPerDay);
    expect(machines[0]!.perDayM.to).toBeGreaterThan(wear.growthMPerDay);
    expect(new Set(lots.map(({ lot }) => nameOf(view.choices.lots, lot)))).toEqual(
      new Set([`${badLot.wire}, ${badLot.lot}`]),
    );
    expect(lots.map(({ by }) => by)).toEqual(['along', 'weight']);
    expect(instruments.map(({ instrument }) => instrument)).toEqual([micrometer.instrument]);
    expect(instruments[0]!.fromM).toBeLessThan(micrometer.readsLargeM);
    expect(instruments[0]!.toM).toBeGreaterThan(micrometer.readsLargeM);
    const daysApart = Math.abs(Date.parse(instruments[0]!.since) - Date.parse(micrometer.from)) / 86_400_000;
    expect(daysApart).toBeLessThan(15);
  });

  it('leads to the worn gearbox, and from a point of its chart to the run', async () => {
    const page = await enter();
    expect(await barriers(page)).toEqual([]);
    await finding(page, /Old Heron \(gearbox\): its first strings grow thicker/)
      .getByRole('link', { name: 'Look at Old Heron (gearbox)' })
      .click();
    await chartOf(page, { machineId: view.findings.machines[0]!.machineId });
    await page.getByText(/^\d+ points, one a run.*The upright line: the level changed/).waitFor();
    const { machineId } = view.findings.machines[0]!;
    expect(new URL(page.url()).searchParams.get('machine')).toBe(machineId);
    expect(await page.getByLabel('Machine', { exact: true }).inputValue()).toBe(machineId);
    const run = await openLastRun(page);
    await run.getByText(/on Old Heron \(gearbox\), begun/).waitFor();
    await run.getByRole('rowheader', { name: 'trial string 1' }).waitFor();
    await run.getByRole('link', { name: /^Open .* with its chart and journal$/ }).click();
    await page.waitForURL('**/runs/**');
    await page.context().close();
  }, 90_000);

  it('leads to the bad lot of wire, and from a point of its chart to its spool', async () => {
    const page = await enter();
    const name = `${badLot.wire}, ${badLot.lot}`;
    await finding(page, /vary more along their length/)
      .getByRole('link', { name: `Look at ${name}` })
      .click();
    const compared = page.getByRole('region', { name: 'Compared' });
    await chartOf(page, { lot: view.findings.lots[0]!.lot, measure: 'along' });
    // The first of all lots.
    const first = compared.getByRole('row').nth(1);
    await first.filter({ hasText: name }).getByText('▲ differs').waitFor();
    const run = await openLastRun(page);
    const spools = run.getByRole('list', { name: 'Spools that went into it' });
    const bad = spools.getByRole('listitem').filter({ hasText: badLot.lot });
    await bad.getByRole('link').first().click();
    await page.waitForURL('**/wire?spool=**');
    await page.getByText(badLot.lot).first().waitFor();
    await page.context().close();
  }, 90_000);

  it('leads to the micrometer that reads large, as a picture and as a table, on every screen', async () => {
    const page = await enter();
    await finding(page, /micrometer 2 reads larger than the others since/)
      .getByRole('link', { name: 'Look at micrometer 2' })
      .click();
    await chartOf(page, { instrument: micrometer.instrument });
    await page.getByText(/The upright line: the level changed about .*2026/).waitFor();
    const run = await openLastRun(page);
    await run.getByRole('cell', { name: 'micrometer 2' }).first().waitFor();
    await page.emulateMedia({ colorScheme: 'dark' });
    expect(await barriers(page, ['color-contrast'])).toEqual([]);
    for (const [width, height] of [
      [1024, 768],
      [820, 1180],
      [720, 450],
    ] as const) {
      await page.setViewportSize({ width, height });
      expect(await widerBy(page), `wider than ${width}`).toBe(0);
    }
    const chart = page.getByRole('region', { name: 'First strings, off by' });
    await chart.getByText('Table', { exact: true }).click();
    await chart.getByRole('link').first().waitFor();
    await page.context().close();
  }, 90_000);

  it('shows winders their own runs, and nobody a list of people', async () => {
    const page = await house.visit('/quality', { as: 'winder' });
    await page.getByRole('checkbox', { name: 'Only what I wound' }).click();
    await page.waitForURL('**mine=yes**');
    const answer = await (await house.client('winder')).read('quality', { mine: 'yes' });
    if (!answer.ok) throw new Error(answer.fault.code);
    const { runs } = answer.value;
    expect(runs).toBeGreaterThan(0);
    expect(runs).toBeLessThan(view.runs);
    await page
      .getByRole('definition')
      .filter({ hasText: new RegExp(`^${runs}`) })
      .first()
      .waitFor();
    const people = await (await house.client('owner')).list('person', { limit: 50 });
    if (!people.ok) throw new Error(people.fault.code);
    const said = await page.getByRole('main').textContent();
    for (const { body } of people.value.items) expect(said).not.toContain(body.name);
    await page.context().close();
  }, 90_000);
});
