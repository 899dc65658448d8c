import type { InputOf } from '../../contract/index.js';
import type { Shop } from '../../core/day/index.js';
import { grouped } from '../../core/foundation/index.js';
import { stringKey } from '../../core/sets/index.js';
import type { SeatModel } from '../../core/string/index.js';
import { seatByMachine } from '../calibration/seat-by-machine.js';
import { abandonRun } from '../production/abandon-run.js';
import { planRun } from '../production/plan-run.js';
import { saveRecipe } from '../production/save-recipe.js';
import { startRun } from '../production/start-run.js';
import { stepRecipe } from '../production/step-recipe.js';
import { receiveSpool } from '../stock/receive-spool.js';
import type { AnyUseCase } from '../use-case.js';
import { enterLot } from './enter-lot.js';
import {
  saveBin,
  saveInstrument,
  saveMachine,
  saveSet,
  saveSettings,
  saveTuning,
  saveWire,
} from './save-shop-records.js';

/** One use case to ask, with its input. */
export interface Step {
  readonly useCase: AnyUseCase;
  readonly input: unknown;
}

/** Why strings and set-ups of a shop file are there: no run of the records tells. */
const REASON = 'stood so when the records began';

/**
 * Everything that a shop (as a file has it) is made of, as use cases in the order in which they can be asked:
 * taken into a store, `shopView` shows the same shop. A spool's own weight is not in the file: it goes in as
 * none, so that what the file calls net is what lies on the scale.
 */
export function shopRecords(shop: Shop, newId: () => string): readonly Step[] {
  const ids = {
    wire: idsOf(shop.wires, newId),
    machine: idsOf(shop.machines, newId),
    recipe: idsOf(shop.recipes, newId),
    bin: idsOf(shop.bins, newId),
    spool: idsOf(shop.spools, newId),
  };
  const { name, invented, rules, rates, seat } = shop;
  const plainly = { rules: { ...rules, workingDays: [...rules.workingDays] }, rates };
  return [
    step(saveSettings, {
      id: newId(),
      body: { name, invented, ...plainly, ...(seat ? { seat: seatInRecords(seat, ids) } : {}) },
    }),
    ...shop.wires.map(({ id, ...wire }) => step(saveWire, { id: ids.wire(id), body: { name: id, ...wire } })),
    ...shop.machines.map(({ id, changeLearned: _, ...machine }) =>
      step(saveMachine, {
        id: ids.machine(id),
        body: machine as InputOf<typeof saveMachine.definition>['body'],
      }),
    ),
    ...shop.recipes.flatMap((recipe) => recipeSteps(recipe, ids)),
    ...shop.sets.map((set) =>
      step(saveSet, { id: newId(), body: { name: set.name, strings: [...set.strings] } }),
    ),
    ...shop.instruments.map((instrument) =>
      step(saveInstrument, {
        id: newId(),
        body: instrument as InputOf<typeof saveInstrument.definition>['body'],
      }),
    ),
    ...shop.tunings.map(({ name: called, tuning: { pitches, referenceHz } }) =>
      step(saveTuning, { id: newId(), body: { name: called, pitches: [...pitches], referenceHz } }),
    ),
    ...shop.bins.map((bin) => step(saveBin, { id: ids.bin(bin.id), body: binBody(bin, shop.strings) })),
    ...shop.spools.flatMap((spool) => spoolStep(spool, ids)),
    ...lotSteps(shop, ids, newId),
    ...shop.setUpNow.flatMap((now) => setUpSteps(now, shop, ids, newId)),
  ];
}

type Ids = Readonly<Record<'wire' | 'machine' | 'recipe' | 'bin' | 'spool', (name: string) => string>>;

const step = <Which extends AnyUseCase>(useCase: Which, input: InputOf<Which['definition']>): Step => ({
  useCase,
  input,
});

/** New ids for things that the file calls by name. */
function idsOf(things: readonly { readonly id: string }[], newId: () => string): (name: string) => string {
  const known = new Map(things.map(({ id }) => [id, newId()]));
  return (name) => known.get(name) ?? newId();
}

const seatInRecords = (seat: SeatModel, ids: Ids) =>
  seatByMachine(seat, ids.machine) as NonNullable<InputOf<typeof saveSettings.definition>['body']['seat']>;

function recipeSteps(recipe: Shop['recipes'][number], ids: Ids): readonly Step[] {
  const id = ids.recipe(recipe.id);
  const { gaugeThou, material, construction } = recipe;
  const body = {
    name: recipe.id,
    gaugeThou,
    material,
    construction: construction as InputOf<typeof saveRecipe.definition>['body']['construction'],
    coreWireId: ids.wire(recipe.coreWireId),
    wrapWireIds: recipe.wrapWireIds.map(ids.wire),
    note: '',
  };
  if (recipe.state === 'predicted') return [step(saveRecipe, { id, body })];
  return [
    step(saveRecipe, { id, body }),
    step(stepRecipe, { id, expectedVersion: 1, step: 'try', note: REASON }),
    step(stepRecipe, { id, expectedVersion: 2, step: 'calibrate', note: REASON }),
  ];
}

/** A bin of a file is for the kind that lies in it; where several lie, for none. */
function binBody({ id, walkOrder }: Shop['bins'][number], strings: Shop['strings']) {
  const rows = strings.filter(({ binId }) => binId === id);
  const keys = [...new Set(rows.map(({ spec }) => stringKey(spec)))];
  const only = keys.length === 1 ? keys[0] : undefined;
  const body = { name: id, walkOrder };
  if (only === undefined) return { ...body, reorderLevel: 0 };
  return { ...body, stringKey: only, reorderLevel: Math.max(...rows.map((row) => row.reorderLevel)) };
}

function spoolStep({ id, wireId, lot, netKg }: Shop['spools'][number], ids: Ids): readonly Step[] {
  if (netKg <= 0) return [];
  const spool = { id: ids.spool(id), wireId: ids.wire(wireId), name: id, lot, grossKg: netKg, tareKg: 0 };
  return [step(receiveSpool, spool)];
}

/** A lot of the records is of one kind: where a file calls several by one name, each gets its bin's beside it. */
function lotSteps({ strings }: Shop, ids: Ids, newId: () => string): readonly Step[] {
  const kindsOfLot = grouped(strings, ({ lot }) => lot);
  return strings
    .filter(({ count }) => count > 0)
    .map(({ spec, count, binId, lot }) =>
      step(enterLot, {
        id: newId(),
        name: (kindsOfLot.get(lot)?.length ?? 0) > 1 ? `${lot} / ${binId}` : lot,
        spec,
        binId: ids.bin(binId),
        counted: count,
        reason: REASON,
      }),
    );
}

/** What a machine is set up for shows from the run that was begun on it last: one that made nothing. */
function setUpSteps(
  now: Shop['setUpNow'][number],
  shop: Shop,
  ids: Ids,
  newId: () => string,
): readonly Step[] {
  const recipe = shop.recipes.find(({ id }) => id === now.recipeId);
  const spoolIds = recipe && spoolsFor(recipe, shop);
  if (!recipe || !spoolIds) return [];
  const { gaugeThou, material, construction } = recipe;
  const spec = { gaugeThou, material, kind: construction.kind, end: 'ball', lengthM: now.lengthM } as const;
  const runId = newId();
  return [
    step(planRun, {
      id: runId,
      name: `${now.machineId}: ${REASON}`,
      recipeId: ids.recipe(now.recipeId),
      machineId: ids.machine(now.machineId),
      spec,
      quantity: 1,
    }),
    step(startRun, { runId, expectedVersion: 1, spoolIds: spoolIds.map(ids.spool) }),
    step(abandonRun, { runId, expectedVersion: 2, reason: REASON }),
  ];
}

/** One spool of each wire of a recipe; nothing where one is not on hand. */
function spoolsFor(
  { coreWireId, wrapWireIds }: Shop['recipes'][number],
  { spools }: Shop,
): readonly string[] | undefined {
  const wires = [...new Set([coreWireId, ...wrapWireIds])];
  const found = wires.flatMap((wire) => {
    const spool = spools.find(({ wireId, netKg }) => wireId === wire && netKg > 0);
    return spool ? [spool.id] : [];
  });
  return found.length === wires.length ? found : undefined;
}
