import type { SetUpTraits } from '../winding/index.js';
import type { ChangeOver, PlacementReason, PlanJob } from './plan.js';

/** What decides why a job stands where it does. */
export interface Placement {
  readonly job: PlanJob;
  /** What runs after it on the same machine, in order. */
  readonly after: readonly PlanJob[];
  /** What the machine is set up for when the job comes; left out at a cold start. */
  readonly setUp: SetUpTraits | undefined;
  readonly changeOver: ChangeOver;
  /** The machine stood free and waited for the job's release. */
  readonly waited: boolean;
}

/**
 * The first of these that is true: it is under way; the machine waited for its release; it is due no later
 * than anything behind it; it keeps parts of the set-up and so changes faster than the lot behind it that is
 * due first; no other machine can make it; the rule weighed it before that lot. A lot that fills a bin keeps
 * the set-up, has but one machine, or just fills its bin.
 */
export function placementReason({ job, after, setUp, changeOver, waited }: Placement): PlacementReason {
  if (job.frozen) return { kind: 'frozen' };
  if (waited) return { kind: 'released', releaseMinute: job.releaseMinute };

  const rival = dueFirst(after);
  const dueMinute = job.dueMinute ?? Number.POSITIVE_INFINITY;
  if (job.dueMinute !== undefined && dueMinute <= (rival?.dueMinute ?? Number.POSITIVE_INFINITY))
    return { kind: 'due-first', dueMinute };

  const keeps = keptParts(setUp, job.traits);
  const saves = !rival || changeOver(setUp, job.traits).minutes < changeOver(setUp, rival.traits).minutes;
  if (keeps.some((part) => part !== 'length') && saves) return { kind: 'same-set-up', keeps };
  if (job.eligible.length === 1) return { kind: 'only-machine' };
  return rival && job.dueMinute !== undefined
    ? { kind: 'weighed', aheadOf: rival.id }
    : { kind: 'fills-bin' };
}

/** The promised job that is due first; undefined where none is promised. */
function dueFirst(jobs: readonly PlanJob[]): PlanJob | undefined {
  let first: PlanJob | undefined;
  for (const job of jobs)
    if (job.dueMinute !== undefined && job.dueMinute < (first?.dueMinute ?? Number.POSITIVE_INFINITY))
      first = job;
  return first;
}

type Part = Extract<PlacementReason, { kind: 'same-set-up' }>['keeps'][number];

function keptParts(from: SetUpTraits | undefined, to: SetUpTraits): readonly Part[] {
  if (!from) return [];
  const sameWraps = from.wrapWireIds.join('\n') === to.wrapWireIds.join('\n');
  const wound = to.wrapWireIds.length > 0;
  const parts: readonly [Part, boolean][] = [
    ['core', from.coreWireId === to.coreWireId],
    ['wrap', wound && sameWraps],
    ['alloy', wound && from.wrapAlloy === to.wrapAlloy],
    ['length', from.lengthM === to.lengthM],
  ];
  return parts.filter(([, kept]) => kept).map(([part]) => part);
}
