import { type AtcsScale, logAtcsIndex } from './atcs.js';
import { afterJob, emptyLane, type LaneEnd } from './lane.js';
import type { Lanes, ShopFloor } from './shop-floor.js';

/** The rule's settings for one pass. */
export interface PassSettings {
  readonly scale: AtcsScale;
  /** Whose lane the chosen lot joins: the machine that came free, or the one that would finish it soonest. */
  readonly joins: 'free-machine' | 'soonest-end';
}

/** What the rule reads of every job, worked out once for all passes. */
export interface RuleJobs {
  readonly weight: Float64Array;
  readonly dueMinute: Float64Array;
  readonly releaseMinute: Float64Array;
}

// Rounding may read a release back a hair too late; a machine must not wait for that hair for ever.
const HAIR = 1e-9;

/**
 * One pass of list scheduling: the machine that comes free first picks, of the lots it can make and that
 * are released, the one with the largest index. Work under way stands at the head of its lane.
 */
export function dispatchPass(floor: ShopFloor, rule: RuleJobs, settings: PassSettings): Lanes {
  const lanes = floor.frozen.map((lane) => [...lane]);
  const ends = lanes.map((lane, machine) =>
    lane.reduce((end, job) => afterJob(floor, machine, end, job), emptyLane(floor, machine)),
  );
  const waiting = [...floor.problem.jobs.keys()].filter((job) => !floor.problem.jobs[job]!.frozen);
  const working = new Set(lanes.keys());

  while (waiting.length > 0) {
    const machine = firstFree(floor, ends, working);
    const nowMinute = floor.calendars[machine]!.startOf(ends[machine]!.worked);
    const choice = mostPressing(floor, rule, { settings, machine, end: ends[machine]!, nowMinute, waiting });
    if (choice.kind === 'wait') {
      const worked = floor.calendars[machine]!.workedBefore(choice.untilMinute);
      ends[machine] = { ...ends[machine]!, worked };
    } else if (choice.kind === 'nothing-left') {
      working.delete(machine);
    } else {
      const job = waiting.splice(choice.place, 1)[0]!;
      const joined = settings.joins === 'free-machine' ? machine : soonestEnd(floor, ends, job, machine);
      lanes[joined]!.push(job);
      ends[joined] = afterJob(floor, joined, ends[joined]!, job);
    }
  }
  return lanes;
}

function firstFree(floor: ShopFloor, ends: readonly LaneEnd[], working: ReadonlySet<number>): number {
  let first = -1;
  let earliest = Number.POSITIVE_INFINITY;
  for (const machine of working) {
    const free = floor.calendars[machine]!.startOf(ends[machine]!.worked);
    if (free < earliest) [first, earliest] = [machine, free];
  }
  return first;
}

type Choice =
  | { readonly kind: 'take'; readonly place: number }
  | { readonly kind: 'wait'; readonly untilMinute: number }
  | { readonly kind: 'nothing-left' };

interface Moment {
  readonly settings: PassSettings;
  readonly machine: number;
  readonly end: LaneEnd;
  readonly nowMinute: number;
  readonly waiting: readonly number[];
}

/** The place among the waiting of the lot to take now. Of equal indices the earlier place wins. */
function mostPressing(floor: ShopFloor, rule: RuleJobs, moment: Moment): Choice {
  const { machine, nowMinute, waiting, end, settings } = moment;
  const process = floor.processMinutes[machine]!;
  const { jobClass } = floor.changes;
  const setUpTo = floor.changes.minutesFrom(machine, end.setUp);
  let place = -1;
  let largest = Number.NEGATIVE_INFINITY;
  let nextRelease = Number.POSITIVE_INFINITY;
  for (let i = 0; i < waiting.length; i++) {
    const job = waiting[i]!;
    const processMinutes = process[job]!;
    if (Number.isNaN(processMinutes)) continue;
    const releaseMinute = rule.releaseMinute[job]!;
    if (releaseMinute > nowMinute + HAIR) {
      nextRelease = Math.min(nextRelease, releaseMinute);
      continue;
    }
    const setUpMinutes = setUpTo(jobClass[job]!);
    const index = logAtcsIndex(
      { weight: rule.weight[job]!, dueMinute: rule.dueMinute[job]!, processMinutes, nowMinute, setUpMinutes },
      settings.scale,
    );
    if (index > largest || place < 0) [place, largest] = [i, index];
  }
  if (place >= 0) return { kind: 'take', place };
  return nextRelease < Number.POSITIVE_INFINITY
    ? { kind: 'wait', untilMinute: nextRelease }
    : { kind: 'nothing-left' };
}

function soonestEnd(floor: ShopFloor, ends: readonly LaneEnd[], job: number, asking: number): number {
  const endOn = (machine: number): number =>
    floor.calendars[machine]!.endOf(afterJob(floor, machine, ends[machine]!, job).worked);
  let [best, earliest] = [asking, endOn(asking)];
  for (const machine of floor.able[job]!) {
    const end = endOn(machine);
    if (end < earliest) [best, earliest] = [machine, end];
  }
  return best;
}
