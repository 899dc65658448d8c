import { afterJob, emptyLane, joinScores, laneScores, timesAfter } from './lane.js';
import { placementReason } from './placement-reason.js';
import type { Plan, PlannedRun } from './plan.js';
import type { Lanes, ShopFloor } from './shop-floor.js';

/** Lanes with their times, lateness and reasons: a plan. */
export function planOfLanes(floor: ShopFloor, lanes: Lanes): Plan {
  const runs = lanes.flatMap((lane, machine) => laneRuns(floor, machine, lane));
  // A stable sort: runs that begin together stay in the machines' order.
  runs.sort((a, b) => a.setUpFromMinute - b.setUpFromMinute);
  return { runs, score: joinScores(laneScores(floor, lanes)) };
}

function laneRuns(floor: ShopFloor, machine: number, lane: readonly number[]): PlannedRun[] {
  const { jobs, machines } = floor.problem;
  const { id: machineId, changeOver, setUp } = machines[machine]!;
  let end = emptyLane(floor, machine);
  let on = setUp;
  return lane.map((number, place) => {
    const job = jobs[number]!;
    const times = timesAfter(floor, machine, end, number);
    const freeMinute = floor.calendars[machine]!.startOf(end.worked);
    const run = {
      jobId: job.id,
      machineId,
      ...times,
      scrapStrings: changeOver(on, job.traits).scrapStrings,
      lateMinutes: Math.max(0, times.toMinute - (job.dueMinute ?? Number.POSITIVE_INFINITY)),
      reason: placementReason({
        job,
        after: lane.slice(place + 1).map((other) => jobs[other]!),
        setUp: on,
        changeOver,
        waited: times.setUpFromMinute > freeMinute,
      }),
    };
    end = afterJob(floor, machine, end, number);
    on = job.traits;
    return run;
  });
}
