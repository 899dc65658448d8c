import { type BodyOf, recordRunSettings as definition } from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { machineKnob, pullAtDial } from '../../core/winding/index.js';
import { needRecord, recordAsSeen } from '../record-change.js';
import { asMachine } from '../shop/shop-parts.js';
import type { RunRecord } from '../stock/live-runs.js';
import { useCase, type Work } from '../use-case.js';
import { recipeOfRun } from './recipe-of-run.js';
import { refuseNotLive } from './refuse-not-live.js';

type Settings = NonNullable<BodyOf<'run'>['settings']>;
type SetTo = Pick<Settings, 'coreTensionN' | 'layers'>;

/** Writes down what the machine is set to; the last word stands. A number of its scale is read in newtons too. */
export const recordRunSettings = useCase(definition, async (work, input) => {
  const { runId, expectedVersion, ...setTo } = input;
  const run = await recordAsSeen(work.tx, 'run', { id: runId, expectedVersion });
  refuseNotLive(run);
  const recipe = await recipeOfRun(work.tx, run);
  const { construction } = recipe.body;
  const layers = construction.kind === 'wound' ? construction.layers.length : 0;
  if (setTo.layers.length > layers) return fail({ code: 'run.no-such-layer', layers });
  const { state, version } = run;
  const settings = await settingsOf(work, run, setTo, 'written-down');
  const body = { ...run.body, settings };
  return succeed(
    await work.tx.records.update('run', { id: run.id, expectedVersion: version, state, body, at: work.now }),
  );
});

/**
 * What a run that is closed was set to: as it was written down; else what its last trial string was wound at, where that
 * is a pull. Nothing where nobody said.
 */
export async function settingsAtClose(work: Work, run: RunRecord): Promise<{ readonly settings?: Settings }> {
  if (run.body.settings) return { settings: run.body.settings };
  const trials = await work.tx.readings.trialStrings(run.id);
  const setting = trials.findLast((trial) => trial.setting !== undefined)?.setting;
  if (setting === undefined) return {};
  const machine = asMachine(await needRecord(work.tx, 'machine', run.body.machineId));
  const { construction } = (await recipeOfRun(work.tx, run)).body;
  if (machine.kind !== 'winder' || construction.kind !== 'wound') return {};
  const outermost =
    machineKnob(machine, construction).unit === 'N' ? { tensionN: setting } : { dial: setting };
  const layers = [...construction.layers.slice(1).map(() => ({})), outermost];
  return { settings: await settingsOf(work, run, { layers }, 'dialled-in') };
}

async function settingsOf(
  { tx, now, actor }: Work,
  { body: { machineId, spoolIds } }: RunRecord,
  { layers, ...core }: SetTo,
  how: Settings['how'],
): Promise<Settings> {
  const { body: machine } = await needRecord(tx, 'machine', machineId);
  const scale = machine.kind === 'winder' ? (machine.pullTable ?? []) : [];
  const spools = [];
  for (const id of spoolIds) spools.push(await needRecord(tx, 'spool', id));
  return {
    ...core,
    layers: layers.map((layer) => {
      const { dial, tensionN = dial === undefined ? undefined : pullAtDial(scale, dial) } = layer;
      return { ...layer, ...(tensionN !== undefined && tensionN > 0 ? { tensionN } : {}) };
    }),
    lots: spools.map(({ body: { wireId, lot } }) => ({ wireId, lot })),
    how,
    at: now,
    by: actor.by,
  };
}
