import { startRun as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { RUN_LIFE } from '../../core/stock/index.js';
import { recordAsSeen, stepRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { refuseBusy } from './free-machine.js';
import { mount } from './mount.js';
import { runWork } from './run-work.js';
import { spoolsForRecipe } from './spools-for-recipe.js';

/** Mounts the spools and starts a run, by the recipe as it stands now. */
export const startRun = useCase(definition, async (work, input) => {
  const { tx, actor, now } = work;
  const run = await recordAsSeen(tx, 'run', { ...input, id: input.runId });
  const { recipe, machine } = await runWork(tx, run.body);
  await refuseBusy(tx, { machine, run });
  const spools = [];
  for (const spoolId of input.spoolIds) spools.push(await mount(work, spoolId, machine.id));
  const body = {
    ...run.body,
    recipeVersion: recipe.version,
    spoolIds: await spoolsForRecipe(tx, recipe, spools),
    startedAt: now,
    ...(actor.personId === undefined ? {} : { winderId: actor.personId }),
  };
  return succeed(await stepRecord(work, 'run', { record: run, life: RUN_LIFE, step: 'start', body }));
});
