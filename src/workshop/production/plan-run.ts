import { planRun as definition } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { stringKey } from '../../core/sets/index.js';
import { RUN_LIFE } from '../../core/stock/index.js';
import { needRecord } from '../record-change.js';
import { useCase } from '../use-case.js';
import { runWork } from './run-work.js';

/** Plans a run, once the core says that the machine can make it. */
export const planRun = useCase(definition, async ({ tx, now }, input) => {
  const { id, name, recipeId, machineId, spec, quantity, planId } = input;
  const { recipe } = await runWork(tx, input);
  if (planId !== undefined) await needRecord(tx, 'plan', planId);
  const body = {
    name,
    recipeId,
    recipeVersion: recipe.version,
    machineId,
    spec,
    stringKey: stringKey(spec),
    quantity,
    spoolIds: [],
    goodCount: 0,
    scrapCount: 0,
    ...(planId === undefined ? {} : { planId }),
    note: '',
  };
  return succeed(await tx.records.insert('run', { id, state: RUN_LIFE.initial, body, at: now }));
});
