import { refuse } from '../refusal.js';
import type { RunRecord } from '../stock/live-runs.js';

/** Refuses what can only be done to a run that is begun and not ended. */
export function refuseNotLive({ id, state, body }: RunRecord): void {
  if (state === 'running' || state === 'paused') return;
  refuse({ code: 'run.not-live', runId: id, runName: body.name, state });
}
