import {
  judgeTrialString as judgeDefinition,
  recordTrialString as recordDefinition,
} from '../../contract/index.js';
import { fail, succeed } from '../../core/foundation/index.js';
import { needRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import { useCase } from '../use-case.js';
import { refuseNotLive } from './refuse-not-live.js';

/** Writes down a string that was wound to dial the machine in. */
export const recordTrialString = useCase(recordDefinition, async ({ tx, actor, now }, input) => {
  const run = await needRecord(tx, 'run', input.runId);
  refuseNotLive(run);
  const machine = await needRecord(tx, 'machine', run.body.machineId);
  const { name, positions } = machine.body;
  if (input.position > positions) {
    return fail({ code: 'run.no-such-position', machineName: name, position: input.position, positions });
  }
  const row = { ...input, verdict: 'open', at: now, by: actor.by } as const;
  await tx.readings.addTrialString(row);
  return succeed(row);
});

/** Calls a trial string good or scrap; the last word stands. While the run goes on, the word can be taken back. */
export const judgeTrialString = useCase(judgeDefinition, async ({ tx }, input) => {
  const { trialStringId: id, runId, verdict } = input;
  if (verdict === 'open') refuseNotLive(await needRecord(tx, 'run', runId));
  const rows = await tx.readings.trialStrings(runId);
  const row = rows.find((each) => each.id === id);
  if (!row) return refuse({ code: 'record.missing', kind: 'trial-string', id });
  await tx.readings.setVerdict(id, verdict);
  return succeed({ ...row, verdict });
});
