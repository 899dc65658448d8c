import type { RecordOf } from '../../api/use-records.js';
import { isOf, type QueuedEntry } from '../../outbox/index.js';

type Run = RecordOf<'run'>;

/**
 * A run as it will be once the shop has done what was entered here: what the winder did counts at once, line or no line. Entries
 * that the record has in it already are left out by their version.
 */
export const runAsComing = (run: Run, coming: readonly QueuedEntry[]): Run => coming.reduce(stepped, run);

function stepped(run: Run, entry: QueuedEntry): Run {
  const after = bodyAfter(run, entry);
  return after ? { ...run, ...after, version: run.version + 1 } : run;
}

function bodyAfter(run: Run, entry: QueuedEntry): Pick<Run, 'state' | 'body'> | undefined {
  const { body } = run;
  const isNext = (input: { readonly runId: string; readonly expectedVersion: number }) =>
    input.runId === run.id && input.expectedVersion >= run.version;
  if (isOf(entry, 'start-run') && isNext(entry.input))
    return { state: 'running', body: { ...body, spoolIds: entry.input.spoolIds, startedAt: entry.at } };
  if (isOf(entry, 'pause-run') && isNext(entry.input)) return { state: 'paused', body };
  if (isOf(entry, 'resume-run') && isNext(entry.input)) return { state: 'running', body };
  if (isOf(entry, 'record-run-settings') && isNext(entry.input)) {
    const { runId: _, expectedVersion: __, ...setTo } = entry.input;
    const said = { lots: [], how: 'written-down' as const, at: entry.at, by: `person/${entry.by.id}` };
    return { state: run.state, body: { ...body, settings: { ...setTo, ...said } } };
  }
  if (isOf(entry, 'change-spool') && isNext(entry.input)) {
    const { oldSpoolId, newSpoolId } = entry.input;
    const spoolIds = body.spoolIds.map((id) => (id === oldSpoolId ? newSpoolId : id));
    return { state: run.state, body: { ...body, spoolIds } };
  }
  if (isOf(entry, 'close-run') && isNext(entry.input)) {
    const { good, scrap, lotId } = entry.input;
    const scrapCount = scrap.reduce((sum, { count }) => sum + count, 0);
    return { state: 'closed', body: { ...body, spoolIds: [], goodCount: good, scrapCount, lotId } };
  }
  if (isOf(entry, 'abandon-run') && isNext(entry.input))
    return { state: 'abandoned', body: { ...body, spoolIds: [] } };
  return undefined;
}
