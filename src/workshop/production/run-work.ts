import type { BodyOf } from '../../contract/index.js';
import type { StringSpec } from '../../core/sets/index.js';
import type { SeatModel } from '../../core/string/index.js';
import { type StringWork, stringWork } from '../../core/winding/index.js';
import type { ReadTransaction } from '../../store/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { type MachineRecord, machineInCore, type RecipeRecord, recipeInCore } from './recipe-in-core.js';

type Tx = Pick<ReadTransaction, 'records'>;

/** What a run needs to know of how and where it is made. */
export interface RunWork {
  readonly recipe: RecipeRecord;
  readonly machine: MachineRecord;
  /** What one string takes. */
  readonly work: StringWork;
}

/** What the strings of a run take, by the core. Refuses a recipe that is retired or makes other strings, and a machine that cannot make them. */
export async function runWork(
  tx: Tx,
  run: Pick<BodyOf<'run'>, 'recipeId' | 'machineId' | 'spec'>,
): Promise<RunWork> {
  const recipe = await needRecord(tx, 'recipe', run.recipeId);
  if (recipe.state === 'retired') {
    refuse({ code: 'run.recipe-retired', recipeId: recipe.id, recipeName: recipe.body.name });
  }
  refuseOtherStrings(recipe, run.spec);
  const machine = await needRecord(tx, 'machine', run.machineId);
  return { recipe, machine, work: await workOf(tx, { recipe, machine, spec: run.spec }) };
}

/** What one string takes on this machine, by the recipe as it is given. */
export async function workOf(
  tx: Tx,
  made: { readonly recipe: RecipeRecord; readonly machine: MachineRecord; readonly spec: StringSpec },
): Promise<StringWork> {
  const { recipe, machine, spec } = made;
  const seat = await settledSeat(tx);
  const work = stringWork({
    machine: machineInCore(machine),
    recipe: recipeInCore(recipe),
    lengthM: spec.lengthM,
    end: spec.end,
    ...(seat ? { seat } : {}),
  });
  if (work.ok) return work.value;
  return refuse({
    code: 'run.machine-unable',
    machineId: machine.id,
    machineName: machine.body.name,
    recipeName: recipe.body.name,
    reasons: work.fault,
  });
}

function refuseOtherStrings({ id, body }: RecipeRecord, spec: StringSpec): void {
  const { gaugeThou, material, construction } = body;
  const same = spec.gaugeThou === gaugeThou && spec.material === material && spec.kind === construction.kind;
  if (!same)
    refuse({ code: 'run.recipe-makes-others', recipeId: id, recipeName: body.name, gaugeThou, material });
}

/** How wrap sits on core in this shop, once it is settled. */
const settledSeat = async ({ records }: Tx): Promise<SeatModel | undefined> =>
  (await records.all('settings'))[0]?.body.seat;
