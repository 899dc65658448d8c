import type { Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import {
  type Client,
  cautionInWords,
  firstOffInWords,
  lateInWords,
  type PlanView,
  placementInWords,
  setPointInWords,
} from '../../src/contract/index.js';
import { arranger } from '../../src/core/day/index.js';
import { grouped } from '../../src/core/foundation/index.js';
import type { SetUpSheet } from '../../src/core/winding/index.js';
import {
  barriers,
  describeInBrowser,
  expectQuiet,
  focusedName,
  type House,
  openHouse,
  widerBy,
} from './harness.js';

describeInBrowser('the room of the plan', () => {
  let house: House;
  let owner: Client;
  let page: Page;

  beforeAll(async () => {
    house = await openHouse();
    owner = await house.client('owner');
  });
  afterAll(() => house?.close());
  afterEach(async () => {
    await page.context().close();
    expectQuiet(house);
  });

  const seen = async (date?: string): Promise<PlanView> => {
    const read = await owner.read('plan-view', date === undefined ? {} : { date });
    if (!read.ok) throw new Error(read.fault.detail);
    return read.value;
  };
  const settled = async () => {
    const { settled, machineIds } = await seen();
    if (!settled?.movable) throw new Error('the demo has a plan in force, of which runs can be moved');
    return { ...settled, movable: settled.movable, machineIds };
  };
  const bar = (lotId: string) => page.locator(`a[data-lot="${lotId}"]`);
  const panel = () => page.getByTestId('hand-panel');
  /** Lots that can be moved, machine by machine, in their order. */
  const lanes = async () => {
    const { movable } = await settled();
    return grouped(movable.lots, ({ machineId }) => machineId);
  };

  describe('looked at', () => {
    beforeEach(async () => {
      page = await house.visit('/plan', { as: 'owner' });
    });

    it('draws every run of the day as it stands, and the whole plan when asked', async () => {
      const { day, settled } = await seen();
      await page.getByText('In force').waitFor();
      const today = day.plan.runs.filter(
        ({ setUpFrom, to }) => setUpFrom.date <= day.date && to.date >= day.date,
      );
      const bars = page.locator('a[data-lot]');
      expect(await bars.count()).toBe(today.length);
      for (const [lotId, { state }] of Object.entries(settled?.runs ?? {}))
        if (await bar(lotId).count()) expect(await bar(lotId).getAttribute('data-state')).toBe(state);
      await page.getByText('Whole plan').click();
      expect(await bars.count()).toBe(day.plan.runs.length);
    });

    it('is as good as a table: every run with why it stands where it does', async () => {
      const { day } = await seen();
      await page.getByText('Table', { exact: true }).click();
      const [run] = day.plan.runs.filter(({ setUpFrom }) => setUpFrom.date === day.date);
      const row = page
        .getByRole('table', { name: 'Runs' })
        .locator('tbody tr')
        .filter({ has: page.getByRole('link', { name: run?.lotId ?? '', exact: true }) });
      expect(await row.textContent()).toContain(run && placementInWords(run.reason));
    });

    it('says of each late order why it is late', async () => {
      const { day } = await seen();
      const names = new Map(day.plan.machines.map(({ machineId, name }) => [machineId, name]));
      await page.getByText('Late', { exact: true }).and(page.locator('label *')).click();
      const late = day.orders.filter(({ daysLate }) => daysLate > 0);
      expect(late.length).toBeGreaterThan(0);
      const table = await page.getByRole('table', { name: 'Orders' }).textContent();
      for (const { orderId, lateBecause } of late) {
        expect(table).toContain(orderId);
        if (lateBecause) expect(table).toContain(lateInWords(lateBecause, (id) => names.get(id) ?? id));
      }
    });

    it('is walked by keyboard: into the lanes, from run to run, to a set-up sheet and back to its title', async () => {
      const inLanes = async () => (await focusedName(page)).startsWith('lot-');
      await page.getByText('Skip to the page').focus();
      for (let presses = 0; presses < 40 && !(await inLanes()); presses++) await page.keyboard.press('Tab');
      const first = await focusedName(page);
      await page.keyboard.press('ArrowRight');
      const second = await focusedName(page);
      expect(second).not.toBe(first);
      expect(await page.getByTestId('run-panel').textContent()).toContain(second.split(';')[0]);
      await page.keyboard.press('Enter');
      await page.getByRole('heading', { name: 'Before your hands go near the machine' }).waitFor();
      expect(page.url()).toContain(`/plan/${second.split(':')[0]}`);
      expect(await focusedName(page)).toBe(await page.getByRole('heading', { level: 1 }).textContent());
    });

    it('gives its papers as PDF', async () => {
      for (const paper of ['Day plan', 'Set-up sheets', 'Packing roll', 'Labels']) {
        const address = await page.getByRole('link', { name: `${paper} (PDF)` }).getAttribute('href');
        const answer = await page.request.get(new URL(address ?? '', house.url).href);
        expect(answer.headers()['content-type'], paper).toBe('application/pdf');
        expect((await answer.body()).subarray(0, 5).toString(), paper).toBe('%PDF-');
      }
    });

    it('has no barriers, and fits every screen, light and dark', async () => {
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.emulateMedia({ colorScheme });
        expect(await barriers(page), colorScheme).toEqual([]);
      }
      for (const [width, height] of [
        [1440, 900],
        [1024, 768],
        [820, 1180],
      ] as const) {
        await page.setViewportSize({ width, height });
        expect(await widerBy(page), `${width}`).toBe(0);
      }
    });
  });

  describe('whose runs are moved', () => {
    beforeEach(async () => {
      page = await house.visit('/plan', { as: 'owner' });
    });

    const takeUp = async (lotId: string) => {
      await bar(lotId).focus();
      await page.keyboard.press('Space');
      await panel().waitFor();
    };

    it('by keyboard: what follows is shown before, the shop works it out anew, and it can be taken back', async () => {
      const before = await settled();
      const [machineId, lane] = [...(await lanes())].find(([, lots]) => lots.length > 2)!;
      const [first, second] = lane.map(({ lotId }) => lotId);
      await takeUp(first!);
      await page.keyboard.press('ArrowRight');
      await panel().getByText(`On ${machineId}, set up`).waitFor();
      expect(await barriers(page)).toEqual([]);
      expect((await settled()).version).toBe(before.version);
      await page.keyboard.press('Space');
      await page.getByText(`${first} stands on ${machineId} now.`).waitFor();
      const moved = await settled();
      expect(moved.version).toBe(before.version + 1);
      const order = moved.movable.lots.filter((lot) => lot.machineId === machineId).map(({ lotId }) => lotId);
      expect(order.slice(0, 2)).toEqual([second, first]);
      expect(moved.movable.lots.find(({ lotId }) => lotId === first)?.reason).toEqual({ kind: 'by-hand' });
      expect(await focusedName(page)).toContain(`${first}: `);
      await page.getByRole('button', { name: 'Undo' }).click();
      await page.getByText(`${first} stands where it was.`).waitFor();
      const back = (await settled()).movable.lots.filter((lot) => lot.machineId === machineId);
      expect(back.map(({ lotId }) => lotId)).toEqual(lane.map(({ lotId }) => lotId));
    });

    /** A lot that another machine could make as well, of those that machine has more than one of. */
    const ableElsewhere = async () => {
      const shop = await owner.read('shop-view', {});
      if (!shop.ok) throw new Error(shop.fault.detail);
      const { movable } = await settled();
      const { unable } = arranger({ shop: shop.value.shop, ...movable });
      const byMachine = await lanes();
      for (const lot of movable.lots)
        for (const [to, lots] of byMachine)
          if (to !== lot.machineId && lots.length > 1 && unable(lot.lotId, to).length === 0)
            return { lot, to };
      throw new Error('the demo has machines that can make the same');
    };

    it('by pointer, to another machine, where its run is then planned', async () => {
      const { lot, to } = await ableElsewhere();
      const start = (await bar(lot.lotId).boundingBox())!;
      const row = (await bar((await lanes()).get(to)![1]!.lotId).boundingBox())!;
      await page.mouse.move(start.x + start.width / 2, start.y + 15);
      await page.mouse.down();
      await page.mouse.move(start.x + start.width / 2 + 20, start.y + 20, { steps: 3 });
      await page.mouse.move(row.x + row.width / 2, row.y + 15, { steps: 6 });
      await panel().getByText(`On ${to}, set up`).waitFor();
      await page.mouse.up();
      await page.getByText(`${lot.lotId} stands on ${to} now.`).waitFor();
      const after = await settled();
      expect(after.movable.lots.find(({ lotId }) => lotId === lot.lotId)?.machineId).toBe(to);
      const run = await owner.get('run', after.runs[lot.lotId]!.id);
      expect(run.ok && run.value.body.machineId).toBe(after.machineIds[to]);
      expect(page.url()).not.toContain(lot.lotId);
    });

    it('by buttons alone, for those who neither drag nor press keys', async () => {
      const { version } = await settled();
      const [machineId, lane] = [...(await lanes())].find(([, lots]) => lots.length > 2)!;
      const { lotId } = lane[0]!;
      await bar(lotId).hover();
      await page.getByRole('button', { name: 'Move it' }).click();
      await panel().getByRole('button', { name: 'Later' }).click();
      await panel().getByRole('button', { name: 'Put it down here' }).click();
      await page.getByText(`${lotId} stands on ${machineId} now.`).waitFor();
      expect((await settled()).version).toBe(version + 1);
    });

    it('never to a machine that cannot make them, which says why; and Esc leaves all as it was', async () => {
      const { version } = await settled();
      const { day } = await seen();
      const bench = day.plan.machines.at(-1)!.machineId;
      const [, lots] = [...(await lanes())].find(([machineId]) => machineId !== bench)!;
      await takeUp(lots[0]!.lotId);
      await panel().getByLabel('Machine').selectOption(bench);
      await panel().getByText(`${bench} does not wind. It stays where it was.`).waitFor();
      expect(await panel().getByRole('button', { name: 'Put it down here' }).isDisabled()).toBe(true);
      await bar(lots[0]!.lotId).focus();
      await page.keyboard.press('Escape');
      await panel().waitFor({ state: 'detached' });
      expect((await settled()).version).toBe(version);
    });

    it('not those that are begun', async () => {
      const { runs } = await settled();
      const begun = Object.entries(runs).find(([, { state }]) => state === 'running')![0];
      expect(await bar(begun).getAttribute('data-movable')).toBeNull();
      await bar(begun).focus();
      await page.keyboard.press('Space');
      expect(await panel().count()).toBe(0);
    });

    it('not by those who only read it', async () => {
      const winder = await house.visit('/plan', { as: 'winder' });
      await winder.locator('a[data-lot]').first().waitFor();
      expect(await winder.locator('a[data-movable]').count()).toBe(0);
      expect(await winder.getByRole('button', { name: /Settle/ }).count()).toBe(0);
      await winder.context().close();
    });
  });

  describe('of another day', () => {
    it('is a proposal until it is settled; then its runs are on the floor', async () => {
      const { date } = (await seen()).day;
      page = await house.visit('/plan', { as: 'owner' });
      await page.getByRole('link', { name: 'The day after' }).click();
      await page.getByText('Not settled').waitFor();
      const tomorrow = new URL(page.url()).searchParams.get('date')!;
      expect(tomorrow > date).toBe(true);
      await page.getByRole('button', { name: 'Settle this plan' }).click();
      await page.getByRole('button', { name: 'Settle it anew' }).waitFor();
      const plans = await owner.list('plan', { date: tomorrow });
      expect(plans.ok && plans.value.items.map(({ state }) => state)).toEqual(['in-force']);
      await page.getByRole('button', { name: 'Settle it anew' }).click();
      await page.getByRole('dialog').getByRole('button', { name: 'Settle it anew' }).click();
      await page
        .getByText(/The plan is in force: /)
        .nth(1)
        .waitFor();
      const again = await owner.list('plan', { date: tomorrow });
      expect(again.ok && again.value.items.map(({ state }) => state).sort()).toEqual([
        'in-force',
        'superseded',
      ]);
    });
  });

  describe('and its set-up sheets', () => {
    const TABLET = { as: 'winder', width: 820, height: 1180 } as const;
    /** One of each kind that the day has. */
    const sheets = async (): Promise<readonly SetUpSheet[]> => {
      const all = (await seen()).day.sheets;
      return [all.find(({ kind }) => kind === 'cut'), all.find(({ layers }) => layers.length > 0)].filter(
        (sheet) => sheet !== undefined,
      );
    };

    it('give all cautions before anything that a hand could act on, large enough to be read from a metre', async () => {
      for (const sheet of await sheets()) {
        page = await house.visit(`/plan/${sheet.lotId}`, TABLET);
        const said = (await page.locator('main').textContent()) ?? '';
        const firstSetting = said.indexOf(sheet.kind === 'cut' ? 'Plain wire:' : 'Wrap');
        for (const caution of sheet.cautions) {
          const at = said.indexOf(cautionInWords(caution).sentence);
          expect(at, caution).toBeGreaterThan(0);
          expect(at, caution).toBeLessThan(firstSetting);
        }
        for (const layer of sheet.layers) {
          const set = layer.drive.kind === 'gear' ? layer.drive.dial : layer.drive.pitchM * 1000;
          const figure = page
            .locator('dd')
            .filter({ hasText: new RegExp(`^${Number(set.toFixed(4))}( mm)?$`) });
          expect((await figure.first().boundingBox())?.height).toBeGreaterThanOrEqual(56);
          expect(said).toContain(`${Math.round(layer.spindleRpm)} rpm`);
          expect(said).toContain(setPointInWords(layer.wrapTension));
        }
        expect(await barriers(page)).toEqual([]);
        await page.context().close();
      }
      page = await house.visit('/plan', TABLET);
    });

    it('leave a box for every reading of the first strings, and nothing to touch smaller than a gloved finger', async () => {
      const [sheet] = await sheets();
      page = await house.visit(`/plan/${sheet!.lotId}`, TABLET);
      const { strings, placesFromEndM, rotationsDeg, why } = sheet!.firstOff;
      const boxes = page.getByRole('table').locator('tbody td');
      expect(await boxes.count()).toBe(strings * (placesFromEndM.length * rotationsDeg.length + 1));
      expect(await page.locator('main').textContent()).toContain(firstOffInWords(why));
      for (const link of await page.locator('main a').all())
        expect((await link.boundingBox())?.height, (await link.textContent()) ?? '').toBeGreaterThanOrEqual(
          44,
        );
    });

    it('say so where the plan has no such lot', async () => {
      page = await house.visit('/plan/lot-of-nobody', TABLET);
      expect(await page.locator('main').textContent()).toContain('The plan has no lot lot-of-nobody.');
    });
  });
});
