import type { CalendarDate } from '../../core/foundation/index.js';
import { PLAN_LIFE, RUN_LIFE } from '../../core/stock/index.js';
import { abandonRun } from '../production/abandon-run.js';
import { stepRecord } from '../record-change.js';
import { refuse } from '../refusal.js';
import type { Work } from '../use-case.js';

/**
 * Takes the day's plan out of force. Its runs that nobody began are given up; those begun go on. Gives how many
 * runs the day had, so that the next ones get names of their own.
 */
export async function supersedePlans(work: Work, date: CalendarDate): Promise<number> {
  const plans = await work.tx.records.all('plan', { date });
  let runs = 0;
  for (const plan of plans) {
    const runIds = plan.body.runs.flatMap(({ runId }) => runId ?? []);
    runs += runIds.length;
    if (plan.state !== PLAN_LIFE.initial) continue;
    await stepRecord(work, 'plan', { record: plan, life: PLAN_LIFE, step: 'supersede' });
    for (const runId of runIds) await giveUp(work, runId);
  }
  return runs;
}

async function giveUp(work: Work, runId: string): Promise<void> {
  const run = await work.tx.records.get('run', runId);
  if (run?.state !== RUN_LIFE.initial) return;
  const given = { runId, expectedVersion: run.version, reason: 'another plan took the place of its own' };
  const done = await abandonRun.run(work, given);
  if (!done.ok) refuse(done.fault);
}
