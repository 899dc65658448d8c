import type { Page } from 'playwright-core';
import type { BodyOf, Client, StoredRecord } from '../../src/contract/index.js';
import { wantedDiameterM } from '../../src/core/winding/index.js';
import { answered } from './harness.js';

export type Run = StoredRecord<BodyOf<'run'>>;

export const panel = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

/** A machine's next planned run, the wire that goes on, and what its strings are to measure. */
export async function nextRun(machineName: string, owner: Client) {
  const { items: machines } = await answered(owner.list('machine', {}));
  const machine = machines.find(({ body }) => body.name.startsWith(machineName));
  if (!machine) throw new Error(`no machine ${machineName}`);
  const { items: runs } = await answered(
    owner.list('run', { machineId: machine.id, state: 'planned', limit: 500 }),
  );
  const { shop, ids } = await answered(owner.read('shop-view', {}));
  const winder = shop.machines.find(({ id }) => ids.machines[id] === machine.id);
  for (const run of runs) {
    const recipe = shop.recipes.find(({ id }) => ids.recipes[id] === run.body.recipeId);
    if (recipe?.construction.kind !== 'wound' || winder?.kind !== 'winder') continue;
    const wires = [...new Set([recipe.coreWireId, ...recipe.wrapWireIds])];
    const spools = await Promise.all(wires.map((wire) => spoolOf(ids.wires[wire]!, owner)));
    if (!spools.every((spool) => spool !== undefined)) continue;
    const { seat } = shop;
    const work = { machine: winder, recipe, quantity: run.body.quantity, ...(seat ? { seat } : {}) };
    return { machine, winder, recipe, run, spools, wantedM: wantedDiameterM(work) };
  }
  throw new Error(`nothing to wind on ${machineName}`);
}

async function spoolOf(wireId: string, owner: Client) {
  return (await answered(owner.list('spool', { wireId, state: 'on-shelf', limit: 1 }))).items[0];
}

/** A new string at a position, and all readings of it: two at each of three places. */
export async function wind(page: Page, button: string, placesM: readonly number[]): Promise<void> {
  await page.getByRole('button', { name: button }).click();
  await page.getByText('0 of 7 readings').waitFor();
  await readings(page, placesM);
}

export async function readings(page: Page, placesM: readonly number[]): Promise<void> {
  await diameters(page, placesM);
  await page.getByText('Weight of the whole string').waitFor();
  await page.keyboard.press('Enter');
  await page.getByText('Weight of the whole string').waitFor({ state: 'detached' });
}

/** A second look at a string that was doubted: all places once more. */
export async function lookAgain(page: Page, placesM: readonly number[]): Promise<void> {
  const asked = page.getByText('0 of 6 readings');
  await asked.waitFor();
  await diameters(page, placesM);
}

async function diameters(page: Page, placesM: readonly number[]): Promise<void> {
  const read = placesM.flatMap((diameterM) => [diameterM - 4e-7, diameterM + 4e-7]);
  for (const [at, diameterM] of read.entries()) {
    await typeDiameter(page, diameterM);
    if (at + 1 < read.length) await page.getByText(new RegExp(`\\b${at + 1} of [67] readings`)).waitFor();
  }
}

export async function typeDiameter(page: Page, diameterM: number): Promise<void> {
  await page.keyboard.type(`${(diameterM * 1000).toFixed(5)} mm`);
  await page.keyboard.press('Enter');
}
