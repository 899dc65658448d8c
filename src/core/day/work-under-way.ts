import type { PlanJob } from '../planning/index.js';
import { changeOver, type Machine, type SetUpTraits, traitsOf } from '../winding/index.js';
import { inOrderOfEnd, minutesLeft, type RunUnderWay } from './run-under-way.js';
import type { Shop } from './shop.js';

/** What machines have to end before anything new begins on them, as the planner sees it. */
export interface WorkUnderWay {
  /** At the head of their machines' lanes. A job bears the run's id. */
  readonly jobs: readonly PlanJob[];
  /** Ids of runs that are ended before the plan begins. */
  readonly over: ReadonlySet<string>;
  /** What a machine is set up for when the plan begins; left out where nothing stands on it. */
  readonly setUpAtStart: (machineId: string) => SetUpTraits | undefined;
}

export interface WorkUnderWayTask {
  readonly shop: Shop;
  readonly runs: readonly RunUnderWay[];
  /** Working minutes of a machine between now and the start of the plan. */
  readonly minutesBefore: (machine: Machine) => number;
  /** Minute of the plan before which nothing of it goes on. */
  readonly nowMinute: number;
}

/** Runs under way as jobs that stay where they are, less what will be done of them before the plan begins. */
export function workUnderWay(task: WorkUnderWayTask): WorkUnderWay {
  const lanes = task.shop.machines.map((machine) => [machine.id, laneLeft(task, machine)] as const);
  const byMachine = new Map(lanes);
  return {
    jobs: lanes.flatMap(([, { jobs }]) => jobs),
    over: new Set(lanes.flatMap(([, { over }]) => over)),
    setUpAtStart: (machineId) => byMachine.get(machineId)?.setUp,
  };
}

interface LaneLeft {
  readonly jobs: readonly PlanJob[];
  readonly over: readonly string[];
  readonly setUp: SetUpTraits | undefined;
}

function laneLeft({ shop, runs, minutesBefore, nowMinute }: WorkUnderWayTask, machine: Machine): LaneLeft {
  const lane = inOrderOfEnd(runs.filter(({ machineId }) => machineId === machine.id));
  const jobs: PlanJob[] = [];
  const over: string[] = [];
  let setUp = standsOn(shop, machine, lane[0]);
  let minutes = minutesBefore(machine);
  for (const run of lane) {
    const traits = traitsOf(run.recipe, run.spec.lengthM);
    const change = jobs.length > 0 ? 0 : changeOver(machine, setUp, traits).minutes;
    let left = minutesLeft(run, shop);
    if (jobs.length === 0 && minutes >= change + left) {
      minutes -= change + left;
      over.push(run.id);
      setUp = traits;
      continue;
    }
    // What is begun before the plan is set up then; a set-up that would not be done is counted whole.
    if (minutes > change) {
      left -= minutes - change;
      setUp = traits;
    }
    minutes = 0;
    const eligible = [{ machineId: machine.id, processMinutes: left }];
    const frozen = { machineId: machine.id, order: jobs.length };
    jobs.push({ id: run.id, traits, eligible, releaseMinute: nowMinute, weight: 0, frozen });
  }
  return { jobs, over, setUp };
}

/** What runs stands on the machine; else what was set up on it last. */
function standsOn(shop: Shop, machine: Machine, first: RunUnderWay | undefined): SetUpTraits | undefined {
  if (first?.state === 'running') return traitsOf(first.recipe, first.spec.lengthM);
  const now = shop.setUpNow.find(({ machineId }) => machineId === machine.id);
  const recipe = now && shop.recipes.find(({ id }) => id === now.recipeId);
  return recipe ? traitsOf(recipe, now.lengthM) : undefined;
}
