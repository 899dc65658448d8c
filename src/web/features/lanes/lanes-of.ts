import { stringKeyInWords } from '../../../contract/index.js';
import type { Day, DayRun, MachineDay } from '../../../core/day/index.js';
import { type LaneAxis, laneAxis } from './lane-axis.js';

/** How much of the plan is drawn. */
export type LaneScope = 'day' | 'plan';

/** How a run stands to what was promised: late; done on the day it is due; before it; promised to nobody. */
export type PromiseStanding = 'late' | 'due' | 'early' | 'none';

/** A run on its lane, in minutes along the axis. */
export interface LaneBar {
  readonly run: DayRun;
  readonly setUpAt: number;
  readonly runAt: number;
  readonly endsAt: number;
  /** It goes on after what is drawn. */
  readonly goesOn: boolean;
  readonly promise: PromiseStanding;
}

/** Runs of one material that follow each other on a machine. */
export interface MaterialSpan {
  readonly material: string;
  readonly fromAt: number;
  readonly toAt: number;
}

export interface Lane {
  readonly machine: MachineDay;
  readonly bars: readonly LaneBar[];
  readonly materials: readonly MaterialSpan[];
}

export interface Lanes {
  readonly axis: LaneAxis;
  readonly lanes: readonly Lane[];
}

/** The plan as one lane for each machine; undefined where nothing runs in what is asked for. */
export function lanesOf(day: Day, scope: LaneScope): Lanes | undefined {
  const runs =
    scope === 'plan'
      ? day.plan.runs
      : day.plan.runs.filter((run) => run.setUpFrom.date <= day.date && run.to.date >= day.date);
  if (runs.length === 0) return undefined;
  const dates =
    scope === 'plan' ? [...new Set(runs.flatMap((run) => [run.setUpFrom.date, run.to.date]))] : [day.date];
  const axis = laneAxis(runs, dates);
  const promiseOf = promises(day);
  const lanes = day.plan.machines.map((machine): Lane => {
    const bars = runs
      .filter(({ machineId }) => machineId === machine.machineId)
      .map((run) => barOf(run, axis, promiseOf));
    return { machine, bars, materials: materialsOf(bars) };
  });
  return { axis, lanes };
}

function barOf(run: DayRun, axis: LaneAxis, promiseOf: (run: DayRun) => PromiseStanding): LaneBar {
  const lastDate = axis.windows.at(-1)?.date;
  return {
    run,
    setUpAt: axis.placeOf(run.setUpFrom),
    runAt: axis.placeOf(run.runFrom),
    endsAt: axis.placeOf(run.to),
    goesOn: lastDate !== undefined && run.to.date > lastDate,
    promise: promiseOf(run),
  };
}

function promises(day: Day): (run: DayRun) => PromiseStanding {
  const lots = new Map(day.lots.map((lot) => [lot.id, lot]));
  return (run) => {
    if (run.lateMinutes > 0) return 'late';
    const lot = lots.get(run.lotId);
    if (!lot || lot.orderLines.length === 0) return 'none';
    return lot.due <= run.to.date ? 'due' : 'early';
  };
}

function materialsOf(bars: readonly LaneBar[]): readonly MaterialSpan[] {
  const spans: MaterialSpan[] = [];
  for (const { run, setUpAt, endsAt } of bars) {
    const { material } = stringKeyInWords(run.stringKey);
    const last = spans.at(-1);
    if (last?.material === material) spans[spans.length - 1] = { ...last, toAt: endsAt };
    else spans.push({ material, fromAt: setUpAt, toAt: endsAt });
  }
  return spans;
}
