import { closeRun as definition, type InputOf } from '../../contract/index.js';
import { succeed } from '../../core/foundation/index.js';
import { makeStrings, RUN_LIFE, STRING_LOT_LIFE } from '../../core/stock/index.js';
import { needRecord, recordAsSeen, stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { RunRecord } from '../stock/live-runs.js';
import { post } from '../stock/post.js';
import { type LotRecord, refuseOtherKind } from '../stock/strings-in-bin.js';
import { useCase, type Work } from '../use-case.js';
import { recipeOfRun } from './recipe-of-run.js';
import { refuseNotLive } from './refuse-not-live.js';
import { settingsAtClose } from './run-settings.js';
import { workOf } from './run-work.js';
import { spoolsAtEnd, takenOffBefore } from './spools-at-end.js';
import { takeOff, type WireUsed } from './take-off.js';
import { type SpoolTaken, wireTaken } from './wire-taken.js';

type Closing = InputOf<typeof definition>;

/**
 * Ends a run: its good strings lie in the bin as a lot in check, its scrap is scrap by reason, and its wire is
 * off the spools: by weight where they were weighed, by the recipe where not, and the answer says which.
 */
export const closeRun = useCase(definition, async (work, input) => {
  const { tx, now } = work;
  const run = await recordAsSeen(tx, 'run', { ...input, id: input.runId });
  refuseNotLive(run);
  const bin = await needRecord(tx, 'bin', input.binId);
  refuseOtherKind(bin, run.body.stringKey);

  const settled = await settingsAtClose(work, run);
  const wire: WireUsed[] = [];
  for (const taken of await takenAtClose(work, run, input)) wire.push(await takeOff(work, run, taken, input));
  const lot = input.good > 0 ? await newLot(work, run, input) : undefined;
  const string = { stringKey: run.body.stringKey, lotId: lot?.id ?? '' };
  const { binId, good, scrap } = input;
  await post(work, makeStrings({ string, runId: run.id, binId, good, scrap }));

  const body = {
    ...run.body,
    ...settled,
    spoolIds: [],
    ...(lot ? { lotId: lot.id } : {}),
    goodCount: good,
    scrapCount: countOf(scrap),
    closedAt: now,
  };
  const closed = await stepRecord(work, 'run', { record: run, life: RUN_LIFE, step: 'close', body });
  return succeed({ run: closed, ...(lot ? { lot } : {}), wire });
});

async function takenAtClose(
  { tx, now }: Work,
  run: RunRecord,
  { spools: weighings, good, scrap }: Closing,
): Promise<readonly SpoolTaken[]> {
  const recipe = await recipeOfRun(tx, run);
  const machine = await needRecord(tx, 'machine', run.body.machineId);
  const { wire: perString } = await workOf(tx, { recipe, machine, spec: run.body.spec });
  const taken = wireTaken({
    spools: await spoolsAtEnd(tx, run, { weighings, at: now }),
    perString,
    good,
    scrap: countOf(scrap),
    takenBefore: await takenOffBefore(tx, run),
  });
  if (taken.ok) return taken.value;
  const wire = await needRecord(tx, 'wire', taken.fault.wireId);
  return refuse({ ...taken.fault, runName: run.body.name, wireName: wire.body.name });
}

async function newLot({ tx, now }: Work, run: RunRecord, input: Closing): Promise<LotRecord> {
  const { spec, stringKey, spoolIds, takenOff = [] } = run.body;
  const body = {
    name: input.lotName,
    runId: run.id,
    spec,
    stringKey,
    made: input.good,
    spoolIds: [...new Set([...takenOff.map(({ spoolId }) => spoolId), ...spoolIds])],
  };
  return tx.records.insert('string-lot', { id: input.lotId, state: STRING_LOT_LIFE.initial, body, at: now });
}

const countOf = (scrap: Closing['scrap']): number => scrap.reduce((sum, { count }) => sum + count, 0);
