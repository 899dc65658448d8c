import { stringKeyInWords } from '../../../contract/index.js';
import type { Day, DayRun, DayRunUnderWay, MachineDay } from '../../../core/day/index.js';
import { type LaneAxis, type LaneSpan, laneAxis } from './lane-axis.js';

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

/** A run that is in hand from before and keeps its machine busy. */
export interface StandingBar {
  readonly run: DayRunUnderWay;
  readonly fromAt: number;
  readonly toAt: number;
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
  readonly standing: readonly StandingBar[];
  readonly materials: readonly MaterialSpan[];
}

export interface Lanes {
  readonly axis: LaneAxis;
  readonly lanes: readonly Lane[];
}

/** The plan as one lane for each machine; undefined where nothing runs in what is asked for. */
export function lanesOf(day: Day, scope: LaneScope): Lanes | undefined {
  const isSeen = ({ setUpFrom, to }: LaneSpan): boolean =>
    scope === 'plan' || (setUpFrom.date <= day.date && to.date >= day.date);
  const runs = day.plan.runs.filter(isSeen);
  const standing = (day.underWay ?? []).filter((run) => !isOver(run) && isSeen(spanOf(run)));
  const spans = [...runs, ...standing.map(spanOf)];
  if (spans.length === 0) return undefined;
  const dates =
    scope === 'plan' ? [...new Set(spans.flatMap((run) => [run.setUpFrom.date, run.to.date]))] : [day.date];
  const axis = laneAxis(spans, dates);
  const promiseOf = promises(day);
  const lanes = day.plan.machines.map((machine): Lane => {
    const isOwn = ({ machineId }: { readonly machineId: string }) => machineId === machine.machineId;
    const bars = runs
      .filter(isOwn)
      .map((run) => barOf(run, axis, promiseOf))
      .sort((a, b) => a.setUpAt - b.setUpAt);
    return {
      machine,
      bars,
      standing: standing
        .filter(isOwn)
        .map((run) => ({ run, fromAt: axis.placeOf(run.from), toAt: axis.placeOf(run.to) })),
      materials: materialsOf(bars),
    };
  });
  return { axis, lanes };
}

const spanOf = ({ from, to }: DayRunUnderWay): LaneSpan => ({ setUpFrom: from, runFrom: from, to });

const isOver = ({ from, to }: DayRunUnderWay): boolean => from.date === to.date && from.minute === to.minute;

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

/** Minutes without a run after which one material is no longer one span. */
const APART = 15;

function materialsOf(bars: readonly LaneBar[]): readonly MaterialSpan[] {
  const spans: MaterialSpan[] = [];
  for (const { run, setUpAt, endsAt } of bars) {
    const { material } = stringKeyInWords(run.stringKey);
    const last = spans.at(-1);
    if (last?.material === material && setUpAt - last.toAt < APART)
      spans[spans.length - 1] = { ...last, toAt: endsAt };
    else spans.push({ material, fromAt: setUpAt, toAt: endsAt });
  }
  return spans;
}

/** Where along the axis the middle of a lot's run lies; undefined for one that is not drawn. */
export function middlesOf(lanes: readonly Lane[]): (lotId: string) => number | undefined {
  const middles = new Map(
    lanes.flatMap(({ bars }) => bars.map((bar) => [bar.run.lotId, (bar.setUpAt + bar.endsAt) / 2] as const)),
  );
  return (lotId) => middles.get(lotId);
}
