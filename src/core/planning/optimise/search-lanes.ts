import type { Lanes } from '../shop-floor.js';
import type { SearchFloor } from './search-floor.js';

/** What a lane comes to: places in a tally of four. */
export const LATE = 0;
export const COST = 1;
export const MOVED = 2;
export const END = 3;

/** A lane otherwise filled: its first `keep` lots stay, then come those of `window`, then the old ones from `tailFrom`. */
export interface LaneChange {
  readonly machine: number;
  readonly keep: number;
  readonly window: readonly number[];
  readonly tailFrom: number;
}

/** All lanes as they stand in the search, with running sums along each, so that a change is reckoned from where it begins. */
export interface SearchLanes {
  readonly machineOf: Int32Array;
  readonly placeOf: Int32Array;
  length(machine: number): number;
  lotAt(machine: number, place: number): number;
  /** Weighted minutes late, cost of changes, lots moved against the plan in force, end of the last run. */
  tally(machine: number, what: number): number;
  /** Weighted minutes that the lot at a place is late. */
  lateAt(machine: number, place: number): number;
  /** Writes to `tried` what a change would come to; infinitely late as soon as it is later than `latest`. */
  attempt(change: LaneChange, tried: Float64Array, latest: number): void;
  apply(change: LaneChange): void;
  copy(): Lanes;
}

export function searchLanes(search: SearchFloor, start: Lanes): SearchLanes {
  const { floor, machines, lots, release, due, weight, setUpClass, stoodOn, stoodAfter } = search;
  const { minutes, costMinor, at: changeAt } = search.changes;
  const { calendars, processMinutes } = floor;
  const lanes = start.map((lane) => {
    const filled = new Int32Array(lots);
    filled.set(lane);
    return filled;
  });
  const lengths = Int32Array.from(start, (lane) => lane.length);
  const table = () => Array.from({ length: machines }, () => new Float64Array(lots + 1));
  // Sums over the lots before a place; `ends` are worked minutes.
  const ends = table();
  const lates = table();
  const costs = table();
  const moves = table();
  const machineOf = new Int32Array(lots);
  const placeOf = new Int32Array(lots);
  const state = new Float64Array(4);
  const firstClass = Int32Array.from(floor.changes.machineClass);

  // One open shift is no more than an offset.
  const opens = Float64Array.from(floor.problem.machines, ({ shifts }) =>
    shifts.length === 1 ? shifts[0]!.fromMinute : Number.NaN,
  );
  const endOf = (machine: number, worked: number): number => {
    if (worked === 0) return 0;
    const open = opens[machine]!;
    return Number.isNaN(open) ? calendars[machine]!.endOf(worked) : open + worked;
  };
  /** Adds a lot to `state`, whose END counts worked minutes, behind the lot `before` (-1: none). */
  const add = (machine: number, before: number, lot: number): void => {
    const from = before < 0 ? firstClass[machine]! : setUpClass[before]!;
    const to = setUpClass[lot]!;
    const change = changeAt(machine, from, to);
    let begin = state[END]!;
    if (release[lot]! > 0) begin = Math.max(begin, calendars[machine]!.workedBefore(release[lot]!));
    const end = begin + minutes[change]! + processMinutes[machine]![lot]!;
    state[END] = end;
    state[COST]! += costMinor[change]!;
    const stood = stoodOn[lot]!;
    if (stood !== -2 && (stood !== machine || stoodAfter[lot] !== before)) state[MOVED]! += 1;
    if (due[lot] === Number.POSITIVE_INFINITY) return;
    const late = endOf(machine, end) - due[lot]!;
    if (late > 0) state[LATE]! += weight[lot]! * late;
  };
  const load = (machine: number, place: number): void => {
    state[LATE] = lates[machine]![place]!;
    state[COST] = costs[machine]![place]!;
    state[MOVED] = moves[machine]![place]!;
    state[END] = ends[machine]![place]!;
  };
  const keepAt = (machine: number, place: number): void => {
    lates[machine]![place] = state[LATE]!;
    costs[machine]![place] = state[COST]!;
    moves[machine]![place] = state[MOVED]!;
    ends[machine]![place] = state[END]!;
  };
  /** What is behind `place` adds to the sums what it added before. */
  const addRest = (machine: number, place: number): void => {
    const length = lengths[machine]!;
    state[LATE]! += lates[machine]![length]! - lates[machine]![place]!;
    state[COST]! += costs[machine]![length]! - costs[machine]![place]!;
    state[MOVED]! += moves[machine]![length]! - moves[machine]![place]!;
    state[END]! += ends[machine]![length]! - ends[machine]![place]!;
  };
  const index = (machine: number, from: number): void => {
    for (let place = from; place < lengths[machine]!; place++) {
      machineOf[lanes[machine]![place]!] = machine;
      placeOf[lanes[machine]![place]!] = place;
    }
  };
  const sum = (machine: number, from: number): void => {
    load(machine, from);
    for (let place = from; place < lengths[machine]!; place++) {
      add(machine, place === 0 ? -1 : lanes[machine]![place - 1]!, lanes[machine]![place]!);
      keepAt(machine, place + 1);
    }
  };
  for (let machine = 0; machine < machines; machine++) {
    sum(machine, 0);
    index(machine, 0);
  }

  return {
    machineOf,
    placeOf,
    length: (machine) => lengths[machine]!,
    lotAt: (machine, place) => lanes[machine]![place]!,
    lateAt: (machine, place) => lates[machine]![place + 1]! - lates[machine]![place]!,
    tally: (machine, what) => {
      const length = lengths[machine]!;
      if (what === LATE) return lates[machine]![length]!;
      if (what === COST) return costs[machine]![length]!;
      if (what === MOVED) return moves[machine]![length]!;
      return endOf(machine, ends[machine]![length]!);
    },
    attempt: ({ machine, keep, window, tailFrom }, tried, latest) => {
      const lane = lanes[machine]!;
      const length = lengths[machine]!;
      load(machine, keep);
      let before = keep === 0 ? -1 : lane[keep - 1]!;
      for (const lot of window) {
        add(machine, before, lot);
        before = lot;
      }
      for (let place = tailFrom; place < length; place++) {
        add(machine, before, lane[place]!);
        before = lane[place]!;
        if (state[LATE]! > latest) break;
        // From here on all is as it was, or shifted alike.
        if (search.isPlain || state[END] === ends[machine]![place + 1]!) {
          addRest(machine, place + 1);
          break;
        }
      }
      tried[LATE] = state[LATE]! > latest ? Number.POSITIVE_INFINITY : state[LATE]!;
      tried[COST] = state[COST]!;
      tried[MOVED] = state[MOVED]!;
      tried[END] = endOf(machine, state[END]!);
    },
    apply: ({ machine, keep, window, tailFrom }) => {
      const lane = lanes[machine]!;
      const tail = keep + window.length;
      if (tail !== tailFrom) lane.copyWithin(tail, tailFrom, lengths[machine]!);
      lengths[machine]! += tail - tailFrom;
      for (let at = 0; at < window.length; at++) lane[keep + at] = window[at]!;
      sum(machine, keep);
      index(machine, keep);
    },
    copy: () => lanes.map((lane, machine) => Array.from(lane.subarray(0, lengths[machine]!))),
  };
}
